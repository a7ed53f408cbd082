import type {Locus} from '../heredity/locus.ts'
import type {KnownLocus, Logbook, Trait} from '../logbook/book.ts'
import {LETHAL} from '../records/schema/loci.ts'

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

type About = KnownLocus['cautions'][number]['about']

/** Death in the egg and the bird's good: what no breeder may pass over. */
export const GRAVE: readonly About[] = ['lethal', 'welfare']

/** Does a caution about one of these speak of the allele? */
export const isCautioned = ({loci}: Pick<Logbook, 'loci'>, locus: Locus, allele: number, about: readonly About[] = GRAVE): boolean =>
  (loci.get(locus.symbol)?.known?.cautions ?? []).some(caution => about.includes(caution.about) && allelesSpokenOf(caution.says, locus).includes(locus.alleles[allele] ?? ''))

/** The alleles that lethal rules of these traits name at a locus, by number. */
export const lethalAlleles = (traits: readonly Trait[], locus: Locus): readonly number[] =>
  [...new Set(traits.flatMap(({shows}) => shows.filter(({is}) => is === LETHAL).flatMap(({patterns}) => [...patterns.get(locus) ?? []].flatMap(each => (typeof each === 'number' ? [each] : [])))))]
