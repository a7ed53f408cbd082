import type {PartialDate} from '../records/dates.ts'
import type {Watched} from '../statistics/livability.ts'
import type {Chick} from './ladder-chicks.ts'

/** Chicks are followed for eight weeks: most that die of themselves have died by then, and few are sold before. Common practice, no source. */
export const FOLLOWED = 56

const middle = ({first, last}: PartialDate): number => Math.floor((first + last) / 2)

/** How long a chick was watched, by the middle of what its dates leave open; null where a day is not written. */
export function watchedOf({hatched, left}: Pick<Chick, 'hatched' | 'left'>, asOf: number): Watched | null {
  if (hatched === null || hatched.first > asOf) return null
  if (left === null) return {age: Math.max(0, asOf - middle(hatched)), died: false}
  return left.on === null ? null : {age: Math.max(0, middle(left.on) - middle(hatched)), died: left.how === 'died'}
}
