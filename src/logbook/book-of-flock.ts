/** The birds of the logbook: what each looked like, where it comes from, where it lived; hatches, pens, eggs, feed, care, and the diary. */
import type {GenotypePattern} from '../heredity/genotype-notation.ts'
import type {Locus} from '../heredity/locus.ts'
import type {Day, PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {CARE_WORDS} from '../records/schema/care.ts'
import type {Keeper, Photo, Sex, Strain, Trait, Written} from './book-of-breed.ts'

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
