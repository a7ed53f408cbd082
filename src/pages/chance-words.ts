/** Chances of genotypes and of tests in words: certain ones are not given decimals, small ones not rounded to nothing. */
import type {WrittenGenotype} from '../findings/heredity.ts'
import {percent, percentSign, rounded} from './numbers.ts'

/** From this chance on a genotype counts as certain. */
export const AS_GOOD_AS = 0.999

/** `85.0%`; `over 99.9%`, `under 0.1%` where it is neither sure nor impossible */
export function chance(share: number): string {
  if (share > 0 && share < 0.0005) return 'under 0.1%'
  if (share < 1 && share > AS_GOOD_AS) return 'over 99.9%'
  return percent(share) === '100.0' ? '100%' : percent(share) === '0.0' ? '0%' : percentSign(share)
}

/** `P/p+ 66.7%, P/P 33.3%`: those of at least one in two thousand, the likeliest first */
export const genotypeChances = (genotypes: readonly WrittenGenotype[]): string =>
  genotypes.filter(({probability}) => probability >= 0.0005).map(({written, probability}) => `${written} ${chance(probability)}`).join(', ')

/** P of a test: `0.043`, `under 0.001` */
export const testChance = (p: number): string => (p < 0.001 ? 'under 0.001' : rounded(p, p < 0.1 ? 3 : 2))

/** `P 0.043`, not to be broken */
export const pWords = (p: number): string => `P\u00a0${testChance(p)}`
