/** The logbook's shows: entries with what judges said of them, and sheets of points. */
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {Keeper, Written} from './book-of-breed.ts'
import type {Bird} from './book-of-flock.ts'

export interface Show extends Written {
  readonly id: string
  readonly name: string
  readonly on: PartialDate
  readonly place: string | null
  /** the reason, when it was officially cancelled */
  readonly cancelled: string | null
  /** who ordered that, and the day of the paper, where it is written */
  readonly order?: {readonly by: string | null; readonly on: PartialDate | null}
  readonly entries: readonly ShowEntry[]
  /** score sheets, heading by heading */
  readonly scores?: readonly ShowScore[]
}

/** Points heading by heading, as a judge or a keeper gave them. */
export interface ShowScore {
  readonly bird: Bird
  /** a keeper, or a judge as a show entry names one */
  readonly by: Keeper | string | null
  readonly draft: number | null
  readonly headings: readonly {readonly name: string; readonly points: number; readonly of: number | null}[]
  readonly at: Spot
}

/** One of a scoring day: its headings are those of the draft's scale. */
export interface KeepersSheet extends ShowScore {
  readonly on: PartialDate | null
  /** the reason, when it was struck out */
  readonly struck: string | null
}

export interface ShowEntry {
  readonly bird: Bird
  readonly class: string | null
  /** safe to publish: the judge's name with consent, else `judge 1` */
  readonly judge: string | null
  readonly place: number | null
  /** does another bird share the place? */
  readonly shared: boolean
  /** how many were shown in the class, ours among them */
  readonly of: number | null
  readonly award: string | null
  readonly points: number | null
  /** the judge's word: `very good` */
  readonly grade: string | null
  readonly remark: string | null
  /** ids of clauses, of the draft it was judged by, that the remark is about by the keeper's own word */
  readonly about: readonly string[]
  readonly disqualified: boolean
  readonly draft: number | null
  /** its line in the record */
  readonly at: Spot
}
