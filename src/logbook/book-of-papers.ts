/** What the association asks for in the logbook, and the papers that prove something. */
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {REQUIREMENT_WORDS} from '../records/schema/requirements.ts'
import type {Keeper, Trait, Written} from './book-of-breed.ts'
import type {SectionKind} from './book-of-standard.ts'

export interface Requirements extends Written {
  readonly association: string | null
  readonly items: readonly Requirement[]
  readonly papers: readonly Paper[]
  /** neighbouring breeds for the table of distinctness, the new breed first */
  readonly distinctness: {readonly breeds: readonly string[]; readonly rows: readonly {readonly character: string; readonly values: readonly string[]; readonly at: Spot}[]} | null
}

export const REQUIREMENT_KINDS = REQUIREMENT_WORDS
export type RequirementKind = (typeof REQUIREMENT_KINDS)[number]

export interface Requirement {
  readonly kind: RequirementKind
  readonly title: string
  /** the asking, in words, as the association puts it */
  readonly asked: string
  /** numbers the asking names: males → 4, females → 16, share → 0.5, cv → 0.1 … */
  readonly atLeast: number | null
  readonly atMost: number | null
  readonly males: number | null
  readonly females: number | null
  readonly seasons: number | null
  /** without a gap between them */
  readonly inARow: boolean
  /** of matings inside the breed alone */
  readonly inside: boolean
  readonly perClass: number | null
  readonly judges: number | null
  /** different keepers that show, at one show */
  readonly exhibitors: number | null
  /** shows that must reach it */
  readonly shows: number | null
  /** a share of birds inside the target's band */
  readonly insideAtLeast: number | null
  /** the most that F may rise in a generation, the least effective size, and how many male lines */
  readonly rateAtMost: number | null
  readonly sizeAtLeast: number | null
  readonly maleLines: number | null
  /** how the figure is judged: by itself, or by the end of its interval that speaks against the breed; null: as the kind has it */
  readonly judgedOn: 'estimate' | 'cautious' | null
  /** whose lower limit has to reach the share; null: the rate itself decides */
  readonly interval: 'families' | 'exact' | null
  readonly trait: Trait | null
  /** ids of clauses of the latest draft that it is about; empty: all that its kind concerns */
  readonly clauses: readonly string[]
  /** classes of birds or entries it is about, as written; empty: all */
  readonly classes: readonly string[]
  /** `young` in the year of hatching, `grown` after it; empty: both */
  readonly ages: readonly ('young' | 'grown')[]
  readonly varieties: readonly string[]
  /** sections that the standard must have */
  readonly sections: readonly SectionKind[]
  /** of livability: to which age, in days */
  readonly toAge: number | null
  /** grades that judges give, from the least, and the least that will do */
  readonly grades: readonly string[]
  readonly leastGrade: string | null
  /** only what is of this day or later counts */
  readonly from: PartialDate | null
  /** it must be reached by then */
  readonly by: PartialDate | null
  /** days: evidence older than this at the book's day no longer counts */
  readonly within: number | null
  /** the keeper's own statement, where only a person can say */
  readonly stated: string | null
  /** `on` is the day of the paper that shows it; `until`: the last day on which the waiver holds */
  readonly waived: {readonly because: string; readonly by: string | null; readonly on: PartialDate | null; readonly until: PartialDate | null} | null
  readonly at: Spot
}

export interface Paper {
  readonly title: string
  readonly proves: RequirementKind
  readonly on: PartialDate
  readonly until: PartialDate | null
  /** whose statement it is */
  readonly keeper: Keeper | null
  readonly at: Spot
}
