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
import type {MANNERS, SECTION_KINDS, SEVERITIES} from '../records/schema/draft.ts'
import {SEX_WORDS} from '../records/schema/parts.ts'
import {REQUIREMENT_WORDS} from '../records/schema/requirements.ts'
import type {Species} from '../records/species.ts'

export type {Locus}

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
