import type {Interval} from './interval.ts'

/**
 * Wilson score interval: if k of n chicks were true-bred, which shares would a much larger hatch plausibly show?
 *
 *     centre = (k + z²/2) / (n + z²)        half = z / (n + z²) · √( k(n − k)/n + z²/4 )
 *
 * Without continuity correction. The limits are worked from the rarer of the two outcomes, so that counting failures
 * mirrors counting successes to the last bit.
 *
 * @param k chicks with the trait; whole, 0 to n
 * @param n chicks scored; whole, 1 or more (a finding with n = 0 says "none scored" and does not call this)
 * @param z normal quantile of the level; above 0; default 1.95996 (95 %), others from `normalQuantile`
 * @returns low and high as shares, 0 to 1; low exactly 0 when k = 0, high exactly 1 when k = n
 * @throws RangeError when k and n cannot be counts, or z is not above 0
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212. Newcombe 1998, Stat. Med. 17:857–872, method 3.
 * @example wilsonInterval(41, 48)  // low 0.7283, high 0.9275
 */
export function wilsonInterval(k: number, n: number, z = 1.959963984540054): Interval {
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`n is a count of 1 or more, not ${n}`)
  if (!Number.isInteger(k) || k < 0 || k > n) throw new RangeError(`k is a count from 0 to ${n}, not ${k}`)
  if (!(z > 0 && Number.isFinite(z))) throw new RangeError(`z is above 0, not ${z}`)
  if (2 * k > n) {
    const mirror = wilsonInterval(n - k, n, z)
    return {low: 1 - mirror.high, high: 1 - mirror.low}
  }
  const centre = (k + z ** 2 / 2) / (n + z ** 2)
  const half = (z / (n + z ** 2)) * Math.sqrt((k * (n - k)) / n + z ** 2 / 4)
  return {low: k === 0 ? 0 : centre - half, high: centre + half}
}
