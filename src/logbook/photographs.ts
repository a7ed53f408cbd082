/** Photographs that records name, each checked against the files that are there. */
import type {Spot} from '../records/problem.ts'
import {inside} from '../records/problem.ts'
import type {Records} from '../records/records.ts'
import type {BirdRecord} from '../records/schema/bird.ts'
import type {Bench} from './bench.ts'
import type {Photo, Written} from './book.ts'
import {photoWithoutWords} from './inspect/photo-without-words.ts'
import {unknownPhoto} from './inspect/unknown-photo.ts'
import {nearPlaces} from './directory.ts'
import type {Open} from './open.ts'

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

/** Kinds whose photographs need nothing else to be known; birds, drafts and the diary take theirs as they are made. */
const PLAIN_KINDS = ['strain', 'trait', 'pen', 'hatch', 'show', 'care', 'step'] as const

/** Gives each thing the photographs that its record names. */
export function givePhotographs(photographs: Photographs, records: Records, things: readonly Open<Written>[]): void {
  const byFile = new Map(things.map(thing => [thing.at.file, thing]))
  for (const kind of PLAIN_KINDS) {
    for (const {data, at} of records[kind]) {
      if (!data.photos) continue
      const photos = photographs.of(data.photos, inside(at, 'photos'))
      const thing = byFile.get(at.file)
      if (thing) thing.photos = photos
    }
  }
}
