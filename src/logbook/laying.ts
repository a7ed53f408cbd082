/** When the eggs of a chick were laid, and which birds of a pen can have been their parents then. */
import type {Day, PartialDate} from '../records/dates.ts'
import {spanOf, type Span} from './band-book.ts'
import type {Bird, Pen, Stay} from './book.ts'
import {penDays} from './pen-days.ts'

/** Days that eggs are kept before they are set, at most, where no laying days are written. Common practice, no source. */
export const MOST_DAYS_KEPT = 14

/** The days the eggs may have been laid: as written; else up to the setting; else up to the hatch less the days of incubation. */
export function layingOf(
  {laid, set, on}: {readonly laid?: Span | null; readonly set?: PartialDate | null; readonly on?: PartialDate | null}, incubationDays: number,
): Span | null {
  if (laid) return laid
  const last = spanOf(set) ?? (on ? {from: on.first - incubationDays, to: on.last - incubationDays} : null)
  return last && {from: last.from - MOST_DAYS_KEPT, to: last.to}
}

/** Days on which a bird may have been in a pen: its own dates there, else the pen's; never after its death. */
export function stayDays(pen: Pen, stay: Stay): Span {
  const to = stay.to?.last ?? pen.to?.last ?? Infinity
  return {from: stay.from?.first ?? pen.from?.first ?? -Infinity, to: Math.min(to, lastDayOf(stay.bird))}
}

/** The last day a bird can have been among the living here. A bird lent out is still somewhere. */
export function lastDayOf({left}: Pick<Bird, 'left'>): Day {
  return left === null || left.how === 'lent' ? Infinity : left.on?.last ?? Infinity
}

/** The same, but an end that is open lies within the season of the pen. */
export function daysInSeason(pen: Pen, stay: Stay): Span {
  return inSeason(pen, stayDays(pen, stay))
}

/** Days of age under which a bird does not breed: 16 weeks. Common practice, no source. */
export const YOUNGEST_BREEDER = 16 * 7

const meet = (a: Span, b: Span): boolean => a.from <= b.to && b.from <= a.to

/** Males that can have fathered eggs laid then: in the pen, or taken out so lately that the hens may still keep their sperm. */
export function malesAt(pen: Pen, laying: Span | null, spermStoreDays: number): readonly Stay[] {
  const males = pen.males.filter(stay => stay.bird.sex !== 'female')
  if (laying === null) return males
  return males.filter(stay => {
    const {from, to} = stayDays(pen, stay)
    return meet({from, to: to + spermStoreDays}, laying)
  })
}

/** Hens that can have laid then. A bird recorded as a male is none, whatever the pen says; the records are at fault there, and so the other way round. */
export function femalesAt(pen: Pen, laying: Span | null): readonly Stay[] {
  const females = pen.females.filter(stay => stay.bird.sex !== 'male')
  return laying === null ? females : females.filter(stay => meet(stayDays(pen, stay), laying))
}

/**
 * The males a hen may still have laid from: those whose stay overlapped hers in any pen, so lately that she may have kept their sperm, and
 * before the laying was over. Her other pens speak only where they give some day; an open end lies within their season.
 */
export function malesMetBy(hen: Bird, here: Pen, stays: readonly {readonly pen: Pen; readonly stay: Stay}[], laying: Span, spermStoreDays: number): ReadonlySet<Bird> {
  const met = new Set<Bird>()
  for (const {pen, stay: hers} of stays) {
    if (!pen.females.includes(hers)) continue
    for (const his of pen.males) {
      if (his.bird.sex === 'female' || his.bird === hen) continue
      const together = overlap(stayDays(pen, his), stayDays(pen, hers))
      const days = pen === here ? together : isDated(pen, his, hers) ? inSeason(pen, together) : null
      if (days && days.from <= days.to && days.from <= laying.to && days.to + spermStoreDays >= laying.from) met.add(his.bird)
    }
  }
  return met
}

const overlap = (one: Span, other: Span): Span => ({from: Math.max(one.from, other.from), to: Math.min(one.to, other.to)})
const isDated = (...all: readonly Pick<Stay, 'from' | 'to'>[]): boolean => all.some(({from, to}) => from !== null || to !== null)

/** An end is open only where the pen gives no day for it either. */
function inSeason(pen: Pen, {from, to}: Span): Span {
  const days = penDays(pen)
  return {from: from === -Infinity ? days.from : from, to: to === Infinity ? days.to : to}
}
