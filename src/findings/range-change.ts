import type {Trait, Wanted} from '../logbook/book.ts'

/**
 * How what is allowed changed: `wider` takes in all that was allowed and more, `narrower` leaves some of it out and takes in nothing new, `up` and `down` do both;
 * `other` where there is no up or down. `given` and `gone`: nothing was allowed by name before, or nothing is now. `untold`: one of them names a mark without limits.
 */
export type RangeChange = 'wider' | 'narrower' | 'up' | 'down' | 'other' | 'given' | 'gone' | 'untold'

interface Span {
  readonly low: number
  readonly high: number
}

/** Room for rounding in the last bit. */
const SLACK = 1e-12
const alike = (a: number, b: number): boolean => a === b || (Number.isFinite(a) && Number.isFinite(b) && Math.abs(a - b) <= SLACK * Math.max(Math.abs(a), Math.abs(b)))

/** The least and the most that is allowed, within the marks of a scale where there is one; null where no limits are named. */
export function spanOf(wanted: Wanted, scale: Trait['scale']): Span | null {
  const least = scale?.from ?? Number.NEGATIVE_INFINITY, most = scale?.to ?? Number.POSITIVE_INFINITY
  switch (wanted.kind) {
    case 'states': return null
    case 'at-least': return {low: wanted.value, high: most}
    case 'at-most': return {low: least, high: wanted.value}
    case 'between': return {low: wanted.low, high: wanted.high}
    case 'about': {
      const off = wanted.tolerance === null ? null : wanted.tolerance * Math.abs(wanted.value)
      return off === null ? null : {low: Math.max(least, wanted.value - off), high: Math.min(most, wanted.value + off)}
    }
  }
}

/** From one span to another; null where both are the same. */
export function spanChange(before: Span, after: Span): 'wider' | 'narrower' | 'up' | 'down' | null {
  const sameLow = alike(before.low, after.low), sameHigh = alike(before.high, after.high)
  if (sameLow && sameHigh) return null
  const holdsOld = (sameLow || after.low < before.low) && (sameHigh || after.high > before.high)
  const heldByOld = (sameLow || after.low > before.low) && (sameHigh || after.high < before.high)
  return holdsOld ? 'wider' : heldByOld ? 'narrower' : after.low > before.low ? 'up' : 'down'
}

function statesChange(before: readonly string[], after: readonly string[]): RangeChange | null {
  const holdsOld = before.every(state => after.includes(state)), heldByOld = after.every(state => before.includes(state))
  return holdsOld && heldByOld ? null : holdsOld ? 'wider' : heldByOld ? 'narrower' : 'other'
}

const sameWish = (a: Wanted, b: Wanted): boolean => a.kind === 'about' && b.kind === 'about' && a.tolerance === b.tolerance && alike(a.value, b.value)

/** How what one sex may show of one trait changed; null where it did not. Limits are held against each other as they are, by exact inclusion. */
export function rangeChange(before: Wanted | null, after: Wanted | null, scale: Trait['scale']): RangeChange | null {
  if (before === null || after === null) return before === after ? null : before === null ? 'given' : 'gone'
  if (before.kind === 'states' || after.kind === 'states') return before.kind === 'states' && after.kind === 'states' ? statesChange(before.states, after.states) : 'other'
  const was = spanOf(before, scale), is = spanOf(after, scale)
  if (was && is) return spanChange(was, is)
  if (sameWish(before, after)) return null
  return before.kind === 'about' && after.kind === 'about' && before.tolerance === after.tolerance ? (after.value > before.value ? 'up' : 'down') : 'untold'
}
