import type {Interval} from './interval.ts'
import {median} from './median.ts'
import {normalQuantile} from './normal-quantile.ts'
import {midRanks} from './rank-sum.ts'

/** How fast a figure rises or falls, whatever a few odd seasons do. */
export interface SenSlope {
  /** in the unit of the values per unit of time */
  readonly slope: number
  /** null when there are too few seasons for any interval of this level */
  readonly interval: Interval | null
}

/**
 * Sen's slope: by how much a season does a figure change?
 *
 *     slope = median of (x_j − x_i)/(t_j − t_i) over all N pairs        interval from the ⌊(N − C)/2⌋th to the (⌈(N + C)/2⌉ + 1)th slope in order, C = z·√Var S
 *
 * with Var S as in `mannKendall`, the ties among the values taken in.
 *
 * @param values one figure a season, all finite
 * @param times when, each later than the one before; default 0, 1, 2 …
 * @param level above 0 and below 1; default 0.95
 * @returns slope and interval; null with fewer than two seasons
 * @throws RangeError when a value is not finite, the times do not rise or do not fit, or the level is out of its range
 * @see Sen 1968, J. Am. Stat. Assoc. 63:1379–1389. Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, 16.5.
 * @example senSlope([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15])  // slope 1, interval 0 to 2
 */
export function senSlope(values: readonly number[], times: readonly number[] = values.map((_, place) => place), level = 0.95): SenSlope | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  if (times.length !== values.length) throw new RangeError(`there is a time for every value: ${values.length}, not ${times.length}`)
  for (const value of values) if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
  times.forEach((time, place) => {
    if (!Number.isFinite(time) || (place > 0 && !(time > (times[place - 1] ?? NaN)))) throw new RangeError(`each time is later than the one before, not ${time}`)
  })
  const n = values.length
  if (n < 2) return null
  const slopes = values.flatMap((later, j) => values.slice(0, j).map((earlier, i) => (later - earlier) / ((times[j] ?? 0) - (times[i] ?? 0)))).sort((a, b) => a - b)
  const variance = (n * (n - 1) * (2 * n + 5) - midRanks(values).ties.reduce((sum, t) => sum + t * (t - 1) * (2 * t + 5), 0)) / 18
  const span = normalQuantile(level) * Math.sqrt(Math.max(0, variance)), pairs = slopes.length
  // counted from 1; a value all alike has no spread of S, and every slope is 0
  const low = slopes[Math.floor((pairs - span) / 2) - 1], high = slopes[Math.ceil((pairs + span) / 2)]
  return {slope: median(slopes), interval: variance > 0 && low !== undefined && high !== undefined ? {low, high} : null}
}
