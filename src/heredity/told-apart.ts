import {genotypesAt, matches, type GenotypePattern} from './genotype-notation.ts'
import type {Alleles, Locus} from './locus.ts'
import type {LookRules} from './look-rules.ts'

/** More genotypes than this are not gone through. */
export const MOST_TOLD_APART = 100_000

/**
 * One genotype of every sort that the rules can tell apart, in one sex: of a series of eight alleles whose rules ask only for `E/_` and `e+/e+`, three
 * and not thirty-six. Null when there are more than `MOST_TOLD_APART`.
 *
 * @param loci the list in which `rules.loci` counts; loci that the rules do not name stand with their first genotype
 * @param whole the place of a locus that is asked about: every genotype of it is gone through; left out, of none
 */
export function toldApart({loci: places, rules}: Pick<LookRules, 'loci' | 'rules'>, loci: readonly Locus[], sex: 'male' | 'female', whole = -1): readonly (readonly Alleles[])[] | null {
  const sorts = loci.map((locus, place): readonly Alleles[] => {
    if (place === whole) return genotypesAt(locus, sex)
    const number = places.indexOf(place)
    return sortsAt(locus, sex, number < 0 ? [] : rules.map(rule => rule.patterns[number] ?? null))
  })
  if (sorts.reduce((product, {length}) => product * length, 1) > MOST_TOLD_APART) return null
  return sorts.reduce<readonly (readonly Alleles[])[]>((all, own) => all.flatMap(genotype => own.map(alleles => [...genotype, alleles])), [[]])
}

/** The first genotype of a locus for each way in which it fits the patterns or does not. */
function sortsAt(locus: Locus, sex: 'male' | 'female', patterns: readonly (GenotypePattern | null)[]): readonly Alleles[] {
  const found = new Map<string, Alleles>()
  for (const alleles of genotypesAt(locus, sex)) {
    const sort = patterns.map(pattern => (pattern === null || matches(pattern, alleles) ? '1' : '0')).join('')
    if (!found.has(sort)) found.set(sort, alleles)
  }
  return [...found.values()]
}
