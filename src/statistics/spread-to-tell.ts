import {normalQuantile} from './normal-quantile.ts'
import type {Wish} from './numbers-to-tell.ts'

/**
 * How many birds of each of two groups does it take to tell that one is more even?
 *
 *     ν = ( (z_level + z_power) / ln ratio )²        since the variance of ln s is about 1/(2ν) in either group
 *
 * as far as measures are normal. The test on which our verdicts rest, Brown and Forsythe's, asks for a little more than the ratio of two spreads: with so many it tells
 * about three times in four what that ratio tells four times in five (0.72 to 0.75 in simulation).
 *
 * @param ratio of the two coefficients of variation, above 0 and not 1
 * @returns birds of each group less its classes, whole, 1 or more
 * @throws RangeError when an argument is out of its range
 * @see Snedecor & Cochran, Statistical Methods (variance of ln s, from memory, no page)
 * @example birdsToTellSpread(0.8)  // 158
 */
export function birdsToTellSpread(ratio: number, {level = 0.95, power = 0.8}: Wish = {}): number {
  if (!(ratio > 0) || ratio === 1 || !Number.isFinite(ratio)) throw new RangeError(`a ratio of two spreads lies above 0 and is not 1, and not ${ratio}`)
  if (!(level > 0 && level < 1 && power > 0.5 && power < 1)) throw new RangeError('level lies between 0 and 1, power between ½ and 1')
  return Math.max(1, Math.ceil(((normalQuantile(level) + normalQuantile(2 * power - 1)) / Math.log(ratio)) ** 2))
}
