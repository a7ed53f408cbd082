/** Days and partial dates. A day is a whole number of days since 1970-01-01, so that no clock and no time zone can touch it. */
export type Day = number

/** A date as a keeper knows it: `2024`, `2024-04` or `2024-04-12`. `first` and `last` are the days it may mean. */
export interface PartialDate {
  /** as written */
  readonly text: string
  readonly first: Day
  readonly last: Day
}

const DAY_MS = 86_400_000

/** The day of a calendar date of the Gregorian calendar, or null when there is no such date (2023-02-29). */
export function dayOf(year: number, month: number, day: number): Day | null {
  const date = new Date(0)
  date.setUTCFullYear(year, month - 1, day)
  if (date.getUTCFullYear() !== year || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return null
  return Math.round(date.getTime() / DAY_MS)
}

/** ISO 8601 text of a day: `2024-04-12`. */
export function isoDay(day: Day): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10)
}

/** The calendar year a day lies in. */
export function yearOf(day: Day): number {
  return new Date(day * DAY_MS).getUTCFullYear()
}

/** Is the date known to the day? */
export function isWhole(date: PartialDate): boolean {
  return date.first === date.last
}

/**
 * Reads `2024`, `2024-04` or `2024-04-12`; anything else, and a date the calendar does not have, is null.
 *
 * @example parseDate('2024-02')?.last === dayOf(2024, 2, 29)  // true
 */
export function parseDate(text: string): PartialDate | null {
  const match = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(text)
  if (!match) return null
  const year = Number(match[1])
  if (match[3] !== undefined) {
    const day = dayOf(year, Number(match[2]), Number(match[3]))
    return day === null ? null : {text, first: day, last: day}
  }
  const month = match[2] === undefined ? null : Number(match[2])
  const first = dayOf(year, month ?? 1, 1)
  const next = month === null || month === 12 ? dayOf(year + 1, 1, 1) : dayOf(year, month + 1, 1)
  return first === null || next === null ? null : {text, first, last: next - 1}
}
