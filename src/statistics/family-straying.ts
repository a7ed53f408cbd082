import {FEWEST_FAMILIES} from './family-bootstrap.ts'
import {studentTail} from './student-t.ts'

/** Whether birds of one step stray farther from their class mates than those of another, with what their families leave open. */
export interface FamilyStraying {
  /** mean of the first step less that of the second */
  readonly difference: number
  /** two-sided, 0 to 1 */
  readonly p: number
}

/**
 * Are the birds of one step more uneven than those of another by more than families differ?
 *
 *     m = mean of how far birds stray        v = f/(f − 1) · Σ over families ( Σ (d − m) )² / n²        t = (m₁ − m₂)/√(v₁ + v₂)        ν by Satterthwaite
 *
 * Where one cock's chicks lie off the middle they all stray, and birds taken one by one are then surer than they are. Here a family counts as one piece, as if each were left out in
 * turn. P is never less than the share of ways to deal the families that can give as much, 2/C(f₁ + f₂, f₁).
 *
 * @param one how far each bird strays, by family, all finite; families without a bird are passed over
 * @param other likewise of the second step
 * @returns null where either step has fewer than five families, or no bird strays otherwise than another
 * @throws RangeError when a value is not finite
 * @see Brown & Forsythe 1974, as `spreadOfSteps`, with the variance of a mean of clusters: Cochran 1977, Sampling Techniques, ch. 9A (from memory). Degrees of freedom: Satterthwaite 1946. Error held by simulation.
 * @example familyStraying([[0.1], [0.2], [0.1], [0.2], [0.1]], [[0.3], [0.4], [0.3], [0.4], [0.3]])  // difference −0.2, p 0.0079
 */
export function familyStraying(one: readonly (readonly number[])[], other: readonly (readonly number[])[]): FamilyStraying | null {
  for (const value of [...one, ...other].flat()) if (!Number.isFinite(value)) throw new RangeError(`how far a bird strays is a finite number, not ${value}`)
  const first = one.filter(own => own.length > 0), second = other.filter(own => own.length > 0)
  if (first.length < FEWEST_FAMILIES || second.length < FEWEST_FAMILIES) return null
  const [mine, theirs] = [meanOf(first), meanOf(second)], error = mine.variance + theirs.variance
  if (!(error > 0)) return null
  const freedom = error ** 2 / (mine.variance ** 2 / (first.length - 1) + theirs.variance ** 2 / (second.length - 1)), difference = mine.mean - theirs.mean
  const ways = Array.from({length: first.length}, (_, place) => (first.length + second.length - place) / (place + 1)).reduce((product, factor) => product * factor, 1)
  return {difference, p: Math.min(1, Math.max(2 / ways, studentTail(difference / Math.sqrt(error), freedom)))}
}

function meanOf(families: readonly (readonly number[])[]): {readonly mean: number; readonly variance: number} {
  const all = families.flat(), mean = all.reduce((sum, value) => sum + value, 0) / all.length
  return {mean, variance: (families.length / (families.length - 1)) * families.reduce((sum, own) => sum + own.reduce((away, value) => away + value - mean, 0) ** 2, 0) / all.length ** 2}
}
