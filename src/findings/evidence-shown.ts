import type {Bird, Keeper, Logbook, Paper, Show, Strain, Trait} from '../logbook/book.ts'
import type {Census, Count} from './census.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {Fixation} from './fixation.ts'
import type {Heredity} from './heredity.ts'
import type {Kinship} from './inbreeding.ts'
import type {LadderStep} from './ladder.ts'
import type {LivingCarriers} from './living-carriers.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import type {RecordsAudit} from './records-audit.ts'
import type {ShowResults} from './show-results.ts'
import type {SpreadOfMeasures, SpreadRow} from './spread.ts'
import type {TrueBred, TrueBredRate} from './true-bred.ts'
import type {TrueBredPart} from './true-bred-parts.ts'

/** What evidence is gathered from: the book and the other findings, each worked only where a requirement asks for it. */
export interface Sources {
  readonly book: Logbook
  readonly ladder: readonly LadderStep[]
  readonly census: Census
  readonly shows: ShowResults
  readonly spread: SpreadOfMeasures
  readonly trueBred: TrueBred
  readonly audit: RecordsAudit
  readonly pedigree: PedigreeOfBook
  readonly kinship: Kinship
  readonly heredity: Heredity
  readonly fixation: readonly Fixation[]
  readonly livingCarriers: readonly LivingCarriers[]
}

/** The numbers behind a state, never a sentence. */
export type Shown =
  /** seasons with a hatch on the ladder; gaps are years between the first and the last with none */
  | {readonly kind: 'years-bred'; readonly seasons: readonly number[]; readonly gaps: readonly number[]}
  | {readonly kind: 'inter-se-generations'; readonly most: number; readonly steps: readonly string[]}
  /** keepers with a hatch in each of those seasons */
  | {readonly kind: 'independent-keepers'; readonly seasons: readonly number[]; readonly keepers: readonly Keeper[]; readonly withoutConsent: number}
  | {readonly kind: 'breeders-alive'; readonly breeders: Count}
  /** different birds shown, each class once; disqualified entries are left out */
  | {readonly kind: 'shown-per-class'; readonly classes: readonly {readonly class: string; readonly birds: number}[]}
  | {readonly kind: 'shows-and-judges'; readonly shows: number; readonly judges: readonly string[]; readonly years: readonly number[]}
  | {readonly kind: 'show-result'; readonly entries: number; readonly disqualified: number; readonly firsts: number; readonly awards: number; readonly leastPoints: number | null}
  /** chicks of inter se matings, of these seasons; `sure`: it would still be reached if every chick not fully scored failed; `part`: the same chicks with every interval */
  | {readonly kind: 'true-to-type'; readonly seasons: readonly number[]; readonly rate: TrueBredRate; readonly part: TrueBredPart; readonly sure: boolean}
  | {readonly kind: 'even-weight'; readonly step: string; readonly rows: readonly SpreadRow[]}
  | {readonly kind: 'written-standard'; readonly draft: number; readonly clauses: number; readonly emptySections: readonly string[]; readonly points: number}
  /** by neighbouring breed, how many characters differ */
  | {readonly kind: 'distinct'; readonly breeds: readonly {readonly breed: string; readonly differing: readonly string[]}[]}
  | {readonly kind: 'history'; readonly founders: readonly {readonly strain: Strain; readonly birds: number}[]; readonly steps: number; readonly hatched: number}
  /** birds of the breed with a photograph; `dated` and `photos` count pictures */
  | {readonly kind: 'photographs'; readonly birds: Count; readonly photos: number; readonly dated: number}
  /** papers that prove it, oldest first; `valid` hold on the book's day */
  | {readonly kind: 'papers'; readonly papers: readonly Paper[]; readonly valid: readonly Paper[]}
  | {readonly kind: 'stated'; readonly stated: string}
  | {readonly kind: 'identity'; readonly banded: Share | CannotSay; readonly bothParents: Share | CannotSay; readonly uncertain: readonly Bird[]}
  /** years with a show, the years in which all were cancelled, and the longest run of the former over the latter */
  | {readonly kind: 'consecutive-shows'; readonly years: readonly number[]; readonly cancelledYears: readonly number[]; readonly longestRun: number}
  /** what the living breeders may carry of what the trait is to be rid of, or every required trait where it is null; no loci: no rule says what it comes of */
  | {readonly kind: 'fixed'; readonly trait: Trait | null; readonly asked: number; readonly birds: number; readonly loci: readonly FixedAtLocus[]}
  /** null: no living breeder */
  | {readonly kind: 'inbreeding'; readonly asked: number | null; readonly of: InbreedingOfBreeders | null}
  /** shows with an entry, oldest first, with the birds shown and the keepers who showed them; `enough`: those that reach what is asked */
  | {readonly kind: 'birds-per-show'; readonly shows: readonly BirdsAtShow[]; readonly enough: number}
  /** the records hold nothing on it */
  | {readonly kind: 'nothing-recorded'; readonly trait?: Trait}

export interface BirdsAtShow {
  readonly show: Show
  readonly birds: number
  readonly keepers: number
}

export interface FixedAtLocus {
  readonly fixation: Fixation
  /** breeders scored for the trait or tested at the locus */
  readonly scored: number
  /** of a sex that can show it, and neither */
  readonly unscored: readonly Bird[]
}

export interface InbreedingOfBreeders {
  readonly birds: number
  /** of their F; and of the lowest and the highest that each may have by who its parents are */
  readonly mean: number
  readonly low: number
  readonly high: number
  /** the most inbred first */
  readonly byF: readonly {readonly bird: Bird; readonly f: number}[]
  /** with a grandparent, or nearer, that is not in the book */
  readonly atLeast: readonly Bird[]
  /** mean among them, each with itself */
  readonly kinship: number
}
