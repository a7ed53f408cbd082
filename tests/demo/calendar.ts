/** Days as `2024-03-23`, counted on and back. */
import {dayOf, isoDay} from '../../src/records/dates.ts'

export function dayNumber(day: string): number {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number)
  const number = dayOf(year, month, date)
  if (number === null) throw new RangeError(`${day} is not in the calendar`)
  return number
}

export const plusDays = (day: string, days: number) => isoDay(dayNumber(day) + days)
export const daysBetween = (from: string, to: string) => dayNumber(to) - dayNumber(from)
