/** Which bird of the book a word of the command line means. */
import type {Bird, Logbook} from '../logbook/book.ts'
import {near, orNear, slipsBetween} from '../records/near.ts'

/** By its id, else by a band that it and no other has worn. */
export function birdOf(book: Logbook, band: string): Bird | undefined {
  const worn = book.birds.filter(bird => bird.bands.some(each => each.band === band))
  return book.birds.find(({id}) => id === band) ?? (worn.length === 1 ? worn[0] : undefined)
}

/** That no bird wears it, and what may have been meant. */
export const noSuchBird = (book: Logbook, band: string): string => `No bird of the book wears ${band}; ${orNear(meant(band, book), 'write its band as in the records')}`

/** Bands that differ in signs, capitals or two places changed: in a row of numbers every other number is a letter away. */
function meant(band: string, book: Logbook): readonly string[] {
  return near(band, book.birds.flatMap(bird => bird.bands.map(each => each.band))).filter(other => (slipsBetween(band, other) ?? 2) < 1)
}
