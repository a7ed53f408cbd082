import {familyShare, type FamilyShare, type Resampling} from './family-bootstrap.ts'
import type {Count, ShareDifference} from './share-difference.ts'

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
 * Newcombe's joining of two intervals, here of the two family intervals. The families of one step must not be those of the other.
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
  const difference = first.share - second.share
  return {
    kind: first.kind === 'families' && second.kind === 'families' ? 'families' : 'these-chicks',
    difference,
    low: Math.max(-1, difference - Math.hypot(first.share - first.low, second.high - second.share)),
    high: Math.min(1, difference + Math.hypot(first.high - first.share, second.share - second.low)),
    one: first,
    other: second,
  }
}
