import type {Requirement} from '../logbook/book.ts'
import type {Day, PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {NONE_AGED, type Aged} from './evidence-found.ts'

export interface Sifted<Thing> {
  readonly counted: readonly Thing[]
  readonly aged: Aged
}

/**
 * What of these counts by its day? `from`: that day or later; `within`: no older at the book's day; `by`: no later than that. A date not known to the day counts only where every day that it may mean
 * does, and what has no date only where none of the three is asked. What does not count is counted by why, and the older named.
 */
export function siftByDay<Thing>(things: readonly Thing[], dateOf: (thing: Thing) => PartialDate | null, spotOf: (thing: Thing) => Spot, {from, by, within}: Pick<Requirement, 'from' | 'by' | 'within'>, asOf: Day): Sifted<Thing> {
  if (from === null && by === null && within === null) return {counted: things, aged: NONE_AGED}
  const counted: Thing[] = [], records: Spot[] = [], out = {older: 0, earlier: 0, later: 0, undated: 0, pure: 0}
  let last: Day | null = null
  for (const thing of things) {
    const on = dateOf(thing)
    if (on === null) out.undated += 1
    else if (from !== null && on.first < from.first) out.earlier += 1
    else if (by !== null && on.last > by.last) out.later += 1
    else if (within !== null && on.first < asOf - within) {
      out.older += 1
      records.push(spotOf(thing))
      last = Math.max(last ?? on.last, on.last)
    } else counted.push(thing)
  }
  return {counted, aged: {...out, records, last}}
}
