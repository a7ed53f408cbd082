import type {Locus} from '../heredity/locus.ts'

/**
 * Which alleles does a caution speak of? Those that it names with their mark, such as `s^al`, which may be none of this project's; where it names none, all but
 * that of the wild fowl, which has a plus: `p+`, `W+`.
 */
export function allelesSpokenOf(says: string, {alleles}: Pick<Locus, 'alleles'>): readonly string[] {
  const named: readonly string[] = says.match(/[A-Za-z]+\^[A-Za-z]+/g) ?? []
  return named.length > 0 ? alleles.filter(allele => named.includes(allele)) : alleles.filter(allele => !allele.endsWith('+'))
}
