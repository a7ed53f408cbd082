/** Photographs that records name, each checked against the files that are there. */
import type {Spot} from '../records/problem.ts'
import {inside} from '../records/problem.ts'
import type {BirdRecord} from '../records/schema/bird.ts'
import type {Bench} from './bench.ts'
import type {Photo} from './book.ts'
import {photoWithoutWords} from './inspect/photo-without-words.ts'
import {unknownPhoto} from './inspect/unknown-photo.ts'
import {nearPlaces} from './directory.ts'

export interface Photographs {
  of(read: BirdRecord['photos'], at: Spot): readonly Photo[]
}

export function linkPhotographs({records, note}: Bench): Photographs {
  const places = new Map([...records.photos].map(file => [file, {file: `photos/${file}`, path: []} as Spot]))
  return {
    of(read, at) {
      return (read ?? []).map((photo, index): Photo => {
        const stands = inside(at, index)
        if (!records.photos.has(photo.file)) note(unknownPhoto(photo.file, inside(stands, 'file'), nearPlaces(photo.file, places)))
        else if (photo.alt === undefined) note(photoWithoutWords(photo.file, stands))
        return {file: photo.file, on: photo.on ?? null, view: photo.view ?? null, alt: photo.alt ?? null, caption: photo.caption ?? null}
      })
    },
  }
}
