/**
 * folder → records. Each file is read by itself and once: its place decides its kind, its text alone decides what it holds,
 * so a reading can be remembered by path and text. What is wrong is a slip beside the records, and reading goes on.
 */
import {checksumOf, sumOf, type FileSum} from './checksum.ts'
import {blankedData, closedUp, withoutComments, type Blanked} from './comments.ts'
import type {Folder} from './folder.ts'
import {readFrontMatter, softened, spotAt} from './front-matter.ts'
import {KINDS, type KindId} from './kinds.ts'
import {homeOf, misplaced, type Home} from './misplaced.ts'
import {idOf, isWords, ownerOf, placeFor} from './places.ts'
import type {Note, Slip, Spot} from './problem.ts'
import type {EggRow, FeedRow, FileRecord, Reading, RecordOf, Records, ScoreRow, WeighRow} from './records.ts'
import {readMeasures} from './measures.ts'
import {readScoringDay} from './scoring-day.ts'
import {SHIPPED_LOCI} from './shipped-loci.ts'
import {isList, isMap, type Raw} from './raw.ts'

/** What one file holds. */
export type FileReading =
  | {readonly what: 'record'; readonly kind: KindId; readonly record: FileRecord<unknown>}
  | {readonly what: 'weighings'; readonly rows: readonly WeighRow[]}
  | {readonly what: 'eggCounts'; readonly rows: readonly EggRow[]}
  | {readonly what: 'feedings'; readonly rows: readonly FeedRow[]}
  | {readonly what: 'scorings'; readonly rows: readonly ScoreRow[]}
  /** a record that belongs elsewhere, and is not read here */
  | {readonly what: 'misplaced'; readonly home: Home; readonly owner: KindId | null}

/**
 * Reads every file of a folder, and of the reference of loci those that the traits name.
 *
 * @param reference a folder whose `loci/` holds the reference; ours when none is given
 */
export function readRecords(folder: Folder, reference: Folder = SHIPPED_LOCI): Reading {
  const files = folder.list().sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
  const slips: Slip[] = []
  const note: Note = slip => slips.push(slip)
  const texts = new Map<string, string>()
  const photos = new Set<string>()
  const readings: Gathered[] = []
  const sums: FileSum[] = []
  const homes: [home: string, file: string][] = []
  for (const file of files) {
    const owner = ownerOf(file)
    if (owner?.what === 'paper') continue
    if (owner?.what === 'photo') {
      photos.add(file.slice('photos/'.length))
      continue
    }
    if (owner === null && !isWords(file)) {
      noteUnplaced(file, note)
      continue
    }
    const bytes = readBytes(folder, file, note)
    if (bytes === null) continue
    sums.push({file, sum: sumOf(bytes)})
    const plain = plainText(file, bytes, note)
    if (plain === null) continue
    const blanked = blankedData(file, plain, note)
    texts.set(file, blanked.text)
    const reading = readFile(file, blanked, note)
    if (reading?.what === 'misplaced') {
      note(misplaced(file, reading.home, reading.owner, files.includes(reading.home.file)))
      homes.push([reading.home.file, file])
    } else if (reading) readings.push(reading)
  }
  const records = gather(readings, photos)
  return {
    records, slips, reference: lociNamed(records, reference), files: files.length, texts, checksum: checksumOf(sums),
    faulty: new Map([...slips.filter(slip => slip.severity === 'error').map(({at: {file}}): [string, string] => [file, file]), ...homes]),
  }
}

/** Reads one file from its path and its text (plain line ends, no byte-order mark, no comments in its data); null when it holds nothing that can be read. */
export function readFile(file: string, {text, commented}: Blanked, note: Note): FileReading | null {
  const owner = ownerOf(file)
  if (owner?.what === 'measures') return readMeasures(file, text, note)
  if (owner?.what === 'scores') return {what: 'scorings', rows: readScoringDay(file, text, note)}
  if (owner?.what !== 'record') {
    const home = text.startsWith('---') ? homeOf(file, readFrontMatter(file, text, () => undefined)?.front ?? null, null) : null
    if (home) return {what: 'misplaced', home, owner: null}
    noteUnplaced(file, note)
    return null
  }
  const cut = readFrontMatter(file, text, note)
  if (cut === null) return null
  const home = homeOf(file, cut.front, owner.kind)
  if (home) return {what: 'misplaced', home, owner: owner.kind}
  const at: Spot = {file, path: []}
  const data = KINDS[owner.kind].shape.read(commented ? rawClosedUp(cut.front) : cut.front, at, note)
  const {text: body, unclosed} = withoutComments(cut.body)
  if (unclosed !== null) {
    note({
      code: 'unclosed-comment', severity: 'warning', at: spotAt(file, text, text.length - cut.body.length + unclosed, 4),
      reason: 'the comment that begins here is never closed, so nothing after it is published', remedy: 'close it with -->',
    })
  }
  return data === undefined ? null : {what: 'record', kind: owner.kind, record: {file, id: idOf(file), data, body, at}}
}

/** The loci of the reference that the traits of a project name, and the symbols of all. A fault in the reference is ours, not the keeper's. */
function lociNamed({trait}: Records, reference: Folder): Reading['reference'] {
  const named = new Set(trait.flatMap(({data}) => data.loci ?? []).flatMap(({symbol, linked}) => [symbol, ...linked.map(({key}) => key)]))
  if (named.size === 0) return NO_REFERENCE
  const files = new Map(reference.list().map(file => [idOf(file), file]))
  const loci = new Map<string, RecordOf<'locus'>>()
  for (const symbol of named) {
    const file = files.get(symbol)
    const reading = file === undefined ? null : readFile(file, {text: textOf(reference.bytes(file)), commented: false}, ({reason}) => { throw new Error(`${file}: ${reason}`) })
    // what lies in `loci/` is read as a locus
    if (reading?.what === 'record') loci.set(symbol, reading.record as RecordOf<'locus'>)
  }
  return {symbols: [...files.keys()].sort(), loci}
}

const NO_REFERENCE: Reading['reference'] = {symbols: [], loci: new Map()}

/** A file as it is on disk; null, and a slip, when it cannot be opened. */
function readBytes(folder: Folder, file: string, note: Note): Uint8Array | null {
  try {
    return folder.bytes(file)
  } catch (error) {
    return unreadable(note, {file, path: []}, `the file cannot be opened (${error instanceof Error ? error.message : String(error)})`, 'look whether you may read it, or move it away')
  }
}

const textOf = (bytes: Uint8Array): string => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('utf8')

/** Its text with plain line ends and no byte-order mark; null, and a slip, when it is not text. */
function plainText(file: string, bytes: Uint8Array, note: Note): string | null {
  const plain = textOf(bytes).replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
  const foreign = plain.search(/[\uFFFD\0]/)
  return foreign === -1
    ? softened(plain)
    : unreadable(note, spotAt(file, plain, foreign, 1), 'a letter here is not written in UTF-8', 'save the file as text in UTF-8 (many editors: “Save with encoding”)')
}

function unreadable(note: Note, at: Spot, reason: string, remedy: string): null {
  note({code: 'unreadable-file', severity: 'error', at, reason, remedy})
  return null
}

function noteUnplaced(file: string, note: Note): void {
  note({code: 'unplaced-file', severity: 'warning', at: {file, path: []}, reason: 'nothing is looked for here, so the file is left out', remedy: placeFor(file)})
}

function rawClosedUp(raw: Raw): Raw {
  if (typeof raw === 'string') return closedUp(raw)
  if (isList(raw)) return raw.map(rawClosedUp)
  if (isMap(raw)) return Object.fromEntries(Object.entries(raw).map(([key, inner]) => [key, rawClosedUp(inner)]))
  return raw
}

type Gathered = Exclude<FileReading, {readonly what: 'misplaced'}>

function gather(readings: readonly Gathered[], photos: ReadonlySet<string>): Records {
  const records: Record<string, unknown[]> = Object.fromEntries([...Object.keys(KINDS), 'weighings', 'eggCounts', 'feedings', 'scorings'].map(name => [name, []]))
  for (const reading of readings) {
    if (reading.what === 'record') records[reading.kind]?.push(reading.record)
    else for (const row of reading.rows) records[reading.what]?.push(row)
  }
  // each list holds what readFile gave for its own kind
  return {...records, photos} as unknown as Records
}
