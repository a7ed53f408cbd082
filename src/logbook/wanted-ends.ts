import type {Wanted} from './book.ts'

/**
 * The least and the most that is wanted; an open end is infinite.
 *
 * @param mark the amount itself counts, not what is tolerated beside it
 */
export function endsOf(wanted: Exclude<Wanted, {kind: 'states'}>, mark: boolean): readonly [number, number] {
  switch (wanted.kind) {
    case 'at-least': return [wanted.value, Number.POSITIVE_INFINITY]
    case 'at-most': return [Number.NEGATIVE_INFINITY, wanted.value]
    case 'between': return [wanted.low, wanted.high]
    case 'about': {
      if (mark) return [wanted.value, wanted.value]
      const off = wanted.tolerance === null ? Number.POSITIVE_INFINITY : wanted.tolerance * Math.abs(wanted.value)
      return [wanted.value - off, wanted.value + off]
    }
  }
}
