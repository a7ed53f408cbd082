import type {Interval} from './interval.ts'
import {freedomOf, type MeanAndDeviation} from './mean-and-deviation.ts'
import {studentQuantile, studentTail} from './student-t.ts'

/** A mixture of means, such as one less the half of two others. */
export interface Contrast {
  /** in the unit of the values */
  readonly value: number
  readonly error: number
  readonly interval: Interval
  /** two-sided, against 0 */
  readonly p: number
}

/**
 * How far does one line stand from where others would put it?
 *
 *     C = Σ c_g·m_g        Var C = Σ c_g²·s_g²/n_g        ν = (Var C)² / Σ ( (c_g²·s_g²/n_g)²/ν_g )
 *
 * @param parts each mean with what it is multiplied by; means of groups that share no bird
 * @param level above 0 and below 1; default 0.95
 * @returns value, interval and P; null when a group has no spread of its own to tell (a single bird), or none has any
 * @throws RangeError when the level is out of its range
 * @see Satterthwaite 1946, Biometrics Bull. 2:110–114 (from memory). Of two means it is Welch’s t.
 * @example contrast([{of: {n: 4, mean: 12, sd: 2}, times: 1}, {of: {n: 4, mean: 10, sd: 2}, times: -1}])?.value  // 2
 */
export function contrast(parts: readonly {readonly of: MeanAndDeviation; readonly times: number}[], level = 0.95): Contrast | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  if (parts.some(({of}) => of.sd === null || !(freedomOf(of) > 0))) return null
  const value = parts.reduce((sum, {of, times}) => sum + times * of.mean, 0)
  const variances = parts.map(({of, times}) => ({own: (times * (of.sd ?? 0)) ** 2 / of.n, freedom: freedomOf(of)}))
  const variance = variances.reduce((sum, {own}) => sum + own, 0), error = Math.sqrt(variance)
  const freedom = 1 / variances.reduce((sum, {own, freedom: each}) => sum + (own / variance) ** 2 / each, 0)
  const t = value / error
  if (!(error > 0 && Number.isFinite(freedom) && Number.isFinite(t ** 2))) return null
  const half = studentQuantile(level, freedom) * error
  return {value, error, interval: {low: value - half, high: value + half}, p: studentTail(t, freedom)}
}
