/**
 * Of a mating that is known to segregate only because a recessive hatched: how many recessives should there be?
 *
 *     mean = n·p / (1 − q^n)        variance = n·p·q / (1 − q^n) − mean² · q^n        q = 1 − p
 *
 * Matings of two carriers that happened to give no recessive were never noticed, so the plain n·p is too few.
 *
 * @param n chicks scored of the mating; whole, 1 or more
 * @param share p, of recessives that carriers give, above 0 and at most 1; ¼ of two carriers, ½ of a carrier and a recessive
 * @returns mean and variance of the number of recessives, given that there is one
 * @throws RangeError when n is no count of 1 or more or p is out of its range
 * @see The a-priori method: Hogben 1931; complete ascertainment in Emery & Rimoin 1990, Principles and Practice of Medical Genetics, table 8.1
 * @example truncatedMoments(3, 1 / 4)  // mean 48/37 = 1.2973, variance 0.2630
 */
export function truncatedMoments(n: number, share: number): {readonly mean: number; readonly variance: number} {
  const some = someRecessive(n, share)
  const mean = (n * share) / some
  return {mean, variance: (n * share * (1 - share)) / some - mean ** 2 * (1 - some)}
}

/**
 * The chance of each number of recessives in such a mating.
 *
 *     Pr(r) = C(n, r) · p^r · q^(n − r) / (1 − q^n)        r = 1 … n
 *
 * @param n as above
 * @param share as above
 * @returns n + 1 chances for 0 to n recessives, the first of them 0; together 1
 * @throws RangeError as above
 * @see Fisher 1934, Ann. Eugen. 6:13–25
 * @example truncatedBinomial(3, 1 / 4)  // 0, 27/37, 9/37, 1/37
 */
export function truncatedBinomial(n: number, share: number): number[] {
  const some = someRecessive(n, share)
  const chances = [0]
  let logWays = 0
  for (let recessives = 1; recessives <= n; recessives++) {
    logWays += Math.log((n - recessives + 1) / recessives)
    const others = n - recessives
    chances.push(Math.exp(logWays + recessives * Math.log(share) + (others === 0 ? 0 : others * Math.log1p(-share))) / some)
  }
  return chances
}

/** 1 − q^n, without loss when the share is small. */
function someRecessive(n: number, share: number): number {
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`n is a count of 1 or more, not ${n}`)
  if (!(share > 0 && share <= 1)) throw new RangeError(`a share of recessives is above 0 and at most 1, not ${share}`)
  return -Math.expm1(n * Math.log1p(-share))
}
