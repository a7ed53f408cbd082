import type {Interval} from './interval.ts'
import {freedomOf, type MeanAndDeviation} from './mean-and-deviation.ts'
import {studentQuantile} from './student-t.ts'

/** How far a step has come from the donor to the recurrent strain. */
export interface Recovery {
  /** 0 as the donor, 1 as the recurrent strain; may lie outside, since the step may be beyond either */
  readonly recovery: number
  /** null when donor and recurrent strain do not differ clearly, so that any share would do */
  readonly interval: Interval | null
}

/**
 * How far has type come back after backcrossing?
 *
 *     ρ = (step − donor)/(recurrent − donor)        limits: (s − d − ρ(r − d))² = t²·( V_s + (1 − ρ)²V_d + ρ²V_r )        V = sd²/n
 *
 * Fieller's limits, which know that the line below the bar is uncertain too. t of the degrees of freedom, after Satterthwaite, of the sum at ρ. Contemporaries only.
 *
 * @param step n, mean and sd as `meanAndDeviation` gives them
 * @param donor of the donor strain
 * @param recurrent of the recurrent strain
 * @param level above 0 and below 1; default 0.95
 * @returns ρ with interval; null when a group has a single bird, or donor and recurrent strain have one mean
 * @throws RangeError when the level is out of its range
 * @see Fieller 1954, J. R. Stat. Soc. B 16:175–185 (from memory)
 * @example recoveryOfType({n: 20, mean: 2300, sd: 200}, {n: 10, mean: 1200, sd: 120}, {n: 20, mean: 2500, sd: 200})  // recovery 0.8462, interval 0.7576 to 0.9419
 */
export function recoveryOfType(step: MeanAndDeviation, donor: MeanAndDeviation, recurrent: MeanAndDeviation, level = 0.95): Recovery | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  if (step.sd === null || donor.sd === null || recurrent.sd === null) return null
  const above = step.mean - donor.mean, below = recurrent.mean - donor.mean, recovery = above / below
  if (!(Math.abs(below) > 1e-12 * Math.max(Math.abs(recurrent.mean), Math.abs(donor.mean)))) return null
  const ofStep = step.sd ** 2 / step.n, ofDonor = donor.sd ** 2 / donor.n, ofRecurrent = recurrent.sd ** 2 / recurrent.n
  const parts = [[ofStep, freedomOf(step)], [(1 - recovery) ** 2 * ofDonor, freedomOf(donor)], [recovery ** 2 * ofRecurrent, freedomOf(recurrent)]] as const
  const whole = parts.reduce((sum, [variance]) => sum + variance, 0)
  if (!(whole > 0)) return {recovery, interval: null}
  const freedom = 1 / parts.reduce((sum, [variance, own]) => sum + (variance / whole) ** 2 / own, 0)
  const square = studentQuantile(level, freedom) ** 2
  // a·ρ² − 2b·ρ + c = 0
  const a = below ** 2 - square * (ofDonor + ofRecurrent), b = above * below - square * ofDonor, c = above ** 2 - square * (ofStep + ofDonor)
  const root = Math.sqrt(Math.max(0, b ** 2 - a * c))
  return {recovery, interval: a > 0 && Number.isFinite(root) ? {low: (b - root) / a, high: (b + root) / a} : null}
}
