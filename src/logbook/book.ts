/**
 * The logbook: every record of a project, linked. Nothing in here is a string that names something else; a sire is a Bird,
 * a pen a Pen. Whatever must not be published (a keeper's name without consent, `private:` fields, comments) never enters.
 */
import type {GenotypePattern} from '../heredity/genotype-notation.ts'
import type {Locus} from '../heredity/locus.ts'
import type {Day, PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {CARE_WORDS} from '../records/schema/care.ts'
import type {CAUTION_WORDS, SOURCE_WORDS} from '../records/schema/locus.ts'
import {SEX_WORDS} from '../records/schema/parts.ts'
import type {Species} from '../records/species.ts'
import type {Requirements} from './book-of-papers.ts'
import type {KeepersSheet, Show} from './book-of-shows.ts'
import type {Draft} from './book-of-standard.ts'

export type {Locus}
export {REQUIREMENT_KINDS} from './book-of-papers.ts'
export type {Paper, Requirement, RequirementKind, Requirements} from './book-of-papers.ts'
export type {KeepersSheet, Show, ShowEntry, ShowScore} from './book-of-shows.ts'
export type {Clause, Draft, Manner, Section, SectionKind, Severity, Tolerance, Variety} from './book-of-standard.ts'

export const SEXES = SEX_WORDS
export type Sex = (typeof SEXES)[number]

/** Everything a record of any kind carries: where it stands and the keeper's own words (Markdown, comments taken out). */
export interface Written {
  readonly at: Spot
  readonly body: string
  /** the pictures it names, where it names any */
  readonly photos?: readonly Photo[]
}

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

export interface Project extends Written {
  readonly name: string
  readonly species: Species
  readonly aim: string
  readonly begun: PartialDate | null
  readonly recurrent: Strain | null
  readonly donors: readonly Strain[]
  /** step labels the keeper plans, in order; those not yet reached are drawn as planned */
  readonly ladder: readonly string[]
  readonly units: 'metric' | 'imperial'
  /** the sheet that PDFs are set on */
  readonly paper: 'a4' | 'letter'
  readonly limits: {readonly matingInbreeding: number | null; readonly inbreedingPerGeneration: number | null}
  /** days a hen may keep a removed male's sperm; default 21 */
  readonly spermStoreDays: number
  readonly incubationDays: number
  readonly site: {readonly url: string | null; readonly language: string}
}

export interface Strain extends Written {
  readonly id: string
  readonly name: string
  readonly role: 'recurrent' | 'donor' | 'other'
  readonly trueFor: ReadonlyMap<Trait, string>
  /** stated allele frequencies: symbol → allele → share */
  readonly alleles: ReadonlyMap<string, ReadonlyMap<string, number>>
  readonly inbreeding: number
  readonly kinship: number
}

export interface Keeper extends Written {
  /** safe to publish: the record's id with consent, else `keeper-a` */
  readonly id: string
  /** safe to publish: the name with consent, else `keeper A` */
  readonly name: string
  readonly consents: boolean
  readonly since: PartialDate | null
  /** region as the keeper is willing to state it; null without consent */
  readonly region: string | null
}

export type TraitKind = 'states' | 'ordered' | 'graded' | 'measured'

export interface Trait extends Written {
  readonly id: string
  readonly name: string
  readonly kind: TraitKind
  /** for `states` and `ordered`; empty otherwise. `ordered` from the least to the most */
  readonly states: readonly string[]
  /** for `graded`: the lowest and highest mark */
  readonly scale: {readonly from: number; readonly to: number} | null
  /** for `measured`: the unit every value of this trait is kept and shown in, as the record writes it (g, kg, mm, degrees …) */
  readonly unit: string | null
  /** for `measured`: the column of the weigh days, when there is one */
  readonly measure: string | null
  /** age in days at which it is measured, and how many days off still count */
  readonly atAge: number | null
  readonly window: number | null
  readonly wanted: {readonly male: Wanted | null; readonly female: Wanted | null}
  readonly required: boolean
  readonly seenIn: Sex | null
  /** age in days from which it can be scored; 0 from hatch */
  readonly scoredFrom: number
  /** seen only in hens that have begun to lay */
  readonly fromFirstEgg: boolean
  /** those it names and those its rules name: the same things as in the book's `loci` */
  readonly loci: readonly Locus[]
  /** first match wins, lethal ones before all others; empty where no rules are known */
  readonly shows: readonly Rule[]
  /** true state → scored state → chance; empty when none is stated */
  readonly misscoring: ReadonlyMap<string, ReadonlyMap<string, number>>
}

export type Wanted =
  | {readonly kind: 'states'; readonly states: readonly string[]}
  | {readonly kind: 'at-least'; readonly value: number}
  | {readonly kind: 'at-most'; readonly value: number}
  /** within `tolerance` (a share of the mark) of `value`, both in the trait's unit; a value exactly on a limit is inside */
  | {readonly kind: 'about'; readonly value: number; readonly tolerance: number | null}
  | {readonly kind: 'between'; readonly low: number; readonly high: number}

/** One line of a trait's rules: what birds of these genotypes look like. */
export interface Rule {
  /** what it asks of each locus that it names */
  readonly patterns: ReadonlyMap<Locus, GenotypePattern>
  /** a state of the trait, or `lethal`: of such chicks none hatches */
  readonly is: string
  /** the only sex it holds for */
  readonly sex: 'male' | 'female' | null
  /** share of the birds it fits that show it, 0 to 1; of the rest the next rule that fits holds */
  readonly penetrance: number
  /** whose rule it is */
  readonly from: 'project' | 'reference'
}

export interface BookLocus {
  readonly locus: Locus
  /** what is known of it beyond its alleles: from the project's own record of it, else from the reference; null where neither has it */
  readonly known: KnownLocus | null
}

/** What a breeder ought to know of a locus. */
export interface KnownLocus {
  /** whose words these are */
  readonly from: 'project' | 'reference'
  /** `Pea comb` */
  readonly name: string
  /** Markdown */
  readonly body: string
  readonly chromosome: string | null
  readonly gene: string | null
  readonly dominance: string | null
  readonly cautions: readonly {readonly about: (typeof CAUTION_WORDS)[number]; readonly says: string}[]
  /** what is often heard and does not hold, with what holds */
  readonly beliefs: readonly {readonly heard: string; readonly right: string}[]
  /** what is not settled, or is known from memory only */
  readonly doubts: readonly string[]
  readonly sources: readonly {readonly by: string; readonly year: number | null; readonly known: (typeof SOURCE_WORDS)[number]}[]
  /** its number in the catalogue of inherited traits of animals */
  readonly catalogue: string | null
}

export interface BookLinkage {
  readonly loci: readonly [Locus, Locus]
  /** share of gametes that cross over between them, 0 to ½ */
  readonly recombination: number
  /** why that share is not to be relied on */
  readonly doubt: string | null
  readonly from: 'project' | 'reference'
}

/** One scoring of one trait. `value` is a state for `states` and `ordered`, else a number in the trait's unit. */
export interface Score {
  readonly trait: Trait
  readonly value: string | number
  /** null: written with the chick, no day given */
  readonly on: PartialDate | null
  readonly by: Keeper | null
  /** the reason, when the score was struck out */
  readonly struck: string | null
  /** before the trait can be scored, or off the weighing window: shown, never counted */
  readonly outside: boolean
  /** the draft of the standard it was made under, where the records say so; else the one in force on its day */
  readonly draft?: number
  readonly at: Spot
}

/**
 * All scorings and weighings that speak of one trait of one chick, oldest first. Of those neither struck nor outside their window the
 * latest counts; for a trait measured at an age the nearest to it. Where none of a bird's own counts, that of the tally it was banded from does.
 */
export interface Look {
  readonly counted: Score | null
  readonly scores: readonly Score[]
}

export interface Parent {
  readonly bird: Bird
  readonly chance: number
}

/** A sire and a dam that may have had this chick together; null is a bird outside the book. Chances sum to 1. */
export interface Pair {
  readonly sire: Bird | null
  readonly dam: Bird | null
  readonly chance: number
}

export interface Parentage {
  /** founder: no parents in the book, or of a bought setting · known: one pair · uncertain: several pairs or a missing side */
  readonly kind: 'founder' | 'known' | 'uncertain'
  readonly pairs: readonly Pair[]
  /** the same seen from one side, likeliest first; what is wanting to 1 is a bird outside the book */
  readonly sires: readonly Parent[]
  readonly dams: readonly Parent[]
  /** the strain of a parent outside the book, where the records state one: it enters the shares and the step */
  readonly outside?: {readonly sire: Strain | null; readonly dam: Strain | null}
}

export interface Step {
  /** `F1`, `BC2`, `BC3F2`, a named step, `strain` or `mixed`; with several donors `BC2-<donor>` */
  readonly label: string
  readonly kind: 'strain' | 'filial' | 'backcross' | 'named' | 'mixed'
  /** the strain crossed back to, for backcrosses */
  readonly to: Strain | null
  /** the strains that joined in it, the recurrent one first */
  readonly strains: readonly Strain[]
  readonly backcrosses: number
  /** generations mated inter se: F1 0, F2 1, BC3 0, BC3F2 1 */
  readonly interSe: number
  /** most generations back to a founder */
  readonly depth: number
}

export interface Leaving {
  readonly on: PartialDate | null
  readonly how: 'died' | 'culled' | 'sold' | 'given' | 'lent' | 'lost' | 'taken'
  readonly why: string | null
}

/** What banded birds and unbanded tallies have in common: the chicks of a hatch, one or many. */
export interface Chicks {
  /** how many this stands for: 1 for a banded bird; a tally's number less those banded later */
  readonly count: number
  readonly sex: Sex
  readonly hatched: PartialDate | null
  readonly hatch: Hatch | null
  readonly parentage: Parentage
  readonly step: Step
  /** expected share of every founding strain, summing to 1 less what is unknown */
  readonly shares: ReadonlyMap<Strain, number>
  readonly looks: ReadonlyMap<Trait, Look>
  readonly left: Leaving | null
  readonly sexings: readonly {readonly is: Sex; readonly on: PartialDate | null; readonly because: string | null}[]
  readonly at: Spot
}

export interface Bird extends Chicks, Written {
  readonly kind: 'bird'
  readonly count: 1
  /** its page and its key in every table: the first band, with the hatch year where two birds shared it; file-name safe */
  readonly id: string
  /** the band it is spoken of by: the last one it wore */
  readonly band: string
  readonly bands: readonly {readonly band: string; readonly from: PartialDate | null; readonly to: PartialDate | null; readonly lost: boolean}[]
  /** founders only */
  readonly strain: Strain | null
  /** the step the keeper wrote for it, when one was written */
  readonly stepWritten: string | null
  readonly keptAt: readonly {readonly keeper: Keeper; readonly from: PartialDate | null; readonly to: PartialDate | null}[]
  readonly kept: {readonly on: PartialDate | null; readonly why: string} | null
  /** chicks that share one unknown dam carry the same name */
  readonly family: string | null
  /** the basket or toe mark it had at hatch */
  readonly mark: string | null
  /** banded later from this tally */
  readonly outOf: Tally | null
  /** birds this one may be, its band gone */
  readonly maybe: readonly Bird[]
  readonly kin: readonly {readonly with: Bird; readonly kinship: number}[]
  /** the bought flock it came from: birds of one flock are kin */
  readonly flock: Flock | null
  /** oldest first, unit of the measure's traits */
  readonly weighings: readonly Weighing[]
  readonly observations: readonly Observation[]
  readonly photos: readonly Photo[]
  /** first egg seen */
  readonly firstEgg: PartialDate | null
  /** what DNA tests found, taken as certain */
  readonly tested: ReadonlyMap<Locus, GenotypePattern>
}

export interface Tally extends Chicks {
  readonly kind: 'tally'
  /** as written in the hatch, before any was banded */
  readonly written: number
  readonly mark: string | null
}

export interface Flock {
  readonly name: string
  readonly kinship: number
}

export interface Weighing {
  readonly measure: string
  /** in the unit of the traits that use this measure */
  readonly value: number
  readonly on: PartialDate
  readonly at: Spot
}

export interface LooseWeighing extends Weighing {
  readonly hatch: Hatch
  readonly sex: Sex
  /** the traits it stands for: taken on the day, of all on which birds of its hatch and sex were weighed, that counts */
  readonly countsFor: readonly Trait[]
}

export interface Observation {
  readonly on: PartialDate | null
  readonly by: Keeper | null
  /** free entries, in the order written: temperament → calm */
  readonly notes: readonly (readonly [string, string])[]
}

export interface Photo {
  /** path inside `content/photos/` */
  readonly file: string
  readonly on: PartialDate | null
  readonly view: string | null
  /** what a judge would see; made from the bird when none is written */
  readonly alt: string | null
  readonly caption: string | null
}

export interface Stay {
  readonly bird: Bird
  readonly from: PartialDate | null
  readonly to: PartialDate | null
  /** stated share of the chicks, males only */
  readonly chance: number | null
  readonly at: Spot
}

export interface Pen extends Written {
  readonly id: string
  readonly season: number
  readonly males: readonly Stay[]
  readonly females: readonly Stay[]
  readonly from: PartialDate | null
  readonly to: PartialDate | null
  readonly keeper: Keeper | null
  readonly intends: string | null
  readonly hatches: readonly Hatch[]
}

export interface Hatch extends Written {
  readonly id: string
  /** more than one when eggs of several pens shared a setting */
  readonly pens: readonly {readonly pen: Pen; readonly eggs: number | null}[]
  /** of eggs bought in */
  readonly strain: Strain | null
  readonly flock: Flock | null
  readonly set: PartialDate | null
  readonly laid: {readonly from: Day; readonly to: Day} | null
  /** hatched on */
  readonly on: PartialDate | null
  readonly eggs: number | null
  readonly eggsByDam: readonly {readonly dam: Bird; readonly eggs: number}[]
  readonly clear: number | null
  readonly deadInGerm: number | null
  readonly deadInShell: number | null
  /** bad, cracked or lost in the setting: neither clear nor dead */
  readonly bad: number | null
  readonly hatched: number | null
  /** why it tells nothing of its parents; null: it does */
  readonly setAside: string | null
  readonly machine: string | null
  readonly broody: Bird | null
  /** birds reared alike share this: one machine or broody, one day and one keeper; else the hatch itself */
  readonly rearing: string
  readonly chicks: readonly Bird[]
  readonly tallies: readonly Tally[]
  /** hatched but neither banded nor tallied */
  readonly unlisted: number
  /** what descent says of a chick of this hatch of which nothing more is known */
  readonly parentage: Parentage
  readonly step: Step
  readonly shares: ReadonlyMap<Strain, number>
  readonly keeper: Keeper | null
}

export interface EggCount {
  readonly pen: Pen | null
  readonly bird: Bird | null
  readonly on: PartialDate
  readonly eggs: number
  readonly hens: number | null
  /** laid over so many days up to this one, where it is written */
  readonly days?: number
  /** what so many of them weighed together */
  readonly weight?: {readonly grams: number; readonly eggs: number}
  readonly at: Spot
}

export interface Feeding {
  readonly pen: Pen | null
  readonly hatch: Hatch | null
  readonly on: PartialDate
  /** grams */
  readonly feed: number
  /** grams of the feed before that were still there, where it is written */
  readonly left?: number
  readonly at: Spot
}

export const CARE_KINDS = CARE_WORDS
export type CareKind = (typeof CARE_KINDS)[number]

export interface CareEntry extends Written {
  readonly id: string
  readonly care: CareKind
  readonly on: PartialDate
  readonly to: PartialDate | null
  readonly pens: readonly Pen[]
  readonly birds: readonly Bird[]
  readonly hatches: readonly Hatch[]
  readonly with: string | null
  readonly eggsWithheldUntil: PartialDate | null
  readonly meatWithheldUntil: PartialDate | null
}

export interface DiaryEntry extends Written {
  readonly id: string
  readonly on: PartialDate
  readonly title: string
  readonly photos: readonly Photo[]
}
