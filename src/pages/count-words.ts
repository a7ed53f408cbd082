/** Counts of birds by sex and of years, as a sentence says them. */
import type {Count} from '../findings/census.ts'
import {figured, listWords} from './numbers.ts'

/** `6 males and 21 females`, `2 males, 3 females and 1 unsexed` */
export function sexesWords({male, female, unknown}: Count): string {
  return listWords([figured(male, 'male'), figured(female, 'female'), ...(unknown > 0 ? [`${unknown} unsexed`] : [])])
}

/** `2020 to 2025` for a run without a gap, `2020, 2021 and 2024` otherwise, `2025` for one. */
export function yearsWords(years: readonly number[]): string {
  const first = years[0], last = years.at(-1)
  if (first === undefined || last === undefined) return 'no year'
  if (first === last) return String(first)
  return last - first + 1 === years.length && years.length > 2 ? `${first} to ${last}` : listWords(years.map(String))
}
