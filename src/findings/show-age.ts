import type {Bird} from '../logbook/book.ts'
import {yearOf, type Day, type PartialDate} from '../records/dates.ts'

/**
 * Is a bird young or grown on a day, as shows have it? Young in the calendar year in which it hatched, grown after it; null where its year of hatching is not known.
 * Common practice (the year on the ring), no source.
 */
export function showAge({hatched}: Pick<Bird, 'hatched'>, on: Day): 'young' | 'grown' | null {
  if (hatched === null || yearOf(hatched.first) !== yearOf(hatched.last)) return null
  return yearOf(on) <= yearOf(hatched.first) ? 'young' : 'grown'
}

/** The same on a date that may be vague; null where the days that it may mean do not agree, or there is none. */
export function showAgeWithin(bird: Pick<Bird, 'hatched'>, on: PartialDate | null): 'young' | 'grown' | null {
  const first = on && showAge(bird, on.first)
  return on && first === showAge(bird, on.last) ? first : null
}
