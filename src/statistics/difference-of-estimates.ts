import type {Interval} from './interval.ts'

/** An estimate with its limits, none of which need be the same way from it. */
export interface WithLimits extends Interval {
  readonly value: number
}

/** How far two estimates lie apart. */
export interface DifferenceOfEstimates extends Interval {
  /** first less second */
  readonly difference: number
}

/**
 * How far do two groups lie apart, when each has its own interval and the two have nothing to do with each other?
 *
 *     low = d − √( (v₁ − l₁)² + (u₂ − v₂)² )        high = d + √( (u₁ − v₁)² + (v₂ − l₂)² )        d = v₁ − v₂
 *
 * Of two shares with Wilson's limits it is Newcombe's interval; of two means with even limits the usual one for known spreads.
 *
 * @param one the estimate that is taken first, with limits of the same level as the other's
 * @param other the one that is taken off
 * @returns difference and limits, in their unit
 * @throws RangeError when an estimate lies outside its own limits, or something is not finite
 * @see Zou & Donner 2008, Stat. Med. 27:1693–1702 (from memory). Newcombe 1998, Stat. Med. 17:873–890, method 10.
 * @example differenceOfEstimates({value: 0.8, low: 0.69, high: 0.88}, {value: 0.6, low: 0.49, high: 0.7})  // 0.2, 0.0513 to 0.3361
 */
export function differenceOfEstimates(one: WithLimits, other: WithLimits): DifferenceOfEstimates {
  for (const {value, low, high} of [one, other]) {
    const dust = 1e-9 * Math.max(1, Math.abs(value))
    if (!(Number.isFinite(low) && Number.isFinite(high) && low <= value + dust && value <= high + dust)) throw new RangeError(`an estimate lies between its limits, not at ${value} beside ${low} and ${high}`)
  }
  const difference = one.value - other.value
  return {
    difference,
    low: difference - Math.hypot(one.value - one.low, other.high - other.value),
    high: difference + Math.hypot(one.high - one.value, other.value - other.low),
  }
}
