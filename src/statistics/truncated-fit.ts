import {truncatedBinomial, truncatedMoments} from './truncated-binomial.ts'

/** A mating known to segregate only because a recessive hatched. */
export interface TruncatedMating {
  /** chicks scored, 1 or more */
  readonly chicks: number
  /** recessives among them, 1 or more: without one the mating would not be here */
  readonly recessives: number
}

/** Whether such matings agree with the share that carriers give. */
export interface TruncatedFit {
  readonly matings: number
  readonly chicks: number
  readonly recessives: number
  /** recessives to be expected, given that every mating gave one */
  readonly expected: number
  readonly variance: number
  /** chance of a number of recessives no more probable than the one seen; exact */
  readonly p: number
}

/** As in `exactMultinomial`: rounding must not break a tie. */
const TIE = 1e-7

/**
 * Do matings that were noticed by their recessives give no more of them than carriers should?
 *
 *     P = Σ Pr(r) over all r with Pr(r) ≤ Pr(seen)        Pr(r) the sum of the matings' truncated binomials
 *
 * The distribution of the sum is worked exactly, one mating folded into the next. Several such matings are tested by their sum; one alone by itself.
 *
 * @param matings one or more
 * @param share of recessives that carriers give, above 0 and at most 1: ¼ of two carriers
 * @returns seen beside expected, and P
 * @throws RangeError when there is no mating, or one without a recessive or with more recessives than chicks, or the share is out of its range
 * @see Emery & Rimoin 1990, Principles and Practice of Medical Genetics, table 8.1 (complete ascertainment). The exact sum: own.
 * @example truncatedFit([{chicks: 3, recessives: 2}], 1 / 4)  // expected 1.2973, p 10/37 = 0.2703
 */
export function truncatedFit(matings: readonly TruncatedMating[], share: number): TruncatedFit {
  if (matings.length === 0) throw new RangeError('there is 1 mating or more to test, not 0')
  let chicks = 0, seen = 0, expected = 0, variance = 0
  let chances = [1]
  for (const mating of matings) {
    if (!Number.isInteger(mating.recessives) || mating.recessives < 1 || mating.recessives > mating.chicks) {
      throw new RangeError(`a mating of ${mating.chicks} noticed by its recessives has 1 or more of them and no more than chicks, not ${mating.recessives}`)
    }
    const own = truncatedMoments(mating.chicks, share)
    chicks += mating.chicks
    seen += mating.recessives
    expected += own.mean
    variance += own.variance
    chances = folded(chances, truncatedBinomial(mating.chicks, share))
  }
  const limit = (chances[seen] ?? 0) * (1 + TIE)
  const p = chances.reduce((sum, chance) => (chance <= limit ? sum + chance : sum), 0)
  return {matings: matings.length, chicks, recessives: seen, expected, variance, p: Math.min(1, p)}
}

/** The distribution of the sum of two independent counts. */
function folded(one: readonly number[], other: readonly number[]): number[] {
  const sums = Array<number>(one.length + other.length - 1).fill(0)
  one.forEach((chance, count) => {
    if (chance > 0) other.forEach((further, more) => { sums[count + more] = (sums[count + more] ?? 0) + chance * further })
  })
  return sums
}
