/** Photographs set as plates, two abreast: a head where they are numbered, and their captions in one beneath. */
import type {Photo} from '../logbook/book.ts'
import {dateWords} from './dates.ts'

export interface Plate {
  /** `Plate II.`, or empty */
  readonly head: string
  readonly caption: string
  readonly pictures: readonly {readonly file: string; readonly alt: string}[]
}

const ROMAN = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII']

const full = (text: string): string => (/[.!?…]$/.test(text) ? text : `${text}.`)

/** What one picture's caption says: the keeper's words, else what is seen, and when it was taken. */
function captionOf(photo: Photo): string {
  const words = photo.caption ?? photo.view
  return [...(words === null ? [] : [full(words)]), ...(photo.on === null ? [] : [full(dateWords(photo.on))])].join(' ')
}

/** What a judge would see, in the keeper's words; else the best that is written. */
const altOf = (photo: Photo, otherwise: string): string => photo.alt ?? photo.caption ?? photo.view ?? otherwise

/** Two pictures a plate, numbered when asked. `subject` stands in for a picture of which nothing is written. */
export function plates(photos: readonly Photo[], subject: string, numbered: boolean): readonly Plate[] {
  const pairs = photos.flatMap((_, index) => (index % 2 === 0 ? [photos.slice(index, index + 2)] : []))
  return pairs.map((pair, index) => ({
    head: numbered ? `Plate ${ROMAN[index] ?? String(index + 1)}.` : '',
    caption: pair.map(captionOf).filter(words => words !== '').join(' '),
    pictures: pair.map(photo => ({file: photo.file, alt: altOf(photo, subject)})),
  }))
}
