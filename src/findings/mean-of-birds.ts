import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {studentQuantile} from '../statistics/student-t.ts'
import type {Interval} from './estimate.ts'
import {LEAST_IN_CLASS} from './spread.ts'

/** What some birds come to on average. */
export interface MeanOfBirds {
  readonly n: number
  /** in the unit of the values */
  readonly mean: number
  /** null of a single bird */
  readonly sd: number | null
  /** 95 %, Student's, birds taken one by one; null under five */
  readonly interval: Interval | null
}

/**
 * What do these birds come to on average, and within which limits?
 *
 *     mean ± t(n − 1) · sd / √n
 *
 * @param values one or more
 * @throws RangeError as `meanAndDeviation`
 * @see Student 1908, Biometrika 6:1–25
 */
export function meanOfBirds(values: readonly number[]): MeanOfBirds {
  const {n, mean, sd} = meanAndDeviation(values)
  const half = sd === null || n < LEAST_IN_CLASS ? null : studentQuantile(0.95, n - 1) * (sd / Math.sqrt(n))
  return {n, mean, sd, interval: half === null ? null : {low: mean - half, high: mean + half}}
}
