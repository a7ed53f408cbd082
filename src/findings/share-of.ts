import {wilsonInterval} from '../statistics/wilson-interval.ts'
import type {CannotSay, LeftOut, Share} from './estimate.ts'

/** A share with its Wilson 95 % interval, or that nothing was counted. `count` and `total` are whole, 0 ≤ count ≤ total. */
export function shareOf(count: number, total: number, leftOut: readonly LeftOut[] = [], why: CannotSay['why'] = 'none-scored'): Share | CannotSay {
  if (total === 0) return {kind: 'cannot-say', have: 0, need: 1, why, leftOut}
  return {
    kind: 'share', count, total, value: count / total, interval: wilsonInterval(count, total), level: 0.95, method: 'Wilson score interval', leftOut,
  }
}
