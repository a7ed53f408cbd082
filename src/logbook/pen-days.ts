/** From when to when a pen can have stood: its own days, else the year of its season. */
import {dayOf, type PartialDate} from '../records/dates.ts'
import type {Span} from './band-book.ts'

interface Dated {
  readonly season: number
  readonly from?: PartialDate | null | undefined
  readonly to?: PartialDate | null | undefined
}

/** A pen's first day, else 1 January of its season; its last day, else 31 December. */
export function penDays({season, from, to}: Dated): Span {
  return {from: from?.first ?? dayOf(season, 1, 1) ?? -Infinity, to: to?.last ?? dayOf(season, 12, 31) ?? Infinity}
}
