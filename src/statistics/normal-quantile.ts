import quantile from '@stdlib/stats-base-dists-normal-quantile'

/**
 * How many standard deviations either side of the middle hold a stated share of a normal curve?
 *
 *     z = Φ⁻¹((1 + level) / 2)
 *
 * @param level share held, above 0 and below 1; 0.95 for a 95 % interval
 * @returns z, above 0
 * @throws RangeError when the level is not between 0 and 1
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (the table the tests hold it against)
 * @example normalQuantile(0.95)  // 1.959964
 */
export function normalQuantile(level: number): number {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  return quantile((1 + level) / 2, 0, 1)
}
