import type {Bird} from '../logbook/book.ts'
import {yearOf, type Day} from '../records/dates.ts'

/**
 * Is a bird young or grown on a day, as shows have it? Young in the calendar year in which it hatched, grown after it; null where its year of hatching is not known.
 * Common practice (the year on the ring), no source.
 */
export function showAge({hatched}: Pick<Bird, 'hatched'>, on: Day): 'young' | 'grown' | null {
  if (hatched === null || yearOf(hatched.first) !== yearOf(hatched.last)) return null
  return yearOf(on) <= yearOf(hatched.first) ? 'young' : 'grown'
}
