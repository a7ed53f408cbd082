import type {Bird, Pen} from '../logbook/book.ts'

/** The pen that each bird was last put into; of two begun on one day the later in the list. Birds in none of these pens have none. */
export function lastPens(pens: readonly Pen[]): ReadonlyMap<Bird, Pen> {
  const last = new Map<Bird, {readonly pen: Pen; readonly from: number}>()
  for (const pen of pens) {
    for (const {bird, from} of [...pen.males, ...pen.females]) {
      const here = {pen, from: (from ?? pen.from)?.first ?? -Infinity}, before = last.get(bird)
      if (!before || here.from >= before.from) last.set(bird, here)
    }
  }
  return new Map([...last].map(([bird, {pen}]) => [bird, pen] as const))
}
