/**
 * The logbook: every record of a project, linked. Nothing in here is a string that names something else; a sire is a Bird,
 * a pen a Pen. Whatever must not be published (a keeper's name without consent, `private:` fields, comments) never enters.
 */
import type {Day} from '../records/dates.ts'
import type {BookLinkage, BookLocus, Keeper, Project, Strain, Trait, Written} from './book-of-breed.ts'
import type {Bird, CareEntry, DiaryEntry, EggCount, Feeding, Hatch, LooseWeighing, Pen} from './book-of-flock.ts'
import type {Requirements} from './book-of-papers.ts'
import type {KeepersSheet, Show} from './book-of-shows.ts'
import type {Draft} from './book-of-standard.ts'

export type {Locus} from '../heredity/locus.ts'
export {SEXES} from './book-of-breed.ts'
export {CARE_KINDS} from './book-of-flock.ts'
export {REQUIREMENT_KINDS} from './book-of-papers.ts'
export type {BookLinkage, BookLocus, Keeper, KnownLocus, Photo, Project, Rule, Sex, Strain, Trait, TraitKind, Wanted, Written} from './book-of-breed.ts'
export type {Bird, CareEntry, CareKind, Chicks, DiaryEntry, EggCount, Feeding, Flock, Hatch, Leaving, Look, LooseWeighing, Observation, Pair, Parent, Parentage, Pen, Score, Stay, Step, Tally, Weighing} from './book-of-flock.ts'
export type {Paper, Requirement, RequirementKind, Requirements} from './book-of-papers.ts'
export type {KeepersSheet, Show, ShowEntry, ShowScore} from './book-of-shows.ts'
export type {Clause, Draft, Manner, Section, SectionKind, Severity, Tolerance, Variety} from './book-of-standard.ts'

export interface Logbook {
  readonly project: Project
  /** the day every figure is true on */
  readonly asOf: Day
  readonly strains: readonly Strain[]
  readonly traits: readonly Trait[]
  /** every locus that some trait names, once, by its symbol */
  readonly loci: ReadonlyMap<string, BookLocus>
  /** which of them lie near each other; of two that are not here nothing is known, and they go their own ways */
  readonly linkages: readonly BookLinkage[]
  readonly keepers: readonly Keeper[]
  /** parents before their chicks */
  readonly birds: readonly Bird[]
  readonly pens: readonly Pen[]
  readonly hatches: readonly Hatch[]
  /** weigh days without bands: they belong to a hatch and a sex, not to a bird */
  readonly looseWeighings: readonly LooseWeighing[]
  readonly eggCounts: readonly EggCount[]
  readonly feedings: readonly Feeding[]
  readonly shows: readonly Show[]
  /** the keepers' own sheets of points, of scoring days; struck ones too */
  readonly sheets: readonly KeepersSheet[]
  /** oldest first */
  readonly drafts: readonly Draft[]
  readonly requirements: Requirements | null
  readonly care: readonly CareEntry[]
  readonly diary: readonly DiaryEntry[]
  /** the keeper's own words on a step, by the step's label */
  readonly stepNotes: ReadonlyMap<string, Written>
  /** the records' files that may be named: no other's name is told, since it holds that of somebody who has not agreed to it */
  readonly tellableFiles: ReadonlySet<string>
  /** dated facts after `asOf` that this view of the book leaves aside */
  readonly later: number
  /** it is looked at on an earlier day than its own: what bears no day in it may have been written since */
  readonly isEarlier?: boolean
  /** of the records it was linked from, whole and of whatever day: a view of an earlier day keeps it. 64 hex digits */
  readonly checksum: string
}
