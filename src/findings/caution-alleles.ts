import type {Locus} from '../heredity/locus.ts'

/** Does a caution speak of an allele that this locus has? One about `s^al` alone says nothing where the project keeps only `S` and `s+`. */
export const speaksOfLocus = (says: string, locus: Pick<Locus, 'alleles'>): boolean => !MARKED.test(says) || allelesSpokenOf(says, locus).length > 0

const MARKED = /[A-Za-z]+\^[A-Za-z]+/

/**
 * Which alleles does a caution speak of? Those that it names with their mark, such as `s^al`, which may be none of this project's; where it names none, all but
 * that of the wild fowl, which has a plus: `p+`, `W+`.
 */
export function allelesSpokenOf(says: string, {alleles}: Pick<Locus, 'alleles'>): readonly string[] {
  const named: readonly string[] = says.match(/[A-Za-z]+\^[A-Za-z]+/g) ?? []
  return named.length > 0 ? alleles.filter(allele => named.includes(allele)) : alleles.filter(allele => !allele.endsWith('+'))
}
