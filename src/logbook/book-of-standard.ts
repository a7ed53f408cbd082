/** The logbook's drafts of the standard: sections, clauses, varieties and what is still accepted. */
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {MANNERS, SECTION_KINDS, SEVERITIES} from '../records/schema/draft.ts'
import type {Photo, Trait, Wanted, Written} from './book-of-breed.ts'

/** One revision of the draft standard. */
export interface Draft extends Written {
  readonly number: number
  readonly on: PartialDate
  readonly title: string
  /** the manner it is printed in; null: sections stand as they were written */
  readonly manner: Manner | null
  readonly classification: string | null
  readonly origin: string | null
  /** in words, with the least weight where there is one */
  readonly egg: string | null
  /** grams that an egg for hatching must have */
  readonly eggAtLeast: number | null
  readonly rings: {readonly male: string | null; readonly female: string | null}
  /** as written, whatever the manner */
  readonly sections: readonly Section[]
  /** grams, by class as written: cock, cockerel, hen, pullet; `high` where a range is given */
  readonly weights: readonly {readonly class: string; readonly grams: number; readonly high: number | null}[]
  readonly points: readonly {readonly name: string; readonly points: number}[]
  /** colour varieties: those with a heading in the section on colour, and those that looks tell; `looks` is empty where none are given */
  readonly varieties: readonly Variety[]
  /** what stands in a table and is held against a trait all the same: `weights/cock`, `egg` */
  readonly rows: readonly Clause[]
  /** why a clause was changed, by its id */
  readonly reasons: ReadonlyMap<string, string>
  readonly photos: readonly Photo[]
}

export type Manner = (typeof MANNERS)[number]
export type SectionKind = (typeof SECTION_KINDS)[number]
export type Severity = (typeof SEVERITIES)[number]

export interface Section {
  /** steady from draft to draft: `general-characteristics-male` */
  readonly id: string
  readonly title: string
  /** what it is about, by its heading or as the draft says; null: something of the keeper's own */
  readonly kind: SectionKind | null
  /** Markdown before its first clause */
  readonly lead: string
  readonly clauses: readonly Clause[]
}

export interface Variety {
  readonly name: string
  /** a bird that shows all of these is of it */
  readonly looks: ReadonlyMap<Trait, Wanted>
}

export interface Clause {
  /** unique in the draft and steady from draft to draft: `general-characteristics-male/tail`; of a variety `colour/light/male` */
  readonly id: string
  readonly title: string
  /** Markdown of the clause without its run-in head */
  readonly text: string
  /** of which sex it speaks, by its section or name; null: both, as do clauses on the male where the female is described as he is */
  readonly sex: 'male' | 'female' | null
  readonly variety: string | null
  readonly trait: Trait | null
  /** what it allows of its trait, of the sex it speaks of: its own words, else the trait's target; null where neither says */
  readonly allows: Trait['wanted']
  /** does the clause itself say what it allows? */
  readonly ownRange: boolean
  readonly mandatory: boolean
  readonly ifMissed: Severity | null
  readonly accepted: Tolerance | null
  /** its entry in the front matter; where it has none, the draft */
  readonly at: Spot
}

/** What may still be shown for some seasons, though the clause asks for other things. */
export interface Tolerance {
  readonly what: string
  readonly looks: Trait['wanted']
  /** the last season */
  readonly until: number
  readonly then: Severity | null
}
