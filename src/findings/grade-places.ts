import type {Trait} from '../logbook/book.ts'
import {median} from '../statistics/median.ts'

/** Is the trait told by marks on a scale, or by states that have an order? */
export const isGraded = ({kind}: Trait): boolean => kind === 'graded' || kind === 'ordered'

/** The place of a score among the grades of its trait: the mark itself, or 1, 2 … for ordered states from the least; null where it is none. */
export function placeOf({kind, states}: Trait, value: string | number | null): number | null {
  if (kind === 'graded') return typeof value === 'number' ? value : null
  const place = typeof value === 'string' ? states.indexOf(value) : -1
  return kind === 'ordered' && place >= 0 ? place + 1 : null
}

/** What stands in the middle of all places. */
export interface MiddleGrade {
  readonly place: number
  /** the state or mark; two where the middle falls between them */
  readonly is: readonly (string | number)[]
}

/** @param places one or more */
export function middleGrade(trait: Trait, places: readonly number[]): MiddleGrade {
  const place = median(places), order = [...places].sort((a, b) => a - b)
  const middle = [order[(order.length - 1) >> 1] ?? place, order[order.length >> 1] ?? place]
  return {place, is: [...new Set(middle)].map(each => (trait.kind === 'ordered' ? trait.states[each - 1] ?? each : each))}
}
