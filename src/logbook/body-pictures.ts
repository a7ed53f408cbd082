/** Pictures that records name in their own words, each checked against the files that are there, as those in front matter are. */
import {imagesIn, type BodyImage} from '../records/body-images.ts'
import {frontRange, spotAt} from '../records/front-matter.ts'
import {KIND_IDS} from '../records/places.ts'
import type {Note, Spot} from '../records/problem.ts'
import {inside} from '../records/problem.ts'
import type {Reading} from '../records/records.ts'
import {nearPlaces} from './directory.ts'
import {photoWithoutWords} from './inspect/photo-without-words.ts'
import {pictureElsewhere, unknownPhoto} from './inspect/unknown-photo.ts'

export function checkBodyPictures({records, texts}: Reading, note: Note): void {
  const {photos} = records
  const places = new Map([...photos].map(file => [file, {file: `photos/${file}`, path: []} as Spot]))
  const check = ({url, file, alt, isTag}: BodyImage, at: Spot) => {
    if (file === null) {
      const name = url.slice(url.lastIndexOf('/') + 1)
      if (!/^https?:/i.test(url)) note(pictureElsewhere(url, name, at, photos.has(name)))
    } else if (!photos.has(file)) note(unknownPhoto(file, at, nearPlaces(file, places)))
    else if (alt.trim() === '') note(photoWithoutWords(file, at, isTag ? 'add alt="…" with what a judge would see' : 'write what a judge would see between the square brackets'))
  }
  for (const kind of KIND_IDS) {
    for (const {body, file, at} of records[kind]) {
      const text = texts.get(file) ?? ''
      for (const image of imagesIn(body)) {
        const [start, end] = [offsetInFile(text, body, image.range[0]), offsetInFile(text, body, image.range[1] - 1) + 1]
        check(image, text === '' ? at : spotAt(file, text, start, end - start))
      }
    }
  }
  for (const {data, at} of records.draft) for (const image of imagesIn(data.origin ?? '')) check(image, inside(at, 'origin'))
}

/** Where in its file a character of a body stands, from which the comments were taken out. */
export function offsetInFile(text: string, body: string, offset: number): number {
  const from = frontRange(text)?.end ?? 0
  const below = text.slice(from)
  const comments = [...below.matchAll(/<!--[\s\S]*?(?:-->|$)/g)]
  // the body is the end of what is left without them
  let at = below.length - comments.reduce((sum, [comment]) => sum + comment.length, 0) - body.length + offset
  for (const {0: {length}, index} of comments) if (index <= at) at += length
  return from + at
}
