import type {Paper} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'

/** The last day on which a paper counts: its own, or that on which it grows too old for a rule that lets it be so many days old; null where neither ends it. */
export function paperHoldsUntil({on, until}: Pick<Paper, 'on' | 'until'>, within: number | null): Day | null {
  const ends = [...(until === null ? [] : [until.last]), ...(within === null ? [] : [on.first + within])]
  return ends.length === 0 ? null : Math.min(...ends)
}
