import type {Bird, Clause, Keeper, Logbook, Paper, SectionKind, Show, Strain, Trait} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import type {BreedingPairs} from './breeding-pairs.ts'
import type {Census, Count} from './census.ts'
import type {ClosenessOfStep} from './closeness.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {Fixation} from './fixation.ts'
import type {GenerationsInside} from './generations-inside.ts'
import type {Heredity} from './heredity.ts'
import type {Kinship} from './inbreeding.ts'
import type {LadderStep} from './ladder.ts'
import type {LifeOfFlock} from './life-of-flock.ts'
import type {LivingCarriers} from './living-carriers.ts'
import type {OneMoreMale} from './one-more-male.ts'
import type {PairHarm} from './pair-harm.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import type {IdentityOfLiving} from './identity-of-living.ts'
import type {ShowResults} from './show-results.ts'
import type {ShownEven, ShownFixed, ShownInbreeding, ShownOfType, ShownWelfare} from './shown-of-breeding.ts'
import type {SpreadOfMeasures} from './spread.ts'
import type {TestMates} from './test-mates.ts'
import type {TrueBred} from './true-bred.ts'
import type {AllelesOfBook} from './unwanted-alleles.ts'
import type {PictureWanted} from './ways.ts'

/** What evidence is gathered from: the book and the other findings, each worked only where a requirement asks for it. */
export interface Sources {
  readonly book: Logbook
  readonly ladder: readonly LadderStep[]
  readonly census: Census
  readonly shows: ShowResults
  readonly spread: SpreadOfMeasures
  readonly trueBred: TrueBred
  readonly identity: IdentityOfLiving
  readonly pedigree: PedigreeOfBook
  readonly kinship: Kinship
  readonly heredity: Heredity
  readonly fixation: readonly Fixation[]
  readonly livingCarriers: readonly LivingCarriers[]
  readonly allelesOfBook: AllelesOfBook
  readonly testMates: TestMates
  readonly closeness: readonly ClosenessOfStep[]
  readonly oneMoreMale: OneMoreMale | null
  readonly breedingPairs: BreedingPairs
  readonly pairHarm: PairHarm
  readonly life: LifeOfFlock
}

/** The numbers behind a state, never a sentence. */
export type Shown =
  /** seasons with a hatch on the ladder; gaps are years with none, from the first to the last that is over; `run`: those since the last gap; `have`: as many as count; `crossesOnly`: those in which nothing was mated inside the breed; `beside`: hatches of crosses beside the ladder, which do not count */
  | {readonly kind: 'years-bred'; readonly seasons: readonly number[]; readonly gaps: readonly number[]; readonly run: readonly number[]; readonly have: number; readonly crossesOnly: readonly number[]; readonly beside: number}
  /** of the birds shown (in `year`, or from the day asked on), else of the living breeders; `least` decides; `untold`: birds that may be asked about and may not */
  | {readonly kind: 'inter-se-generations'; readonly of: 'shown' | 'breeders'; readonly year: number | null; readonly least: number; readonly birds: readonly GenerationsOfBird[]; readonly short: readonly GenerationsOfBird[]; readonly untold: readonly Bird[]}
  /** keepers with a hatch in each of those seasons; those `short` of it lack some; `withoutKeeper`: hatches of those seasons of which the keeper is not on record; `beside` as for years */
  | {readonly kind: 'independent-keepers'; readonly seasons: readonly number[]; readonly keepers: readonly Keeper[]; readonly short: readonly {readonly keeper: Keeper; readonly lacks: readonly number[]}[]; readonly withoutConsent: number; readonly withoutKeeper: number; readonly beside: number}
  | {readonly kind: 'breeders-alive'; readonly breeders: Count; readonly untold: readonly Bird[]}
  /** different birds shown, each class once; disqualified entries are left out; `atOne`: of the best single show, and how many shows reach it */
  | {readonly kind: 'shown-per-class'; readonly classes: readonly ClassShown[]; readonly atOne: {readonly show: Show | null; readonly enough: number} | null; readonly untold: number}
  /** `unjudged`: shows of which no entry names its judge; `untold` here and below: entries of which the records do not tell whether they are asked about */
  | {readonly kind: 'shows-and-judges'; readonly shows: number; readonly judges: readonly string[]; readonly unjudged: number; readonly years: readonly number[]; readonly untold: number}
  /** `below`: birds disqualified, or under the points or grade asked; `unwritten`: entries of which neither is on record, where it is asked; `unplaced`: of these with a grade that is none of those named */
  | {readonly kind: 'show-result'; readonly entries: number; readonly disqualified: number; readonly firsts: number; readonly awards: number; readonly leastPoints: number | null; readonly below: readonly Bird[]; readonly unwritten: number; readonly unplaced: readonly {readonly bird: Bird; readonly grade: string}[]; readonly worstGrade: string | null; readonly untold: number}
  /** `wanted` sections, and those of them `missing`; `unscored`: mandatory clauses that no trait lets anybody score */
  | {readonly kind: 'written-standard'; readonly draft: number; readonly clauses: number; readonly wanted: readonly SectionKind[]; readonly missing: readonly SectionKind[]; readonly emptySections: readonly string[]; readonly emptyClauses: readonly Clause[]; readonly points: number; readonly mandatory: number; readonly unscored: readonly Clause[]}
  /** by neighbouring breed, in which characters it differs, and of which the table does not tell */
  | {readonly kind: 'distinct'; readonly breeds: readonly FromNeighbour[]}
  /** `unfounded`: strains that were crossed in and have no founder in the book; `kept`: living breeders */
  | {readonly kind: 'history'; readonly founders: readonly {readonly strain: Strain; readonly birds: number}[]; readonly unfounded: readonly Strain[]; readonly steps: number; readonly hatched: number; readonly kept: number}
  /** birds of the breed with a photograph; `dated` and `photos` count pictures; of the `wanted` sexes, ages and varieties those that no dated picture shows are `missing` */
  | {readonly kind: 'photographs'; readonly birds: Count; readonly photos: number; readonly dated: number; readonly wanted: number; readonly missing: readonly Omit<PictureWanted, 'living'>[]}
  /** papers that prove it, oldest first; `valid` hold on the book's day, the last of them `until` then; `keepers`: whose statements they are, null where that is not asked */
  | {readonly kind: 'papers'; readonly papers: readonly Paper[]; readonly valid: readonly Paper[]; readonly keepers: Signers | null; readonly until: Day | null}
  | {readonly kind: 'stated'; readonly stated: string}
  | {readonly kind: 'identity'; readonly banded: Share | CannotSay; readonly bothParents: Share | CannotSay; readonly uncertain: readonly Bird[]}
  /** years with a show, the years in which all were cancelled, the longest run of the former over the latter, and the run that still goes on */
  | {readonly kind: 'consecutive-shows'; readonly years: readonly number[]; readonly cancelledYears: readonly number[]; readonly longestRun: number; readonly longest: readonly number[]; readonly current: readonly number[]; readonly untold: number}
  | ShownOfType | ShownEven | ShownFixed | ShownInbreeding | ShownWelfare
  /** shows with an entry, oldest first, with the birds shown and the keepers who showed them; `enough`: those that reach what is asked */
  | {readonly kind: 'birds-per-show'; readonly shows: readonly BirdsAtShow[]; readonly enough: number; readonly untold: number}
  /** the records hold nothing on it */
  | {readonly kind: 'nothing-recorded'; readonly trait?: Trait}

export interface BirdsAtShow {
  readonly show: Show
  readonly birds: number
  readonly keepers: number
  /** birds of which it is not known whose they were that day */
  readonly withoutKeeper: number
}

export interface GenerationsOfBird extends GenerationsInside {
  readonly bird: Bird
}

export interface ClassShown {
  readonly class: string
  readonly birds: number
  readonly shown: readonly Bird[]
}

export interface FromNeighbour {
  readonly breed: string
  readonly differing: readonly string[]
  readonly unfilled: readonly string[]
}

/** Whose statements there are, of whom there is none, and how many do not say whose they are. */
export interface Signers {
  readonly signed: readonly Keeper[]
  readonly without: readonly Keeper[]
  readonly unnamed: number
}
