import {differenceOfEstimates, type DifferenceOfEstimates} from './difference-of-estimates.ts'
import {freedomOfTwo} from './freedom-of-two.ts'
import type {FamilyLivability} from './livability-of-families.ts'
import {scoreInterval} from './score-interval.ts'
import {studentQuantile} from './student-t.ts'

/**
 * Do more chicks of one group live than of another?
 *
 *     v = S(1 − S)/n* of each        ν = (v₁ + v₂)² / ( v₁²/(m₁ − 1) + v₂²/(m₂ − 1) )        limits of each: `scoreInterval` with Student's t of ν, then joined
 *
 * Where either group has too few families each brings its own limits, and the difference speaks of these chicks.
 *
 * @param one share and limits of the group that is taken first
 * @param other of the group that is taken off
 * @returns difference and limits, −1 to 1
 * @see `differenceOfEstimates`; ν: Satterthwaite 1946, Biometrics Bull. 2:110–114 (from memory)
 * @example livabilityDifference(one, other).difference  // one.share - other.share
 */
export function livabilityDifference(one: FamilyLivability, other: FamilyLivability): DifferenceOfEstimates {
  const t = one.kind === 'families' && other.kind === 'families' ? studentQuantile(0.95, freedomOfTwo(one, other)) : null
  const [first, second] = [one, other].map(({share, effective, low, high}) => ({value: share, ...(t === null ? {low, high} : scoreInterval(share, effective, t))}))
  if (!first || !second) throw new RangeError('two groups are compared')
  const {difference, low, high} = differenceOfEstimates(first, second)
  return {difference, low: Math.max(-1, low), high: Math.min(1, high)}
}
