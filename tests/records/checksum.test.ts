/** The checksum of a folder: the published value of SHA-256, a slow obvious twin, and laws. */
import {execFileSync} from 'node:child_process'
import {createHash} from 'node:crypto'
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {checksumLines, checksumOf, shortChecksum, sumOf} from '../../src/records/checksum.ts'
import {folderInMemory, folderOnDisk, type Folder} from '../../src/records/folder.ts'
import {readRecords} from '../../src/records/read.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import '../seeded.ts'
import {front} from './reading.ts'

const BOOK = {
  'project.md': front('name: Skerry Fowl\naim: A fowl that stands wind.'),
  'birds/22-001.md': front('band: 22-001\nsex: male'),
  'birds/22-002.md': front('band: 22-002\nsex: female'),
  'measures/weights.csv': 'band,on,weight\n22-001,2022-08-13,2400\n',
}
const wholeOf = (files: Readonly<Record<string, string>>): string => readRecords(folderInMemory(files)).checksum.whole

describe('sumOf(bytes)', () => {
  // FIPS 180-2 (2002), appendix B.1: the message “abc”
  it('gives the published digest', () => {
    expect(sumOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  })
})

describe('the checksum of a reading', () => {
  it('is the sum of a line a file, in order of path, worked here by hand', () => {
    const lines = Object.entries(BOOK).sort(([a], [b]) => (a < b ? -1 : 1)).map(([file, text]) => `${createHash('sha256').update(text).digest('hex')}  ${file}\n`)
    expect(wholeOf(BOOK)).toBe(createHash('sha256').update(lines.join('')).digest('hex'))
    expect(checksumLines(readRecords(folderInMemory(BOOK)).checksum.files)).toBe(lines.join(''))
  })

  it('does not ask in which order the files lie, and is the same again', () => {
    const all = fc.shuffledSubarray(Object.entries(BOOK), {minLength: 4, maxLength: 4})
    fc.assert(fc.property(all, files => wholeOf(Object.fromEntries(files)) === wholeOf(BOOK)))
  })

  it('is another with one byte changed, wherever', () => {
    const places = fc.constantFrom(...Object.keys(BOOK) as (keyof typeof BOOK)[]).chain(file => fc.tuple(fc.constant(file), fc.nat(BOOK[file].length - 1)))
    fc.assert(fc.property(places, ([file, at]) => {
      const text = BOOK[file], changed = `${text.slice(0, at)}${text[at] === '0' ? '1' : '0'}${text.slice(at + 1)}`
      return wholeOf({...BOOK, [file]: changed}) !== wholeOf(BOOK)
    }))
  })

  it.each([
    ['a file more', {'birds/22-003.md': front('band: 22-003\nsex: male')}],
    ['a comment more', {'birds/22-001.md': `${BOOK['birds/22-001.md']}<!-- seen -->`}],
    ['a line end of another kind', {'project.md': BOOK['project.md'].replaceAll('\n', '\r\n')}],
    ['a byte-order mark', {'project.md': `\uFEFF${BOOK['project.md']}`}],
    ['a file that is not text', {'birds/22-003.md': '\0'}],
    ['a file of words that belongs nowhere', {'notes.md': 'Rain.\n'}],
  ])('is another with %s', (_, more) => {
    expect(wholeOf({...BOOK, ...more})).not.toBe(wholeOf(BOOK))
  })

  it('is another where two files have changed their names', () => {
    expect(wholeOf({...BOOK, 'birds/22-001.md': BOOK['birds/22-002.md'], 'birds/22-002.md': BOOK['birds/22-001.md']})).not.toBe(wholeOf(BOOK))
  })

  it('counts no photograph, paper, template or file of a tool', () => {
    const more = {'photos/a.jpg': 'x', 'papers/vet.pdf': 'x', 'templates/pages/home.hbs': 'x', 'birds/.swap.md': 'x'}
    expect(wholeOf({...BOOK, ...more})).toBe(wholeOf(BOOK))
  })

  it('opens no file twice, nor any that is no record', () => {
    const opened: string[] = [], folder = folderInMemory({...BOOK, 'photos/a.jpg': 'x'})
    const watched: Folder = {list: () => folder.list(), bytes: file => { opened.push(file); return folder.bytes(file) }}
    const {checksum} = readRecords(watched)
    expect(opened).toEqual(checksum.files.map(({file}) => file))
  })

  it('leaves out what cannot be opened, which is a fault already', () => {
    const folder = folderInMemory(BOOK)
    const shut: Folder = {list: () => folder.list(), bytes(file) {
      if (file === 'project.md') throw new Error('EACCES')
      return folder.bytes(file)
    }}
    const {checksum, slips} = readRecords(shut)
    expect(checksum.files.map(({file}) => file)).not.toContain('project.md')
    expect(slips.map(({code}) => code)).toEqual(['unreadable-file'])
  })
})

describe('on disk', () => {
  const root = temporaryFolder('checksum')
  const text = {...BOOK, 'birds/22-003.md': `\uFEFF---\r\nband: 22-003\r\nsex: male\r\n---\r\nGrå.\r\n`}
  for (const [file, words] of Object.entries(text)) {
    mkdirSync(dirname(join(root, file)), {recursive: true})
    writeFileSync(join(root, file), words)
  }

  it('is what it is in memory', () => {
    expect(readRecords(folderOnDisk(root)).checksum.whole).toBe(wholeOf(text))
  })

  it.runIf(canSum())('can be worked without Pinfeather', () => {
    const {checksum: {files, whole}} = readRecords(folderOnDisk(root))
    const lines = execFileSync('sha256sum', files.map(({file}) => file), {cwd: root})
    expect(execFileSync('sha256sum', {input: lines}).toString().slice(0, 64)).toBe(whole)
  })
})

function canSum(): boolean {
  try {
    return execFileSync('sha256sum', {input: ''}).length > 0
  } catch {
    return false
  }
}

describe('shortChecksum(whole)', () => {
  it('is the first sixteen digits in four groups', () => {
    expect(shortChecksum(checksumOf([]).whole)).toBe('e3b0 c442 98fc 1c14') // FIPS 180: the empty message begins so; value as widely printed, from memory
  })
})
