import {fisherQuantile, fisherTail} from './fisher-f.ts'
import type {Interval} from './interval.ts'

/** A spread seen on so many degrees of freedom. */
export interface Spread {
  /** standard deviation, 0 or more */
  readonly sd: number
  /** degrees of freedom; whole, 1 or more */
  readonly freedom: number
}

/** One variance over another. */
export interface VarianceRatio {
  /** above 0; below 1 when the first is the more even */
  readonly ratio: number
  readonly interval: Interval
  /** two-sided, 0 to 1 */
  readonly p: number
}

/**
 * How many times the variance of one step is that of another?
 *
 *     ratio = s₁²/s₂²        low = ratio / F(½α; ν₁, ν₂)        high = ratio · F(½α; ν₂, ν₁)        F the upper quantile
 *
 * Leans on normal values much more than `levene` does: give it beside that test, not in its place.
 *
 * @param one spread above the line, pooled within classes where there are several
 * @param other spread below the line
 * @param level above 0 and below 1; default 0.95
 * @returns ratio, interval and P; null when either shows no spread at all, for then there is no ratio
 * @throws RangeError when an argument is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.9; Snedecor & Cochran, Statistical Methods (from memory, no page)
 * @example varianceRatio({sd: 65.54909, freedom: 239}, {sd: 61.85425, freedom: 239})  // ratio 1.1230, p 0.3704
 */
export function varianceRatio(one: Spread, other: Spread, level = 0.95): VarianceRatio | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  for (const {sd, freedom} of [one, other]) {
    if (!(sd >= 0 && Number.isFinite(sd))) throw new RangeError(`a standard deviation is 0 or more, not ${sd}`)
    if (!Number.isInteger(freedom) || freedom < 1) throw new RangeError(`degrees of freedom are a count of 1 or more, not ${freedom}`)
  }
  const ratio = (one.sd / other.sd) ** 2
  if (!(ratio > 0 && Number.isFinite(ratio))) return null
  const outside = (1 - level) / 2, tail = fisherTail(ratio, one.freedom, other.freedom)
  const high = ratio * fisherQuantile(outside, other.freedom, one.freedom)
  return {
    ratio,
    interval: {low: ratio / fisherQuantile(outside, one.freedom, other.freedom), high},
    p: Math.min(1, 2 * Math.min(tail, 1 - tail)),
  }
}
