/** All records of a folder, each read by itself; nothing here knows another file. */
import type {Checksum} from './checksum.ts'
import type {PartialDate} from './dates.ts'
import type {KINDS, KindId} from './kinds.ts'
import type {Slip, Spot} from './problem.ts'
import type {Quantity} from './quantities.ts'
import type {Ref} from './scalars.ts'
import type {SexWord} from './schema/parts.ts'
import type {Others, ValueOf} from './shape.ts'

/** One Markdown record: its typed front matter and the keeper's own words, comments taken out. */
export interface FileRecord<T> {
  /** path inside the folder of records, with `/` */
  readonly file: string
  /** the file's name without `.md` */
  readonly id: string
  readonly data: T
  readonly body: string
  readonly at: Spot
}

export type RecordOf<K extends KindId> = FileRecord<ValueOf<(typeof KINDS)[K]['shape']>>

/** A row of a weigh day: of a bird, or of a hatch and sex where no bands were read. */
export interface WeighRow {
  readonly of: {readonly band: Ref} | {readonly hatch: Ref; readonly sex: SexWord}
  readonly on: PartialDate
  readonly values: readonly {readonly measure: string; readonly quantity: Quantity; readonly at: Spot; readonly keyAt: Spot}[]
  readonly at: Spot
}

/** A row of an egg record: of a pen or of one hen. */
export interface EggRow {
  readonly of: {readonly band: Ref} | {readonly pen: Ref}
  readonly on: PartialDate
  readonly eggs: number
  readonly hens: number | null
  /** over so many days, where it is written */
  readonly days?: number
  /** of so many of them together */
  readonly weight?: {readonly grams: number; readonly eggs: number}
  readonly at: Spot
}

/** A row of a feed record, of a pen or of a hatch. */
export interface FeedRow {
  readonly of: {readonly pen: Ref} | {readonly hatch: Ref}
  readonly on: PartialDate
  /** grams */
  readonly feed: number
  /** grams that were still there before it was given, where it is written */
  readonly left?: number
  readonly at: Spot
}

/** A row of a scoring day. */
export interface ScoreRow {
  readonly band: Ref
  readonly on: PartialDate | null
  readonly by: Ref | null
  /** by their headings: traits, and headings of the scale of points */
  readonly looks: Others
  /** the draft of the standard it was made under, where the row says so */
  readonly draft: {readonly number: number; readonly at: Spot} | null
  readonly struck: string | null
  readonly at: Spot
}

export type Records = {readonly [K in KindId]: readonly RecordOf<K>[]} & {
  readonly weighings: readonly WeighRow[]
  readonly eggCounts: readonly EggRow[]
  readonly feedings: readonly FeedRow[]
  readonly scorings: readonly ScoreRow[]
  /** the files in `photos/`, by their path inside it */
  readonly photos: ReadonlySet<string>
}

export interface Reading {
  readonly records: Records
  /** of the reference of loci: those that the traits name, by symbol, and the symbols of all (none where no trait names a locus) */
  readonly reference: {readonly symbols: readonly string[]; readonly loci: ReadonlyMap<string, RecordOf<'locus'>>}
  /** in the order found; `locate` sorts them by place */
  readonly slips: readonly Slip[]
  /** files looked at */
  readonly files: number
  /** files of which something could not be read, by their place and by the place where they belong: what they would have named is not missed a second time */
  readonly faulty: ReadonlyMap<string, string>
  /** the text of every file that was read (plain line ends, no byte-order mark, no comments in its data), for `locate`: no file is opened twice */
  readonly texts: ReadonlyMap<string, string>
  /** of every file that was opened, its bytes as they are on disk */
  readonly checksum: Checksum
}
