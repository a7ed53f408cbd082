import type {Bird, Logbook, Pen} from '../logbook/book.ts'
import {groupsAmong, type Groups} from '../pedigree/breeding-groups.ts'
import {rateAtRandom} from '../pedigree/census-size.ts'
import {matingForecast, seasonPassing, type ForecastSeason} from '../pedigree/mating-forecast.ts'
import {clans, closedPens, rollingPens, wholeFlock, type MatingSystem, type PenSize} from '../pedigree/mating-systems.ts'
import type {Census} from './census.ts'
import type {Kinship} from './inbreeding.ts'
import {lastPens} from './last-pen.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** Clans with the males moved one pen on · all birds one flock, mated at random · each pen closed · two rolling pens · the same, no cock to his daughters. */
export type SystemName = 'clans' | 'flock' | 'closed pens' | 'rolling' | 'rolling apart'

export interface ForecastOfSystem {
  readonly system: SystemName
  /** the first is of the season after the latest one */
  readonly course: readonly ForecastSeason[]
  /** year whose chicks first pass the project's limit for one mating, on average; null: none in the forecast, or no limit */
  readonly passes: number | null
  /** ΔF a season over the whole forecast, from its first season on: 1 − ((1 − F(last)) / (1 − F(first)))^(1 / seasons between) */
  readonly rate: number
}

/** Where each way of mating would take the breeder's own flock. */
export interface Rotation {
  /** the latest season's; the first of the forecast is the next */
  readonly season: number
  readonly pens: readonly {readonly pen: Pen; readonly males: readonly Bird[]; readonly females: readonly Bird[]}[]
  readonly males: number
  readonly females: number
  /** breeders of the new breed that belong to none of these pens */
  readonly leftOut: number
  readonly systems: readonly ForecastOfSystem[]
  /** of rolling pens, how many stand on each side; null where there are too few */
  readonly rolling: {readonly cockerels: number; readonly cocks: number; readonly pullets: number; readonly hens: number} | null
  readonly limit: number | null
  /** the rule of thumb for as many males and females mated at random, unrelated to begin with */
  readonly ruleOfThumb: number
}

/** Seasons looked ahead. */
export const SEASONS = 10

/**
 * If the flock is bred on as it stands, how closely bred will it be in ten years, mated this way or that?
 *
 * The living breeders of the new breed and their real kinships, each counted to the pen of the latest season that it was last put into, else, kept for breeding
 * and not penned yet, to the one it was hatched from, its dam's. Nobody comes in from outside, each season as many males and females are kept of each pen as now, drawn by chance. A season is a year; but for rolling pens, where birds serve two years, every
 * season's breeders are of the hatch before, the fastest that generations can follow. Means are exact (`matingForecast`); selection and unequal families are
 * not in them, and make it worse.
 *
 * In the first season to come the clans' males go from their pen to the next in the order of the records; in closed pens they stay. For rolling
 * pens the older half of each sex, by hatch day, counts as cocks and hens.
 *
 * @returns null when no pen of the latest season holds a living male and a living female of the new breed
 */
export function rotation(book: Logbook, census: Census, {numberOf}: PedigreeOfBook, kin: Kinship): Rotation | null {
  const {season, ownBreeders} = census
  const pens = standing(census)
  if (season === null || pens.length === 0) return null
  const males = pens.flatMap(pen => pen.males), females = pens.flatMap(pen => pen.females)
  const birds = [...males, ...females]
  const kinship = kin.autosome.among(birds.map(numberOf))
  const place = new Map(birds.map((bird, index) => [bird, index] as const))
  const startOf = (groups: readonly (readonly Bird[])[]): Groups => groupsAmong(kinship, groups.map(group => group.map(bird => place.get(bird) ?? NaN)))
  const sizes = pens.map((pen): PenSize => ({males: pen.males.length, females: pen.females.length}))
  const byPen = pens.flatMap(pen => [pen.males, pen.females])
  const limit = book.project.limits.matingInbreeding

  const forecast = (system: SystemName, rule: MatingSystem, groups: readonly (readonly Bird[])[]): ForecastOfSystem => {
    const course = matingForecast(rule, SEASONS, startOf(groups))
    const passing = limit === null ? null : seasonPassing(course, limit)
    return {system, course, passes: passing === null ? null : season + passing, rate: rateOver(course)}
  }
  const [youngMales, oldMales] = byAge(males), [youngFemales, oldFemales] = byAge(females)
  const sides = {cockerels: youngMales.length, cocks: oldMales.length, pullets: youngFemales.length, hens: oldFemales.length}
  const canRoll = males.length > 1 && females.length > 1
  const rolling = (system: SystemName, apart: {fathers?: boolean}): ForecastOfSystem => {
    return forecast(system, rollingPens(sides, apart), [youngMales, oldMales, youngFemales, oldFemales])
  }
  return {
    season, pens, males: males.length, females: females.length, leftOut: ownBreeders.length - birds.length, rolling: canRoll ? sides : null, limit, ruleOfThumb: rateAtRandom(males.length, females.length),
    systems: [
      ...(pens.length > 1 ? [forecast('clans', clans(sizes), byPen)] : []),
      forecast('flock', wholeFlock(sizes), [males, females]),
      ...(pens.length > 1 ? [forecast('closed pens', closedPens(sizes), byPen)] : []),
      ...(canRoll ? [rolling('rolling', {}), rolling('rolling apart', {fathers: true})] : []),
    ],
  }
}

/** The pens with a living male and a living female of the new breed: each bird in the one it was last put into, else in that of them it was hatched from. */
function standing({pens, ownBreeders}: Census): Rotation['pens'] {
  const last = lastPens(pens)
  const hatchedIn = ({hatch}: Bird): Pen | undefined => (hatch?.pens.length === 1 ? hatch.pens[0]?.pen : undefined)
  return pens.map(pen => {
    const own = ownBreeders.filter(bird => (last.get(bird) ?? hatchedIn(bird)) === pen)
    return {pen, males: own.filter(({sex}) => sex === 'male'), females: own.filter(({sex}) => sex === 'female')}
  }).filter(({males, females}) => males.length > 0 && females.length > 0)
}

/** The younger half, the larger one of an odd number, and the older; of one age as in the book. */
function byAge(birds: readonly Bird[]): readonly [young: readonly Bird[], old: readonly Bird[]] {
  const oldestFirst = [...birds].sort((a, b) => (a.hatched?.first ?? -Infinity) - (b.hatched?.first ?? -Infinity) || 0)
  const old = Math.floor(birds.length / 2)
  return [oldestFirst.slice(old), oldestFirst.slice(0, old)]
}

function rateOver(course: readonly ForecastSeason[]): number {
  const first = course[0]?.inbreeding ?? 0, last = course.at(-1)?.inbreeding ?? 0
  return first < 1 ? 1 - ((1 - last) / (1 - first)) ** (1 / (course.length - 1)) : 0
}
