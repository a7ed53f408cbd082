import type {Interval} from './interval.ts'

/**
 * Wilson's formula for a share whose size need not be whole: which shares would so many independent birds leave open?
 *
 *     centre = (p + z²/2n) / (1 + z²/n)        half = z / (1 + z²/n) · √( p(1 − p)/n + z²/4n² )
 *
 * @param share p, 0 to 1
 * @param n independent birds that would tell as much; above 0
 * @param z normal quantile, or Student's t where n was itself estimated; above 0; default 1.95996 (95 %)
 * @returns limits, 0 to 1; exactly 0 and 1 where the share is
 * @throws RangeError when an argument is out of its range
 * @see Wilson 1927, as `wilsonInterval`, which it is where n is whole. Korn & Graubard 1998, Surv. Methodol. 24:193–201 (n not whole; from memory).
 * @example scoreInterval(41 / 48, 48)  // low 0.7283, high 0.9275
 */
export function scoreInterval(share: number, n: number, z = 1.959963984540054): Interval {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`a share lies between 0 and 1, not at ${share}`)
  if (!(n > 0 && Number.isFinite(n))) throw new RangeError(`n is above 0, not ${n}`)
  if (!(z > 0 && Number.isFinite(z))) throw new RangeError(`z is above 0, not ${z}`)
  // as in `wilsonInterval`, counting failures mirrors counting successes
  if (share > 0.5) {
    const mirror = scoreInterval(1 - share, n, z)
    return {low: 1 - mirror.high, high: 1 - mirror.low}
  }
  const centre = (share + z ** 2 / (2 * n)) / (1 + z ** 2 / n)
  const half = (z / (1 + z ** 2 / n)) * Math.sqrt((share * (1 - share)) / n + z ** 2 / (4 * n ** 2))
  return {low: share === 0 ? 0 : Math.max(0, centre - half), high: centre + half}
}
