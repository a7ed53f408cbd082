import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile'
import type {Interval} from './interval.ts'

/**
 * Modified McKay interval: how even would a much larger flock of these birds be?
 *
 *     limit(u) = K / √( (u/ν)·(1 + w·(2/u + 1)·K²) − K² )
 *
 * where u is the χ² quantile of ν degrees of freedom at 0.975 for the lower and 0.025 for the upper limit (at 95 %), and
 * w = (n − 1)/n for one class of n birds, which is Vangel's formula K / √( ((u + 2)/n − 1)·K² + u/ν ).
 * For several classes w is the mean of ν_c/n_c weighted by ν_c; that step is ours, and its coverage is held by simulation.
 *
 * @param cv K, coefficient of variation seen, as a share; 0 or more. Meant for 0.33 or less (Vangel's range)
 * @param freedom ν, degrees of freedom; whole, 1 or more
 * @param weight w, above 0 and below 1; default ν/(ν + 1), one class
 * @param level above 0 and below 1; default 0.95
 * @returns low and high as shares; null when the birds are so uneven or so few that no upper limit exists
 * @throws RangeError when an argument is out of its range
 * @see Vangel 1996, Am. Stat. 50:21–26. McKay 1932, J. R. Stat. Soc. 95:695–698. (Both cited from memory.)
 * @example coefficientOfVariationInterval(0.086, 26)  // low 0.0677, high 0.1181
 */
export function coefficientOfVariationInterval(cv: number, freedom: number, weight = freedom / (freedom + 1), level = 0.95): Interval | null {
  if (!(cv >= 0 && Number.isFinite(cv))) throw new RangeError(`a coefficient of variation is 0 or more, not ${cv}`)
  if (!Number.isInteger(freedom) || freedom < 1) throw new RangeError(`degrees of freedom are a count of 1 or more, not ${freedom}`)
  if (!(weight > 0 && weight < 1)) throw new RangeError(`the weight lies between 0 and 1, not at ${weight}`)
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const limit = (probability: number): number | null => {
    const u = chiSquareQuantile(probability, freedom)
    const under = (u / freedom) * (1 + weight * (2 / u + 1) * cv ** 2) - cv ** 2
    return under > 0 ? cv / Math.sqrt(under) : null
  }
  const low = limit((1 + level) / 2), high = limit((1 - level) / 2)
  return low === null || high === null ? null : {low, high}
}
