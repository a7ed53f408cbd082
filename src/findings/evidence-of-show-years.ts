/** Evidence of shows one year after the other, and of how many stood at one. */
import type {Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {keeperOn} from './census.ts'
import {judged, reaches, type Finding} from './evidence-found.ts'
import {behindEntries, entriesAsked} from './evidence-of-entries.ts'
import {byShow} from './evidence-of-shows.ts'
import type {Sources} from './evidence-shown.ts'
import {inSeason, yearsInOrder} from './next-season.ts'
import type {Way} from './ways.ts'

/**
 * In how many years running was the breed shown? A year in which every show on record was officially cancelled neither breaks the run nor counts; one in which a show was held and the breed was not
 * there breaks it. The longest run decides; the one that still goes on says what is wanting.
 */
export function consecutiveShows(asked: Requirement, from: Sources): Finding {
  const {entries, aged} = entriesAsked(asked, from), {book: {asOf}, shows} = from, least = asked.atLeast ?? asked.seasons
  const years = yearsInOrder(entries.map(({show}) => yearOf(show.on.first))), held = new Set(shows.shows.map(({show}) => yearOf(show.on.first)))
  const cancelledYears = yearsInOrder(shows.cancelled.map(show => yearOf(show.on.first))).filter(year => !held.has(year))
  const runs = runsOf(years, cancelledYears), longest = runs.reduce<readonly number[]>((best, run) => (run.length > best.length ? run : best), [])
  const now = yearOf(asOf), isOpen = (year: number): boolean => year === now || cancelledYears.includes(year)
  const last = runs.at(-1) ?? [], lastYear = last.at(-1), goesOn = lastYear !== undefined && Array.from({length: Math.max(0, now - lastYear)}, (_, index) => lastYear + 1 + index).every(isOpen)
  const current = goesOn ? last : [], more = least === null ? 0 : least - current.length
  const ways: readonly Way[] = least === null ? [{kind: 'name-figure', earliest: null}] : [{kind: 'show-years', more, earliest: inSeason((years.includes(now) ? now + 1 : now) + more - 1)}]
  return judged(reaches(longest.length, least), {kind: 'consecutive-shows', years, cancelledYears, longestRun: longest.length, longest, current}, {behind: behindEntries(entries), aged, ways})
}

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
  const {entries, untold, aged} = entriesAsked(asked, from), {atLeast, exhibitors} = asked, counting = entries.filter(({entry}) => !entry.disqualified)
  const each = byShow(counting).flatMap(among => {
    const [first] = among, birds = [...new Set(among.map(({entry}) => entry.bird))]
    const keepers = first ? birds.map(bird => keeperOn(bird, first.show.on.first)) : []
    return first ? [{show: first.show, birds: birds.length, keepers: new Set(keepers.filter(keeper => keeper !== null)).size, withoutKeeper: keepers.filter(keeper => keeper === null).length}] : []
  })
  const reached = each.filter(({birds, keepers}) => birds >= (atLeast ?? 1) && keepers >= (exhibitors ?? 1)), least = asked.shows ?? 1
  const may = each.filter(({birds, keepers, withoutKeeper, show}) => birds + untold.filter(result => result.show === show).length >= (atLeast ?? 1) && keepers + withoutKeeper >= (exhibitors ?? 1))
  const isMet = reached.length >= least, ways: readonly Way[] = atLeast === null && exhibitors === null ? [{kind: 'name-figure', earliest: null}]
    : [{kind: 'large-shows', more: least - reached.length, birds: atLeast, keepers: exhibitors, earliest: null}]
  return judged(atLeast === null && exhibitors === null ? null : !isMet && may.length >= least ? null : isMet, {kind: 'birds-per-show', shows: each, enough: reached.length}, {behind: behindEntries(counting), aged, ways})
}
