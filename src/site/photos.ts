/**
 * Pictures made fit to publish: turned upright, made smaller and encoded anew, without one block of what the camera wrote (where, when, which camera);
 * drawings are cleaned. The original is never published, nor its file name. Equal files give equal bytes, and equal names: a name tells the
 * file it was made from and how, so it stays when a newer library encodes the same picture to other bytes.
 */
import {createHash} from 'node:crypto'
import sharp from 'sharp'
import {cleanDrawing} from './drawing.ts'
import type {NamedPhoto} from './photos-named.ts'
import type {Picture} from './picture.ts'

export interface PublishedPhotos {
  /** by the file name in the records */
  readonly pictures: ReadonlyMap<string, Picture>
  /** site path → content */
  readonly files: ReadonlyMap<string, Uint8Array | string>
  /** named by a record, but not there */
  readonly missing: readonly string[]
  /** there, but neither a photograph nor a drawing that can be read */
  readonly unreadable: readonly string[]
}

/** Vector instructions round differently from processor to processor; without them equal files give equal bytes on any machine. */
sharp.simd(false)

/**
 * Pixels across, JPEG quality 1 to 100, and what shows through a transparent picture: the page's shaded shell. The third table of quantities and scans in the
 * best order are as near the original as the plain ones, in a seventh fewer bytes (measured on drawn birds); trellis quantisation is not, at one quality.
 */
const HOW = {large: 640, small: 400, quality: 66, ground: '#e8ede6', quantisationTable: 3} as const
const AT_ONCE = 2

interface Made {
  readonly picture: Picture
  readonly files: readonly (readonly [string, Uint8Array | string])[]
}

/** @param read  bytes of a file in `content/photos/`, or null when there is none */
export async function publishPhotos(named: readonly NamedPhoto[], read: (file: string) => Uint8Array | null): Promise<PublishedPhotos> {
  const made: (Made | 'missing' | 'unreadable')[] = []
  let next = 0
  const work = async (): Promise<void> => {
    for (let index = next++; index < named.length; index = next++) {
      const photo = named[index]
      if (photo) made[index] = await makePicture(photo, read)
    }
  }
  await Promise.all(Array.from({length: AT_ONCE}, work))
  const pictures = new Map<string, Picture>(), files = new Map<string, Uint8Array | string>()
  const missing: string[] = [], unreadable: string[] = []
  named.forEach(({file}, index) => {
    const result = made[index]
    if (result === 'missing' || result === undefined) missing.push(file)
    else if (result === 'unreadable') unreadable.push(file)
    else {
      pictures.set(file, result.picture)
      for (const [path, content] of result.files) files.set(path, content)
    }
  })
  return {pictures, files, missing, unreadable}
}

async function makePicture({file, of}: NamedPhoto, read: (file: string) => Uint8Array | null): Promise<Made | 'missing' | 'unreadable'> {
  const bytes = isInside(file) ? read(file) : null
  if (bytes === null) return 'missing'
  try {
    return looksLikeSvg(bytes) ? makeDrawing(of, bytes) : await makePhoto(of, bytes)
  } catch {
    return 'unreadable'
  }
}

/** No path out of the photos folder. */
export const isInside = (file: string): boolean => !/^[/\\]|^[A-Za-z]:|(?:^|[/\\])\.\.(?:[/\\]|$)|\0/.test(file)

const looksLikeSvg = (bytes: Uint8Array): boolean => /^\uFEFF?\s*<(?:\?xml|!--|!DOCTYPE svg|svg)/i.test(Buffer.from(bytes.subarray(0, 200)).toString('utf8'))

function makeDrawing(of: string, bytes: Uint8Array): Made | 'unreadable' {
  const drawing = cleanDrawing(Buffer.from(bytes).toString('utf8'))
  if (!drawing) return 'unreadable'
  const path = `photos/${of}-${nameOf(bytes)}.svg`
  return {picture: {path, width: drawing.width, height: drawing.height, small: null}, files: [[path, drawing.svg]]}
}

async function makePhoto(of: string, bytes: Uint8Array): Promise<Made> {
  const large = await encode(bytes, HOW.large)
  const hash = nameOf(bytes)
  const path = `photos/${of}-${hash}.jpg`
  const picture = {path, width: large.width, height: large.height}
  if (large.width <= HOW.small) return {picture: {...picture, small: null}, files: [[path, large.data]]}
  const small = await encode(bytes, HOW.small)
  const smallPath = `photos/${of}-${hash}-small.jpg`
  return {
    picture: {...picture, small: {path: smallPath, width: small.width, height: small.height}},
    files: [[path, large.data], [smallPath, small.data]],
  }
}

async function encode(bytes: Uint8Array, across: number): Promise<{data: Uint8Array; width: number; height: number}> {
  const {data, info} = await sharp(bytes, {failOn: 'error'})
    .autoOrient()
    .resize({width: across, withoutEnlargement: true})
    .flatten({background: HOW.ground})
    .toColourspace('srgb')
    .jpeg({quality: HOW.quality, progressive: true, chromaSubsampling: '4:2:0', quantisationTable: HOW.quantisationTable, optimiseScans: true, overshootDeringing: true})
    .toBuffer({resolveWithObject: true})
  return {data, width: info.width, height: info.height}
}

/** Of what went in and how it is treated, never of what came out. */
const nameOf = (bytes: Uint8Array): string => createHash('sha256').update(JSON.stringify(HOW)).update(bytes).digest('hex').slice(0, 8)
