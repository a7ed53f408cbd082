import {differenceOfEstimates} from './difference-of-estimates.ts'
import {familyShare, type FamilyShare, type Resampling} from './family-bootstrap.ts'
import {freedomOfTwo} from './freedom-of-two.ts'
import type {Interval} from './interval.ts'
import {scoreInterval} from './score-interval.ts'
import type {Count, ShareDifference} from './share-difference.ts'
import {studentQuantile} from './student-t.ts'

/** How far the shares of two steps lie apart, with what their families leave open. */
export interface FamilyDifference extends ShareDifference {
  /** `these-chicks` when either step has too few families to speak of more */
  readonly kind: FamilyShare['kind']
  readonly one: FamilyShare
  readonly other: FamilyShare
}

/**
 * Is one step truer than another, or has it only other families?
 *
 *     low = d − √( (p₁ − l₁)² + (u₂ − p₂)² )        high = d + √( (u₁ − p₁)² + (p₂ − l₂)² )        d = p₁ − p₂
 *
 * Newcombe's joining of two intervals, here of those of the two steps' families, both with Student's t of the degrees of freedom of `freedomOfTwo`. The families of one step must
 * not be those of the other. Where a step has too few of them: each step's own limits.
 *
 * @param one families of the step whose share is taken first
 * @param other families of the step that is taken off
 * @param resampling as `familyShare`; the second step is drawn with the next seed
 * @returns difference and limits, −1 to 1; null when either step has no chick
 * @throws RangeError as `familyShare`
 * @see Newcombe 1998, Stat. Med. 17:873–890, method 10; for intervals of any make Zou & Donner 2008, Stat. Med. 27:1693–1702 (from memory)
 * @example familyDifference([{k: 9, n: 10}], [{k: 5, n: 10}], {seed: 1})?.kind  // 'these-chicks'
 */
export function familyDifference(one: readonly Count[], other: readonly Count[], resampling: Resampling): FamilyDifference | null {
  const first = familyShare(one, resampling)
  const second = familyShare(other, {...resampling, seed: resampling.seed === 0xffffffff ? 0 : resampling.seed + 1})
  if (first === null || second === null) return null
  const byFamilies = first.kind === 'families' && second.kind === 'families'
  const t = byFamilies ? studentQuantile(resampling.level ?? 0.95, freedomOfTwo(first, second)) : null
  const limits = (of: FamilyShare): Interval => (t === null ? of : scoreInterval(of.share, of.effective, t))
  const {difference, low, high} = differenceOfEstimates({...limits(first), value: first.share}, {...limits(second), value: second.share})
  return {
    kind: byFamilies ? 'families' : 'these-chicks',
    difference,
    low: Math.max(-1, low),
    high: Math.min(1, high),
    one: first,
    other: second,
  }
}
