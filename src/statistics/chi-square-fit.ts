import {chiSquareTail} from './chi-square-tail.ts'
import {expectedCounts} from './expected-counts.ts'

/** How well counts agree with a ratio, after Pearson. */
export interface ChiSquareFit {
  /** 0 or more; null when the ratio is impossible, for then no number measures it */
  readonly chiSquare: number | null
  readonly freedom: number
  /** chance of a fit as poor or poorer; 0 when impossible */
  readonly p: number
  /** places of the classes that hold chicks the ratio forbids; empty when there is none */
  readonly impossible: readonly number[]
}

/**
 * Pearson's chi-square: do the chicks agree with the ratio their parents should give?
 *
 *     χ² = Σ (seen − expected)² / expected        ν = classes the ratio allows, less one
 *
 * Without continuity correction. A class of expectation 0 without a chick adds nothing, neither to χ² nor to ν; with a chick it
 * is impossible: P is 0 and χ² is not said, rather than infinite. Meant for expectations of 5 and more; `fitOfCounts` chooses.
 *
 * @param counts chicks seen in each class; whole, 0 or more, at least one chick in all
 * @param ratio parts of each class, 0 or more: 9, 3, 3, 1 or the same as shares
 * @returns χ², ν, P and what is impossible
 * @throws RangeError as `expectedCounts`
 * @see Pearson 1900, Phil. Mag. 50:157–175
 * @example chiSquareFit([315, 108, 101, 32], [9, 3, 3, 1])  // chiSquare 0.4700, freedom 3, p 0.9254
 */
export function chiSquareFit(counts: readonly number[], ratio: readonly number[]): ChiSquareFit {
  const {expected, freedom, impossible} = expectedCounts(counts, ratio)
  if (impossible.length > 0) return {chiSquare: null, freedom, p: 0, impossible}
  let chiSquare = 0
  expected.forEach((mean, place) => {
    if (mean > 0 && freedom > 0) chiSquare += ((counts[place] ?? 0) - mean) ** 2 / mean
  })
  return {chiSquare, freedom, p: chiSquareTail(chiSquare, freedom), impossible}
}
