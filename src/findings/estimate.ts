/**
 * How an answer travels: with its count, interval, level, method, and what was left out and why (never a bare number).
 * "Cannot be said" is an answer too, with its reason; NaN is none.
 */
import type {Interval} from '../statistics/interval.ts'

export type {Interval}

/** A share of counted things: `count` of `total`. */
export interface Share {
  readonly kind: 'share'
  readonly count: number
  /** 1 or more */
  readonly total: number
  /** count / total, 0 to 1 */
  readonly value: number
  readonly interval: Interval
  /** 0.95 */
  readonly level: number
  /** `Wilson score interval` */
  readonly method: string
  readonly leftOut: readonly LeftOut[]
}

/** Too little to say anything; `have` of the `need`ed things are there. */
export interface CannotSay {
  readonly kind: 'cannot-say'
  readonly have: number
  readonly need: number
  /** what is wanting, as a code the pages put into words */
  readonly why: 'none-scored' | 'too-few' | 'not-counted' | 'not-finished'
  readonly leftOut: readonly LeftOut[]
}

export interface LeftOut {
  readonly count: number
  /** why, as a code the pages put into words */
  readonly why: (typeof LEFT_OUT)[number]
}

/** Every reason, in the order in which they are told. */
export const LEFT_OUT = [
  'unscored', 'too-young', 'lost-before-scoring', 'not-listed', 'struck', 'outside-window', 'small-class', 'sex-unknown', 'not-candled', 'not-counted', 'not-finished', 'set-aside',
] as const
