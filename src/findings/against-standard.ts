import type {Trait, Wanted} from '../logbook/book.ts'
import type {CannotSay, Interval, Share} from './estimate.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {shareOf} from './share-of.ts'
import type {Measured, SpreadOfMeasures} from './spread.ts'
import {meets} from './wanted-look.ts'

/** How the birds of one step and sex stand to what the standard wants of a measured trait. */
export interface AgainstStandard {
  readonly step: string
  readonly trait: Trait
  readonly sex: 'male' | 'female'
  readonly wanted: Wanted
  /** inclusive limits in the trait's unit; an open side is infinite. Null: the wish names a mark but no tolerance */
  readonly limits: Interval | null
  readonly inside: Share | CannotSay
  /** of all values in their window, those in small classes too */
  readonly n: number
  readonly mean: number
  /** mean less the mark, in the trait's unit; null when no single mark is wanted */
  readonly off: number | null
  /** the same in pooled standard deviations; null where the spread cannot be told or is nil */
  readonly offInSd: number | null
}

/** The limits of a wish, in the trait's unit; infinite on an open side. */
export function limitsOf(wanted: Wanted): Interval | null {
  switch (wanted.kind) {
    case 'states': return null
    case 'at-least': return {low: wanted.value, high: Infinity}
    case 'at-most': return {low: -Infinity, high: wanted.value}
    case 'between': return {low: wanted.low, high: wanted.high}
    case 'about': {
      if (wanted.tolerance === null) return null
      const room = wanted.tolerance * Math.abs(wanted.value)
      return {low: wanted.value - room, high: wanted.value + room}
    }
  }
}

/**
 * How many birds lie within what the standard allows, and how far is their mean off the mark? Share = birds inside the limits
 * (a bird exactly on one is inside) / birds measured in the trait's window, by step and sex, with its Wilson 95 % interval.
 *
 * Every measured bird counts here, of a small class too: being on the mark needs no company. A trait of which nothing
 * is wanted of a sex has no entry for it.
 */
export function againstStandard(spread: SpreadOfMeasures): readonly AgainstStandard[] {
  return spread.rows.flatMap(({step, trait, sex, values, spread: found}) => {
    if (sex === 'all') return []
    const wanted = trait.wanted[sex]
    if (wanted === null) return []
    const {n, mean} = meanAndDeviation(values.map(({value}) => value))
    const mark = wanted.kind === 'about' ? wanted.value : wanted.kind === 'between' ? (wanted.low + wanted.high) / 2 : null
    const off = mark === null ? null : mean - mark
    return [{
      step, trait, sex, wanted, limits: limitsOf(wanted), n, mean, off, inside: insideWanted(values, wanted),
      offInSd: off === null || found.kind === 'cannot-say' || found.sd === 0 ? null : off / found.sd,
    }]
  })
}

/** Birds within what is wanted of those measured; cannot be said of a wish without limits. */
export function insideWanted(values: readonly Pick<Measured, 'value'>[], wanted: Wanted | null): Share | CannotSay {
  const judged = values.map(({value}) => wanted && meets(wanted, value)).filter(right => right !== null)
  return shareOf(judged.filter(right => right).length, judged.length, [], 'not-counted')
}
