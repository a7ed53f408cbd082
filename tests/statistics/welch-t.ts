/** A witness for what is worked of two groups in other ways: it is held against published values in its own test. */
import type {Interval} from '../../src/statistics/interval.ts'
import {freedomOf, type MeanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {studentQuantile, studentTail} from '../../src/statistics/student-t.ts'

/** How far two means lie apart, when the spreads need not be alike. */
export interface MeanDifference {
  /** first mean less second, in the unit of the values */
  readonly difference: number
  readonly interval: Interval
  /** difference over its standard error */
  readonly t: number
  /** degrees of freedom after Welch and Satterthwaite, a fraction; between the smaller group's n − 1 and both groups' n − 2 */
  readonly freedom: number
  /** two-sided, 0 to 1 */
  readonly p: number
}

/**
 * Welch's t: is one step heavier than another, whether or not they are equally even?
 *
 *     t = (m₁ − m₂)/√(q₁ + q₂)        q = s²/n        ν = (q₁ + q₂)² / ( q₁²/(n₁ − 1) + q₂²/(n₂ − 1) )
 *
 * @param one n, mean and sd as `meanAndDeviation` gives them
 * @param other of the group that is taken off
 * @param level above 0 and below 1; default 0.95
 * @returns difference, interval, t and P; null when either group has a single bird or neither shows any spread
 * @throws RangeError when the level is out of its range
 * @see Welch 1947, Biometrika 34:28–35. NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3.
 * @example welchT({n: 249, mean: 20.14458, sd: 6.4147}, {n: 79, mean: 30.48101, sd: 6.10771})?.t  // −12.9463
 */
export function welchT(one: MeanAndDeviation, other: MeanAndDeviation, level = 0.95): MeanDifference | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  if (one.sd === null || other.sd === null) return null
  const first = one.sd ** 2 / one.n, second = other.sd ** 2 / other.n, error = Math.sqrt(first + second)
  // in shares of the whole, so that very small spreads do not vanish when squared
  const share = first / (first + second)
  const freedom = 1 / (share ** 2 / freedomOf(one) + (1 - share) ** 2 / freedomOf(other))
  const difference = one.mean - other.mean, t = difference / error
  if (!(error > 0 && Number.isFinite(freedom) && Number.isFinite(t ** 2))) return null
  const half = studentQuantile(level, freedom) * error
  return {difference, interval: {low: difference - half, high: difference + half}, t, freedom, p: studentTail(t, freedom)}
}
