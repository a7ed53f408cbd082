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
  /** within which the next difference is looked for, at the level; null where there are too few, or all are alike */
  readonly limits: Interval | null
}

/** Fewer differences than this give no limits: our convention, the source works with 17. */
export const LEAST_FOR_LIMITS = 5

/**
 * By how much does the one give more than the other, and how far apart may they be over one bird?
 *
 *     interval of the mean d̄ ± t s/√n        limits for one more difference d̄ ± t s √(1 + 1/n)        t of n − 1
 *
 * The limits are a prediction interval: they hold the next difference as often as they say, however few there were, where differences are normal. The source's own d̄ ± 2 s, of which it is the form
 * for small samples, hold it only 86 times in 100 of five.
 *
 * @param differences first less second, one a bird; 1 or more, all finite
 * @param level of both; default 0.95
 * @throws RangeError when there is no difference, or one that is not finite
 * @see Bland & Altman 1986, Lancet i:307–310 (17 pairs of peak flow: mean −2.1, SD 38.8, interval −22.0 to 17.8, limits d̄ ± 2 s −79.7 to 75.5; these −86.7 to 82.4).
 *   Bland & Altman 1999, Stat. Methods Med. Res. 8:135–160 (t and √(1 + 1/n) for small samples; from memory)
 */
export function limitsOfAgreement(differences: readonly number[], level = 0.95): Agreed {
  const {n, mean, sd} = meanAndDeviation(differences)
  if (sd === null || sd === 0) return {n, mean, sd, interval: null, limits: null}
  const t = studentQuantile(level, n - 1), half = (t * sd) / Math.sqrt(n), wide = t * sd * Math.sqrt(1 + 1 / n)
  return {n, mean, sd, interval: {low: mean - half, high: mean + half}, limits: n < LEAST_FOR_LIMITS ? null : {low: mean - wide, high: mean + wide}}
}
