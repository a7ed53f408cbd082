/** Nothing private leaves: a word is planted in every private place, and the whole built site is searched for it. */
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import sharp from 'sharp'
import {beforeAll, describe, expect, it} from 'vitest'
import {publish} from '../../src/commands/publish.ts'
import {layDown} from '../bench/draw-book.ts'
import {filesOf} from '../folders/files-of.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {markedJpeg, markedPng} from './marked-photo.ts'
import {Canaries, plantedBook} from './planted-book.ts'

const root = temporaryFolder('privacy')
const records = join(root, 'records')
const site = join(root, 'site')
const forCommittee = join(root, 'site-for-committee')
const canaries = new Canaries()
const PUBLIC = ['publickeeper', 'publicjudge', 'publicbody', 'publicalt', 'publiccaption', 'publicnote', 'publicreason', 'publicremark', 'publicsecondremark', 'publicstrucktoo', 'publicstatement', 'publicclause', 'publiccharacter', 'publicdiary']

/** Pictures written into pages are looked into as well. */
function withPicturesInside(bytes: Buffer): Buffer {
  const inside = [...bytes.toString('latin1').matchAll(/data:[\w/+.-]+;base64,([A-Za-z0-9+/=]+)/g)].map(match => Buffer.from(match[1] ?? '', 'base64'))
  return Buffer.concat([bytes, ...inside])
}

/** A word as it would stand in one of the ways that programs write text. */
const spellings = (word: string) => [Buffer.from(word, 'utf8'), Buffer.from(word, 'utf16le'), Buffer.from(word, 'utf8').toString('base64').slice(0, -4)]

function placesOf(word: string, folder = site): string[] {
  return filesOf(folder).filter(path => {
    if (path.toLowerCase().includes(word)) return true
    const bytes = withPicturesInside(readFileSync(join(folder, path)))
    return spellings(word).some(spelling => bytes.includes(spelling)) || bytes.toString('latin1').toLowerCase().includes(word)
  })
}

beforeAll(async () => {
  layDown(records, new Map(Object.entries(plantedBook(canaries))))
  canaries.at('photoname')
  canaries.at('picturename')
  const photos = join(records, 'photos')
  mkdirSync(photos)
  const marks = {exif: canaries.at('exif'), xmp: canaries.at('xmp'), comment: canaries.at('jpegcomment'), behind: canaries.at('behindtheend')}
  writeFileSync(join(photos, 'canaryphotonamecanary.jpg'), await markedJpeg(marks))
  writeFileSync(join(photos, 'canarypicturenamecanary.png'), await markedPng(canaries.at('pngtext')))
  writeFileSync(join(photos, `${canaries.at('unnamedphoto')}.jpg`), await markedJpeg({...marks, exif: canaries.at('unnamedexif')}))
  mkdirSync(join(records, 'papers'))
  writeFileSync(join(records, 'papers', 'canarypaperfilecanary.pdf'), canaries.at('papertext'))
  writeFileSync(join(records, 'papers', 'canarywaiverpapercanary.pdf'), canaries.at('waivertext'))
  mkdirSync(join(records, 'attic'))
  writeFileSync(join(records, 'attic', `${canaries.at('atticname')}.bin`), canaries.at('attic'))
  const world = listeningWorld()
  const code = await publish({folder: records, to: site, asOf: undefined, quiet: true}, world)
  expect(code, `${world.said.out}${world.said.err}`).toBe(0)
})

describe('a built site', () => {
  it('holds the public words, so that the search is known to find some', () => {
    expect(PUBLIC.filter(word => placesOf(word).length === 0)).toEqual([])
  })

  it('holds no word from a private place: no page, data file, chart, picture or file name', () => {
    const found = canaries.words.flatMap(word => placesOf(word).map(path => `${word} in ${path}`))
    expect(found).toEqual([])
  })

  it('holds no word that begins like one, in case a place forgot to remember its own', () => {
    expect(placesOf('canary')).toEqual([])
  })

  it('holds no picture with a block of metadata, and none as large as its original', async () => {
    const pictures = filesOf(site).filter(path => /\.(?:jpe?g|png|webp|avif)$/.test(path))
    expect(pictures.length).toBeGreaterThan(0)
    for (const path of pictures) {
      const {exif, xmp, iptc, tifftagPhotoshop, width} = await sharp(join(site, path)).metadata()
      expect({path, exif, xmp, iptc, tifftagPhotoshop}).toEqual({path, exif: undefined, xmp: undefined, iptc: undefined, tifftagPhotoshop: undefined})
      expect(width, path).toBeLessThanOrEqual(1800)
    }
  })
})

describe('the committee’s dossier, beside it', () => {
  it('is one file, and names the keeper, the region and the judge whom the site may not', () => {
    expect(filesOf(forCommittee).filter(path => !path.startsWith('.'))).toEqual(['dossier.html'])
    expect(canaries.committee).toHaveLength(3)
    expect(canaries.committee.filter(word => placesOf(word, forCommittee).length === 0)).toEqual([])
  })

  it('holds no other word from a private place: an id, a short name or words without consent to all', () => {
    const kept = new Set(canaries.committee)
    expect(canaries.words.filter(word => !kept.has(word) && placesOf(word, forCommittee).length > 0)).toEqual([])
  })

  it('says that it is not to be published, which the public one has no need to', () => {
    expect(readFileSync(join(forCommittee, 'dossier.html'), 'utf8')).toContain('For the committee only, not to be published. Keeper')
    expect(readFileSync(join(site, 'dossier.html'), 'utf8')).not.toMatch(/committee only/i)
  })

  it('has the place of every name that it tells in the site too, by a letter or a number', () => {
    const dossier = readFileSync(join(site, 'dossier.html'), 'utf8')
    expect(dossier).toContain('judge 4')
    expect(dossier).toMatch(/keepers without consent to be named stand as a letter/)
  })
})

describe('the places searched', () => {
  it('are pages, data, the search index, the feed and charts', () => {
    const files = filesOf(site)
    for (const kind of ['index.html', 'data/book.json', 'feed.xml']) expect(files, kind).toContain(kind)
    expect(files.filter(path => /^search-index\.js$|\.vl\.json$/.test(path)).length).toBeGreaterThan(1)
  })
})

describe('the planting itself', () => {
  it('marks the photographs where cameras do', async () => {
    const {exif, xmp} = await sharp(join(records, 'photos', 'canaryphotonamecanary.jpg')).metadata()
    expect(exif?.includes('canaryexifcanary')).toBe(true)
    expect(xmp?.includes('canaryxmpcanary')).toBe(true)
    const png = await sharp(join(records, 'photos', 'canarypicturenamecanary.png')).metadata()
    expect(JSON.stringify(png.comments)).toContain('canarypngtextcanary')
  })
})
