import {chiSquareTail} from './chi-square-tail.ts'
import type {ChiSquare} from './heterogeneity.ts'
import {truncatedBinomial, truncatedMoments} from './truncated-binomial.ts'

/** A mating whose recessives are counted. */
export interface CountedMating {
  /** chicks scored, 1 or more */
  readonly chicks: number
  /** recessives among them; 1 or more where it was noticed by them */
  readonly recessives: number
  /** known to segregate only because a recessive hatched: without one it would not be here */
  readonly noticed: boolean
}

/** Whether such matings agree with the share that carriers give. */
export interface RecessivesFit {
  readonly matings: number
  /** how many of them were noticed by their recessives */
  readonly noticed: number
  readonly chicks: number
  readonly recessives: number
  /** recessives to be expected, given that every mating that was noticed by them gave one */
  readonly expected: number
  readonly variance: number
  /** chance of a number of recessives no more probable than the one seen; exact */
  readonly p: number
  /** whether the matings agree with each other, by chi-square; null where fewer than two could have come out otherwise */
  readonly heterogeneity: ChiSquare | null
}

/** As in `exactMultinomial`: rounding must not break a tie. */
const TIE = 1e-7
/** A variance no greater is that of a count that could not have come out otherwise. */
const STILL = 1e-12

/**
 * Do these matings together give the recessives that carriers should, some of them having been noticed by their recessives alone?
 *
 *     P = Σ Pr(r) over all r with Pr(r) ≤ Pr(seen)        Pr(r) of the sum of binomials, those of noticed matings without their 0
 *     χ²_heterogeneity = Σ d²/v − (Σ d)² / Σ v        d = seen − expected, v the variance of each mating; ν = matings − 1
 *
 * The distribution of the sum is worked exactly, one mating folded into the next. Of matings none of which was noticed so the second is the heterogeneity of
 * `heterogeneityOf`; one of a single chick that was noticed could not have come out otherwise, and counts for nothing in it.
 *
 * @param matings one or more
 * @param share of recessives that carriers give, above 0 and at most 1: ¼ of two carriers
 * @returns seen beside expected, P, and whether the matings agree
 * @throws RangeError when there is no mating, one has more recessives than chicks, or was noticed without one, or the share is out of its range
 * @see Emery & Rimoin 1990, Principles and Practice of Medical Genetics, table 8.1 (complete ascertainment). The exact sum: own.
 * @example recessivesFit([{chicks: 3, recessives: 2, noticed: true}], 1 / 4)  // expected 1.2973, p 10/37 = 0.2703
 */
export function recessivesFit(matings: readonly CountedMating[], share: number): RecessivesFit {
  if (matings.length === 0) throw new RangeError('there is 1 mating or more to test, not 0')
  let chicks = 0, seen = 0, expected = 0, variance = 0, squares = 0, free = 0
  let chances = [1]
  for (const mating of matings) {
    const {recessives, noticed} = mating, least = noticed ? 1 : 0
    if (!Number.isInteger(recessives) || recessives < least || recessives > mating.chicks) {
      throw new RangeError(`a mating of ${mating.chicks}${noticed ? ' noticed by its recessives' : ''} has ${least} or more of them and no more than chicks, not ${recessives}`)
    }
    const own = chancesOf(mating, share), {mean, variance: spread} = momentsOf(mating, share)
    chicks += mating.chicks
    seen += recessives
    expected += mean
    variance += spread
    if (spread > STILL) {
      squares += (recessives - mean) ** 2 / spread
      free += 1
    }
    chances = folded(chances, own)
  }
  const limit = (chances[seen] ?? 0) * (1 + TIE), p = chances.reduce((sum, chance) => (chance <= limit ? sum + chance : sum), 0)
  const chiSquare = variance > STILL ? Math.max(0, squares - (seen - expected) ** 2 / variance) : 0
  return {
    matings: matings.length, noticed: matings.filter(({noticed}) => noticed).length, chicks, recessives: seen, expected, variance, p: Math.min(1, p),
    heterogeneity: free < 2 ? null : {chiSquare, freedom: free - 1, p: chiSquareTail(chiSquare, free - 1)},
  }
}

/** Of 0, 1, 2 … recessives. */
function chancesOf({chicks, noticed}: CountedMating, share: number): readonly number[] {
  const given = truncatedBinomial(chicks, share)
  if (noticed) return given
  const none = (1 - share) ** chicks
  return given.map((chance, count) => (count === 0 ? none : chance * (1 - none)))
}

const momentsOf = ({chicks, noticed}: CountedMating, share: number): {readonly mean: number; readonly variance: number} =>
  (noticed ? truncatedMoments(chicks, share) : {mean: chicks * share, variance: chicks * share * (1 - share)})

/** The distribution of the sum of two independent counts. */
function folded(one: readonly number[], other: readonly number[]): number[] {
  const sums = Array<number>(one.length + other.length - 1).fill(0)
  one.forEach((chance, count) => {
    if (chance > 0) other.forEach((further, more) => { sums[count + more] = (sums[count + more] ?? 0) + chance * further })
  })
  return sums
}
