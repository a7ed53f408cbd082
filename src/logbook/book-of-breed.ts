/** What is bred, in the logbook: the project, its strains and keepers, the traits and what is known of their loci. */
import type {GenotypePattern} from '../heredity/genotype-notation.ts'
import type {Locus} from '../heredity/locus.ts'
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {CAUTION_WORDS, SOURCE_WORDS} from '../records/schema/locus.ts'
import {SEX_WORDS} from '../records/schema/parts.ts'
import type {Species} from '../records/species.ts'

export const SEXES = SEX_WORDS
export type Sex = (typeof SEXES)[number]

/** Everything a record of any kind carries: where it stands and the keeper's own words (Markdown, comments taken out). */
export interface Written {
  readonly at: Spot
  readonly body: string
  /** the pictures it names, where it names any */
  readonly photos?: readonly Photo[]
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

export interface Photo {
  /** path inside `content/photos/` */
  readonly file: string
  readonly on: PartialDate | null
  readonly view: string | null
  /** what a judge would see; made from the bird when none is written */
  readonly alt: string | null
  readonly caption: string | null
}
