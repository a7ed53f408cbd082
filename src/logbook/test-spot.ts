/** Where a test of a bird is written. */
import {inside, type Spot} from '../records/problem.ts'
import type {Bird, Locus} from './book.ts'
import type {Telling} from './tellings.ts'

/** In the record that counts: of several the last; without them in the bird’s own. */
export function testSpot(bird: Bird, {symbol}: Locus, tellings?: readonly Telling[]): Spot {
  const by = tellings?.findLast(({told}) => told.tested?.some(({key}) => key === symbol))
  return inside(by?.at ?? bird.at, 'tested', symbol)
}
