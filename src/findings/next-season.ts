import type {Hatch, Logbook} from '../logbook/book.ts'
import {dayOf, yearOf, type Day} from '../records/dates.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import type {Earliest} from './ways.ts'

/** Their seasons, each once. */
export const seasonsOf = (hatches: readonly Hatch[]): readonly number[] => yearsInOrder(hatches.flatMap(hatch => seasonOfHatch(hatch) ?? []))

/**
 * The next season in which something new could hatch: the year of the book's day while none has hatched in it and eggs set that day, or in a setting that is due, would still hatch before it ends,
 * else the year after.
 *
 * @param seasons  those with a hatch already; those of the book where none are given
 */
export function nextSeason({asOf, hatches, project: {incubationDays}}: Pick<Logbook, 'asOf' | 'project' | 'hatches'>, seasons: readonly number[] = seasonsOf(hatches)): number {
  const year = yearOf(asOf), isDue = hatches.some(({set, on, hatched}) => set !== null && on === null && hatched === null && set.first + incubationDays >= asOf && set.last + incubationDays <= lastDayOf(year))
  return !seasons.includes(year) && (isDue || asOf + incubationDays <= lastDayOf(year)) ? year : year + 1
}

export const lastDayOf = (year: number): Day => dayOf(year, 12, 31) ?? 0

/** Seasons and years are whole: the earliest is in it, not on its first day. */
export const inSeason = (season: number): Earliest => ({kind: 'season', season})
export const onDay = (day: Day): Earliest => ({kind: 'day', day})

/** Each once, ascending. */
export const yearsInOrder = (years: Iterable<number>): readonly number[] => [...new Set(years)].sort((a, b) => a - b)
