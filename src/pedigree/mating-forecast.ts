import {unrelatedGroups, type Groups} from './breeding-groups.ts'
import {hatchOf} from './group-mating.ts'
import type {MatingSystem} from './mating-systems.ts'
import {rateBetween} from './rate-of-inbreeding.ts'

export interface ForecastSeason {
  /** from 1, the chicks of the birds that the forecast starts from; a generation, in rolling pens a year */
  readonly season: number
  /** mean F of the season's chicks, and of each pen's */
  readonly inbreeding: number
  readonly byPen: readonly number[]
  /** mean kinship of two different chicks of the season: what F would come to if the whole flock were mated at random */
  readonly kinship: number
  /** ΔF since the season before, below 0 in a season that F falls; null in the first and when F was 1 */
  readonly rate: number | null
}

/**
 * How closely bred will the chicks be, season by season, if the flock is mated by this rule?
 *
 * The mean by the exact recursion of `hatchOf`. The first season's parents are the birds of `start`, put into the pens by the plan: F of the first chicks
 * is the mean kinship of the mates, nothing else. From the second season on, groups have the sizes of the system.
 *
 * @param seasons how many, 0 or more
 * @param start today's breeders, in the groups of the system; default unrelated birds, as many as the system has
 * @throws RangeError when `start` has other groups than the system, or `seasons` is no count
 * @example matingForecast(closedPen({males: 1, females: 4}), 3)  // F 0, 0.15625, 0.26367
 */
export function matingForecast(system: MatingSystem, seasons: number, start: Groups = unrelatedGroups(system.sizes)): readonly ForecastSeason[] {
  if (!Number.isInteger(seasons) || seasons < 0) throw new RangeError(`a forecast has 0 seasons or more, not ${seasons}`)
  if (start.sizes.length !== system.sizes.length) throw new RangeError(`the system has ${system.sizes.length} groups, the start ${start.sizes.length}`)
  unrelatedGroups(system.sizes)
  const course: ForecastSeason[] = []
  let groups = start
  for (let season = 1; season <= seasons; season++) {
    const {inbreeding, byPen, kinship, next} = hatchOf(groups, system.plan(season), system.sizes)
    const before = course.at(-1)
    course.push({season, inbreeding, byPen, kinship, rate: before ? rateBetween(before.inbreeding, inbreeding) : null})
    groups = next
  }
  return course
}

/**
 * In which season does mean F, or its rate, first pass a limit?
 *
 * @param limit above which it has passed (on the limit it has not), as a share
 * @returns null when it stays within through the whole forecast
 */
export function seasonPassing(course: readonly ForecastSeason[], limit: number, of: 'inbreeding' | 'rate' = 'inbreeding'): number | null {
  return course.find(season => (season[of] ?? -Infinity) > limit + 1e-12)?.season ?? null
}

/**
 * At what rate a season does F build up in the long run, whatever the flock started from?
 *
 *     ΔF = 1 − ((1 − F(t)) / (1 − F(t−c)))^(1/c)      c the seasons of a whole cycle, for within one F may rise and fall
 *
 * @returns ΔF, 0 to 1, when two cycles agree to twelve decimals, else after two thousand seasons (a circle of some forty pens and more)
 */
export function longRunRate(system: MatingSystem): number {
  const {cycle} = system
  let groups = unrelatedGroups(system.sizes)
  let left = 1, last = NaN
  for (let season = 1; season <= 2000; season++) {
    const {inbreeding, next} = hatchOf(groups, system.plan(season), system.sizes)
    groups = next
    if (season % cycle !== 0) continue
    const rate = 1 - ((1 - inbreeding) / left) ** (1 / cycle)
    // in the first cycles there is no F yet, and near F = 1 no figures are left to compare
    if ((inbreeding > 0.05 && Math.abs(rate - last) < 1e-12) || inbreeding > 1 - 1e-6) return rate
    left = 1 - inbreeding
    last = rate
  }
  return last
}
