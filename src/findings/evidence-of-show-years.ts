/** Evidence of shows one year after the other, and of how many stood at one. */
import type {Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {keeperOn} from './census.ts'
import {judged, judgedWith, type Finding} from './evidence-found.ts'
import {behindEntries, entriesAsked, standing} from './evidence-of-entries.ts'
import {byShow} from './evidence-of-shows.ts'
import type {BirdsAtShow, Sources} from './evidence-shown.ts'
import {inSeason, yearsInOrder} from './next-season.ts'
import type {ShowResult} from './show-results.ts'
import type {Way} from './ways.ts'

/**
 * In how many calendar years running was the breed shown, disqualified birds left out? A year in which every show on record was officially cancelled neither breaks the run nor counts; one in which a show was held and the breed was not
 * there breaks it. The longest run decides; the one that still goes on says what is wanting.
 */
export function consecutiveShows(asked: Requirement, from: Sources): Finding {
  const all = entriesAsked(asked, from), entries = standing(all.entries), untold = standing(all.untold), {book: {asOf}, shows} = from, least = asked.atLeast ?? asked.seasons
  const years = yearsInOrder(entries.map(({show}) => yearOf(show.on.first))), held = new Set(shows.shows.map(({show}) => yearOf(show.on.first)))
  const cancelledYears = yearsInOrder(shows.cancelled.map(show => yearOf(show.on.first))).filter(year => !held.has(year))
  const runs = runsOf(years, cancelledYears), longest = longestOf(runs), could = longestOf(runsOf(yearsInOrder([...years, ...untold.map(({show}) => yearOf(show.on.first))]), cancelledYears)).length
  const now = yearOf(asOf), isOpen = (year: number): boolean => year === now || cancelledYears.includes(year)
  const last = runs.at(-1) ?? [], lastYear = last.at(-1), goesOn = lastYear !== undefined && Array.from({length: Math.max(0, now - lastYear)}, (_, index) => lastYear + 1 + index).every(isOpen)
  const current = goesOn ? last : [], more = least === null ? 0 : least - current.length
  const ways: readonly Way[] = least === null ? [{kind: 'name-figure', earliest: null}] : [{kind: 'show-years', more, earliest: inSeason((years.includes(now) ? now + 1 : now) + more - 1)}]
  return judged(judgedWith(longest.length, least, could - longest.length), {kind: 'consecutive-shows', years, untold: untold.length, cancelledYears, longestRun: longest.length, longest, current}, {behind: behindEntries(entries), aged: all.aged, ways})
}

const longestOf = (runs: readonly (readonly number[])[]): readonly number[] => runs.reduce<readonly number[]>((best, run) => (run.length > best.length ? run : best), [])

/** Years that follow one another, but for those between that do not break them. */
function runsOf(years: readonly number[], passedOver: readonly number[]): readonly (readonly number[])[] {
  const runs: number[][] = []
  for (const year of years) {
    const run = runs.at(-1), last = run?.at(-1)
    const follows = last !== undefined && Array.from({length: year - last - 1}, (_, index) => last + 1 + index).every(between => passedOver.includes(between))
    if (run && follows) run.push(year)
    else runs.push([year])
  }
  return runs
}

/** At how many shows were there as many birds of the breed, by as many keepers, as are asked? Disqualified ones do not count; of whom a bird was that day must be on record. One show has to reach it unless the requirement says how many. */
export function birdsPerShow(asked: Requirement, from: Sources): Finding {
  const all = entriesAsked(asked, from), counting = standing(all.entries), untold = standing(all.untold), {atLeast, exhibitors} = asked
  const each = byShow(counting).flatMap(among => birdsAt(among)), least = asked.shows ?? 1, asksNothing = atLeast === null && exhibitors === null
  const reached = each.filter(({birds, keepers}) => birds >= (atLeast ?? 1) && keepers >= (exhibitors ?? 1)).length
  const could = byShow([...counting, ...untold]).flatMap(among => birdsAt(among)).filter(({birds, keepers, withoutKeeper}) => birds >= (atLeast ?? 1) && keepers + withoutKeeper >= (exhibitors ?? 1)).length
  const ways: readonly Way[] = asksNothing ? [{kind: 'name-figure', earliest: null}] : [{kind: 'large-shows', more: least - reached, birds: atLeast, keepers: exhibitors, earliest: null}]
  return judged(asksNothing ? null : judgedWith(reached, least, could - reached), {kind: 'birds-per-show', shows: each, enough: reached, untold: untold.length}, {behind: behindEntries(counting), aged: all.aged, ways})
}

function birdsAt(among: readonly ShowResult[]): readonly BirdsAtShow[] {
  const [first] = among, birds = [...new Set(among.map(({entry}) => entry.bird))], keepers = first ? birds.map(bird => keeperOn(bird, first.show.on.first)) : []
  return first ? [{show: first.show, birds: birds.length, keepers: new Set(keepers.filter(keeper => keeper !== null)).size, withoutKeeper: keepers.filter(keeper => keeper === null).length}] : []
}
