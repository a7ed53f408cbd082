import type {Interval} from './interval.ts'

/**
 * Wilson score interval of a share that is an expectation, not a count: how sure is it, if it is worth so many counted things?
 *
 *     centre = (p + z²/2n) / (1 + z²/n)        half = z / (1 + z²/n) · √( p(1 − p)/n + z²/4n² )
 *
 * @param p the share, 0 to 1
 * @param n counted things that would know it as well, above 0, not necessarily whole
 * @param z normal quantile of the level; above 0; default 1.95996 (95 %)
 * @returns low and high as shares; low exactly 0 when p = 0, high exactly 1 when p = 1
 * @throws RangeError when a figure is out of range
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212; for whole numbers the same as `wilsonInterval`
 * @example wilsonOfShare(41 / 48, 48)  // low 0.7283, high 0.9275
 */
export function wilsonOfShare(p: number, n: number, z = 1.959963984540054): Interval {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a share lies between 0 and 1, not at ${p}`)
  if (!(n > 0 && Number.isFinite(n))) throw new RangeError(`n is above 0, not ${n}`)
  if (!(z > 0 && Number.isFinite(z))) throw new RangeError(`z is above 0, not ${z}`)
  if (p > 0.5) {
    const mirror = wilsonOfShare(1 - p, n, z)
    return {low: 1 - mirror.high, high: 1 - mirror.low}
  }
  const square = z ** 2, centre = (p + square / (2 * n)) / (1 + square / n)
  const half = (z / (1 + square / n)) * Math.sqrt((p * (1 - p)) / n + square / (4 * n ** 2))
  return {low: p === 0 ? 0 : centre - half, high: centre + half}
}
