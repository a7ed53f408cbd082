import type {Interval} from './interval.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'
import {studentQuantile} from './student-t.ts'

/** How far two who measure the same things differ. */
export interface Agreed {
  readonly n: number
  /** mean of first less second, in their unit */
  readonly mean: number
  /** of the differences; null for one */
  readonly sd: number | null
  /** of the mean; null for one, and where all are alike, since it would claim too much */
  readonly interval: Interval | null
  /** within which 95 in 100 differences are looked for; null where there are too few, or all are alike */
  readonly limits: Interval | null
}

/** Fewer differences than this give no limits: our convention, the source works with 17. */
export const LEAST_FOR_LIMITS = 5

/**
 * By how much does the one give more than the other, and how far apart may they be over one bird?
 *
 *     mean d̄, limits d̄ ± 2 s (the source's own 2)        interval of the mean d̄ ± t s/√n, t of n − 1
 *
 * @param differences first less second, one a bird; 1 or more, all finite
 * @param level of the interval of the mean; default 0.95
 * @throws RangeError when there is no difference, or one that is not finite
 * @see Bland & Altman 1986, Lancet i:307–310 (17 pairs of peak flow: mean −2.1, SD 38.8, limits −79.7 to 75.5, interval −22.0 to 17.8)
 */
export function limitsOfAgreement(differences: readonly number[], level = 0.95): Agreed {
  const {n, mean, sd} = meanAndDeviation(differences)
  if (sd === null || sd === 0) return {n, mean, sd, interval: null, limits: null}
  const half = (studentQuantile(level, n - 1) * sd) / Math.sqrt(n)
  return {n, mean, sd, interval: {low: mean - half, high: mean + half}, limits: n < LEAST_FOR_LIMITS ? null : {low: mean - 2 * sd, high: mean + 2 * sd}}
}
