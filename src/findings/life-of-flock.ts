import type {Logbook} from '../logbook/book.ts'
import {careTouching, type CareTouching} from './care-touching.ts'
import {feedUse, type FeedUse} from './feed-use.ts'
import {firstEggs, type FirstEggs} from './first-eggs.ts'
import {growthOfGroups, type GrowthOfGroups} from './growth-of-groups.ts'
import {hatchComparisons, hatchResultsOfGroups, type HatchComparison, type ResultsOfGroup} from './hatch-comparisons.ts'
import {hatchGroups, type HatchGroups} from './hatch-groups.ts'
import {layOfBook, type LayOfBook} from './lay.ts'
import {livabilityOfGroups, type LivabilityOfGroups} from './livability-of-groups.ts'
import {seasonsOfLife, type SeasonOfLife} from './seasons-of-life.ts'
import {workedOnce} from './worked-once.ts'

/** Hatch, life and lay: what becomes of eggs and chicks, and what hens give for their feed. Each is worked when it is first asked for. */
export interface LifeOfFlock {
  readonly groups: HatchGroups
  readonly touching: CareTouching
  /** of every step, season, way of hatching and pen, pure strains left aside */
  readonly hatching: readonly ResultsOfGroup[]
  readonly hatchComparisons: readonly HatchComparison[]
  readonly livability: LivabilityOfGroups
  readonly growth: GrowthOfGroups
  readonly lay: LayOfBook
  readonly firstEggs: readonly FirstEggs[]
  readonly feed: readonly FeedUse[]
  readonly seasons: readonly SeasonOfLife[]
}

/** How do they hatch, live, grow and lay? */
export function lifeOfFlock(book: Logbook): LifeOfFlock {
  const all: LifeOfFlock = workedOnce<LifeOfFlock>({
    groups: () => hatchGroups(book),
    touching: () => careTouching(book),
    hatching: () => hatchResultsOfGroups(all.groups),
    hatchComparisons: () => hatchComparisons(all.groups, all.touching),
    livability: () => livabilityOfGroups(book, all.groups, all.touching),
    growth: () => growthOfGroups(book, all.groups),
    lay: () => layOfBook(book, all.touching),
    firstEggs: () => firstEggs(book),
    feed: () => feedUse(book, all.lay.sheets.flatMap(({sheets}) => sheets)),
    seasons: () => seasonsOfLife(all.hatching, all.livability, all.lay),
  })
  return all
}
