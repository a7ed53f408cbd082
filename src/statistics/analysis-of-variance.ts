import {fisherTail} from './fisher-f.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'

/** A sum of squares with its degrees of freedom. */
export interface SumOfSquares {
  /** in the squared unit of the values; 0 or more */
  readonly squares: number
  readonly freedom: number
}

/** Whether groups differ by more than their own spread explains. */
export type AnalysisOfVariance =
  | {
      readonly kind: 'compared'
      readonly n: number
      readonly groups: number
      readonly between: SumOfSquares
      readonly within: SumOfSquares
      /** mean square between over mean square within, 0 or more */
      readonly f: number
      /** 0 to 1 */
      readonly p: number
      /** standard deviation inside groups, in the unit of the values */
      readonly sd: number
      /** share of all squares that lies between groups, 0 to 1 */
      readonly rSquared: number
    }
  /** `few`: fewer than two groups, or no group of two values · `no-spread`: inside every group the values are all alike, so that there is nothing to compare by */
  | {readonly kind: 'few' | 'no-spread'; readonly n: number; readonly groups: number}

/** Values that differ by less than this part of the largest are alike: rounding is no spread. */
const ALIKE = 1e-12

/**
 * One-way analysis of variance: do the groups differ, or would birds of one kind in as many groups look the same?
 *
 *     between = Σ n_g (m_g − m)²        within = Σ Σ (x − m_g)²        F = (between/(g − 1)) / (within/(n − g))
 *
 * @param groups values of each, one unit throughout, all finite; groups without a value are passed over
 * @returns sums of squares, F and P, or why there are none
 * @throws RangeError when a value is not finite
 * @see Fisher 1925, Statistical Methods for Research Workers. Held against NIST StRD.
 * @example analysisOfVariance([[1, 2, 3], [2, 3, 4], [6, 7, 8]])  // kind 'compared', f 21, p 0.0020
 */
export function analysisOfVariance(groups: readonly (readonly number[])[]): AnalysisOfVariance {
  const filled = groups.filter(values => values.length > 0)
  const all = filled.flat(), n = all.length, shape = {n, groups: filled.length}
  for (const value of all) if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
  if (filled.length < 2 || n - filled.length < 1) return {kind: 'few', ...shape}
  const {mean} = meanAndDeviation(all)
  let between = 0, within = 0
  for (const values of filled) {
    const own = meanAndDeviation(values)
    between += values.length * (own.mean - mean) ** 2
    within += (values.length - 1) * (own.sd ?? 0) ** 2
  }
  const largest = all.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  if (within <= n * (ALIKE * largest) ** 2) return {kind: 'no-spread', ...shape}
  const above = filled.length - 1, below = n - filled.length
  const f = between / above / (within / below)
  return {
    kind: 'compared',
    ...shape,
    between: {squares: between, freedom: above},
    within: {squares: within, freedom: below},
    f,
    p: fisherTail(f, above, below),
    sd: Math.sqrt(within / below),
    rSquared: between / (between + within),
  }
}
