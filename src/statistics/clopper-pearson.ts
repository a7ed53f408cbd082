import {betaQuantile} from './beta-quantile.ts'
import type {Interval} from './interval.ts'

/**
 * Clopper–Pearson "exact" interval of a share, for whoever asks for it: it covers at least as often as it says at every share,
 * and so mostly more often and is mostly wider than Wilson's.
 *
 *     P(X ≥ k | low) = (1 − level)/2        P(X ≤ k | high) = (1 − level)/2        X binomial of n
 *
 * that is, low = the beta quantile of k and n − k + 1, high = that of k + 1 and n − k.
 *
 * @param k chicks with the trait; whole, 0 to n
 * @param n chicks scored; whole, 1 or more
 * @param level above 0 and below 1; default 0.95
 * @returns low and high as shares, 0 to 1; low exactly 0 when k = 0, high exactly 1 when k = n
 * @throws RangeError when k and n cannot be counts, or the level is out of its range
 * @see Clopper & Pearson 1934, Biometrika 26:404–413. Newcombe 1998, Stat. Med. 17:857–872, method 5.
 * @example clopperPearson(3, 50)  // low 0.0125, high 0.1655
 */
export function clopperPearson(k: number, n: number, level = 0.95): Interval {
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`n is a count of 1 or more, not ${n}`)
  if (!Number.isInteger(k) || k < 0 || k > n) throw new RangeError(`k is a count from 0 to ${n}, not ${k}`)
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const outside = (1 - level) / 2
  return {
    low: k === 0 ? 0 : betaQuantile(outside, k, n - k + 1),
    // from the other end, so that counting failures mirrors counting successes to the last bit
    high: k === n ? 1 : 1 - betaQuantile(outside, n - k, k + 1),
  }
}
