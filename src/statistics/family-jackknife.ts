import {FEWEST_FAMILIES} from './family-bootstrap.ts'
import type {Interval} from './interval.ts'
import {studentQuantile} from './student-t.ts'

/**
 * How far off may a figure be, where families were drawn and not chicks? It is worked anew with each family left out in turn.
 *
 *     SE² = (m − 1)/m · Σ (θ(i) − mean of θ(i))²        limits: θ ± t · SE, Student's t of m − 1
 *
 * Of a mean over families of one chick each it is Student's interval to the last digit. Twenty chicks of one cock and one hen are one family: of them nothing is said.
 *
 * @param all θ of all families
 * @param without θ without each family in turn, m of them, all finite
 * @param level above 0 and below 1; default 0.95
 * @returns null under five families, and where none makes a difference: that would claim too much
 * @throws RangeError when a figure is not finite
 * @see Tukey 1958, Ann. Math. Stat. 29:614 (abstract); Efron & Tibshirani 1993, An Introduction to the Bootstrap, ch. 11 (both from memory)
 * @example familyJackknife(3, [3.5, 3.25, 3, 2.75, 2.5])  // low 1.0368, high 4.9632
 */
export function familyJackknife(all: number, without: readonly number[], level = 0.95): Interval | null {
  for (const value of [all, ...without]) if (!Number.isFinite(value)) throw new RangeError(`a figure is a finite number, not ${value}`)
  const m = without.length
  if (m < FEWEST_FAMILIES) return null
  const mean = without.reduce((sum, value) => sum + value, 0) / m, error = Math.sqrt(((m - 1) / m) * without.reduce((sum, value) => sum + (value - mean) ** 2, 0))
  // what is left of rounding is no difference
  if (!(error > 1e-12 * Math.max(1, Math.abs(all)))) return null
  const half = studentQuantile(level, m - 1) * error
  return {low: all - half, high: all + half}
}
