/** Days, partial dates, spans and ages in words: `23 March 2024`, `March 2024`, `16 March to 4 May 2025`, `20 weeks`. */
import {isWhole, isoDay} from '../records/dates.ts'
import type {Day, PartialDate} from '../records/dates.ts'

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December']

function parts(day: Day): {year: string; month: string; day: string} {
  const [year = '', month = '', date = ''] = isoDay(day).split('-')
  return {year: String(Number(year)), month: MONTHS[Number(month) - 1] ?? '', day: String(Number(date))}
}

/** `23 March 2024` */
export function dayWords(day: Day): string {
  const {year, month, day: date} = parts(day)
  return `${date} ${month} ${year}`
}

/** A date as far as it is known: `23 March 2024`, `March 2024`, `2024`. */
export function dateWords(date: PartialDate): string {
  if (isWhole(date)) return dayWords(date.first)
  const first = parts(date.first), last = parts(date.last)
  return first.month === last.month && first.year === last.year ? `${first.month} ${first.year}` : first.year === last.year ? first.year : `${first.year} to ${last.year}`
}

/** For narrow columns, unbroken: `23 Mar 2024`, `Mar 2024`, `2024`. */
export const dateShort = (date: PartialDate): string => dateWords(date).replace(/[A-Z][a-z]{3,}/g, month => month.slice(0, 3)).replaceAll(' ', '\u00a0')

/** The year alone where one year is sure, else the date as written. */
export function hatchYear(date: PartialDate): string {
  const first = parts(date.first).year
  return first === parts(date.last).year ? first : date.text
}

/** The same, or words in its place when no date was written. */
export const dateOr = (date: PartialDate | null | undefined, otherwise: string): string => (date ? dateWords(date) : otherwise)

/** `on 23 March 2024`, `in March 2024`, `in 2024`. */
export const onDate = (date: PartialDate): string => `${isWhole(date) ? 'on' : 'in'} ${dateWords(date)}`

/** Two days as one span, saying the year once: `16 March to 4 May 2025`. */
export function daySpan(from: Day, to: Day): string {
  if (from === to) return dayWords(from)
  const first = parts(from), last = parts(to)
  if (first.year !== last.year) return `${dayWords(from)} to ${dayWords(to)}`
  if (first.month !== last.month) return `${first.day} ${first.month} to ${dayWords(to)}`
  return `${first.day} to ${dayWords(to)}`
}

/** A stay with open ends: `from 10 February 2024`, `until May 2024`, `10 February to 1 May 2024`; null when neither end is known. */
export function stayWords(from: PartialDate | null, to: PartialDate | null): string | null {
  if (from && to) return isWhole(from) && isWhole(to) ? daySpan(from.first, to.first) : `${dateWords(from)} to ${dateWords(to)}`
  if (from) return `from ${dateWords(from)}`
  return to ? `until ${dateWords(to)}` : null
}

/** An age in the unit a keeper would say it in: `3 days`, `6 weeks`, `20 weeks`, `2 years`. */
export function ageWords(days: number): string {
  const years = Math.round(days / 365.25)
  if (days >= 730 || (days >= 364 && days % 7 !== 0)) return years === 1 ? '1 year' : `${years} years`
  if (days >= 14 && days % 7 === 0) return `${days / 7} weeks`
  if (days >= 70) return `${Math.round(days / 7)} weeks`
  return days === 1 ? '1 day' : days === 7 ? '1 week' : `${days} days`
}
