import type {Logbook} from '../logbook/book.ts'
import {dayOf, yearOf, type Day} from '../records/dates.ts'
import type {Earliest} from './ways.ts'

/**
 * The next season in which something new could hatch: the year of the book's day while none has hatched in it and eggs set that day would still hatch before it ends, else the year after.
 *
 * @param seasons  those with a hatch already
 */
export function nextSeason({asOf, project: {incubationDays}}: Pick<Logbook, 'asOf' | 'project'>, seasons: readonly number[]): number {
  const year = yearOf(asOf)
  return !seasons.includes(year) && asOf + incubationDays <= lastDayOf(year) ? year : year + 1
}

export const lastDayOf = (year: number): Day => dayOf(year, 12, 31) ?? 0

/** Seasons and years are whole: the earliest is in it, not on its first day. */
export const inSeason = (season: number): Earliest => ({kind: 'season', season})
export const onDay = (day: Day): Earliest => ({kind: 'day', day})

/** Each once, ascending. */
export const yearsInOrder = (years: Iterable<number>): readonly number[] => [...new Set(years)].sort((a, b) => a - b)
