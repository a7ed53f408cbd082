import type {Interval} from './interval.ts'
import {freedomOf, type MeanAndDeviation} from './mean-and-deviation.ts'
import {studentQuantile, studentTail} from './student-t.ts'

/** How far a cross stands above the mean of its parents. */
export interface Heterosis {
  /** mean of the two parent means, in the unit of the values; above 0 */
  readonly midParent: number
  /** cross less mid-parent, in the unit of the values */
  readonly difference: number
  /** the same as a share of the mid-parent; −1 or more for values that cannot fall below 0 */
  readonly heterosis: number
  /** standard error of the share */
  readonly error: number
  readonly interval: Interval
  /** two-sided, against no heterosis, 0 to 1 */
  readonly p: number
}

/**
 * Vigour of a cross: how much better do chicks of two lines do than the mean of both?
 *
 *     H = c/m − 1        m = ½(a + b)        Var H = V_c/m² + c²·(V_a + V_b)/(4m⁴)        V = s²/n
 *
 * by the delta method, with Student's t after Satterthwaite. The three groups are to be contemporaries: of one hatch and sex, or deviations from these put back on a common mean.
 *
 * @param cross n, mean and sd as `meanAndDeviation` gives them
 * @param one of one parent line
 * @param other of the other
 * @param level above 0 and below 1; default 0.95
 * @returns heterosis with interval; null when a group has a single bird, no group shows a spread, or the mid-parent is not above 0
 * @throws RangeError when the level is out of its range
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 14; Satterthwaite 1946, Biometrics Bull. 2:110–114 (both from memory)
 * @example heterosis({n: 20, mean: 2420, sd: 200}, {n: 20, mean: 2000, sd: 180}, {n: 20, mean: 2400, sd: 220})  // heterosis 0.1, error 0.0258
 */
export function heterosis(cross: MeanAndDeviation, one: MeanAndDeviation, other: MeanAndDeviation, level = 0.95): Heterosis | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const midParent = one.mean / 2 + other.mean / 2
  if (!(midParent > 0) || cross.sd === null || one.sd === null || other.sd === null) return null
  const ratio = cross.mean / midParent
  const parts = [
    {variance: (cross.sd / midParent) ** 2 / cross.n, freedom: freedomOf(cross)},
    {variance: ((ratio * one.sd) / (2 * midParent)) ** 2 / one.n, freedom: freedomOf(one)},
    {variance: ((ratio * other.sd) / (2 * midParent)) ** 2 / other.n, freedom: freedomOf(other)},
  ]
  const variance = parts.reduce((sum, part) => sum + part.variance, 0), error = Math.sqrt(variance)
  const freedom = 1 / parts.reduce((sum, part) => sum + (part.variance / variance) ** 2 / part.freedom, 0)
  const t = (ratio - 1) / error
  if (!(error > 0 && Number.isFinite(freedom) && Number.isFinite(t ** 2))) return null
  const half = studentQuantile(level, freedom) * error
  return {midParent, difference: cross.mean - midParent, heterosis: ratio - 1, error, interval: {low: ratio - 1 - half, high: ratio - 1 + half}, p: studentTail(t, freedom)}
}
