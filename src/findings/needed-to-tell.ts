import type {Trait} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {birdsToTellSpread} from '../statistics/spread-to-tell.ts'
import type {FlockSummaries} from './flock-summary.ts'

/** What a season would have to hold for its trueness and evenness to be told. */
export interface NeededToTell {
  readonly season: string
  /** sire families that had a chick judged, and how many it takes to speak of birds bred like these; null where there are enough */
  readonly families: {readonly have: number; readonly need: number} | null
  /** the measure of most birds whose change of spread cannot be told, the birds there are, and those it takes of each season to tell a spread of `ratio` times; null where it is told, or nothing was measured */
  readonly spread: {readonly trait: Trait; readonly have: number; readonly ratio: number; readonly need: number} | null
}

/** A fifth less spread: our own choice of what is worth telling. */
const RATIO = 0.8

/** How many sires and how many measured birds would it have taken to tell whether the last season is truer and more even? Null where nothing mated inside the line can be compared. */
export function neededToTell({seasons}: Pick<FlockSummaries, 'seasons'>): NeededToTell | null {
  const last = seasons.findLast(({inside, change}) => inside && change !== null && change.outside.length === 0), change = last?.change
  if (!last || !change) return null
  const found = change.shares.find(({by}) => by === 'true-bred'), few = found ? Math.min(found.from.families, found.to.families) : FEWEST_FAMILIES
  const untold = change.spreads.filter(({sex, verdict, to}) => sex === 'all' && verdict === 'cannot-tell' && to.spread !== null)
  const counts = untold.map(({trait, to}) => ({trait, have: to.spread?.kind === 'spread' ? to.spread.n : 0})), [most] = counts.sort((a, b) => b.have - a.have)
  return {
    season: last.name, families: few < FEWEST_FAMILIES ? {have: few, need: FEWEST_FAMILIES} : null,
    spread: most ? {...most, ratio: RATIO, need: birdsToTellSpread(RATIO)} : null,
  }
}
