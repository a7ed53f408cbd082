/** The linked book with what stands behind it, for the rules that look at the whole. */
import type {Missed, Span} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Confidential} from './confidential.ts'
import type {Bird, Hatch, Logbook, Pen} from './book.ts'
import type {Matings} from './matings.ts'
import type {ParentUse} from './parent-uses.ts'
import type {Pens} from './pens.ts'
import type {Steps} from './steps.ts'
import type {Told} from './tellings.ts'
import type {Day} from '../records/dates.ts'
import type {RecordOf} from '../records/records.ts'

export interface Linked {
  readonly bench: Bench
  readonly book: Logbook
  /** what is told of each bird, and where */
  readonly tellings: ReadonlyMap<Bird, Told>
  readonly records: {readonly hatch: ReadonlyMap<Hatch, RecordOf<'hatch'>>; readonly pen: ReadonlyMap<Pen, RecordOf<'pen'>>}
  readonly staysOf: Pens['staysOf']
  readonly steps: Steps
  /** the project's own as-of, when it names one that holds */
  readonly ownAsOf: Day | null
  /** birds whose records are at fault already, so that nothing more is said of their origin and age: a band given twice, a loop in descent */
  readonly doubtful: ReadonlySet<Bird>
  /** every use of a band that no bird wears */
  readonly missedBands: readonly Missed[]
  /** birds that some other record names */
  readonly namedBirds: ReadonlySet<Bird>
  /** every place where a bird is used as a parent, pens first */
  readonly uses: readonly ParentUse[]
  /** the matings that the eggs of a hatch may have come from */
  readonly matings: ReadonlyMap<Hatch, Matings>
  /** what the committee may be told beside the book */
  readonly confidential: Confidential | null
  /** when the eggs of a hatch were laid */
  layingOf(hatch: Hatch): Span | null
}
