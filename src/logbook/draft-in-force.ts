/** Under which draft of the standard was something scored? */
import type {Day} from '../records/dates.ts'
import type {Draft} from './book.ts'

/** The one its record names, else the latest that was written by that day; null where there was none yet, or the day is not known. Drafts stand oldest first. */
export function draftInForce(drafts: readonly Draft[], named: number | null | undefined, on: Day | null): Draft | null {
  if (named !== null && named !== undefined) return drafts.find(({number}) => number === named) ?? null
  if (on === null) return null
  return drafts.reduce<Draft | null>((latest, draft) => (draft.on.first <= on && (latest === null || draft.on.first >= latest.on.first) ? draft : latest), null)
}
