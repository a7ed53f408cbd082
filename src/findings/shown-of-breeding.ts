/** What requirements of type, evenness, descent and welfare show: the numbers behind a state, never a sentence. */
import type {Bird, Clause, Locus, Paper, Trait} from '../logbook/book.ts'
import type {LooksAsked} from './clauses-asked.ts'
import type {CannotSay, Interval, Share} from './estimate.ts'
import type {Fixation} from './fixation.ts'
import type {LifeToFloor} from './life-to-floor.ts'
import type {RiseInside} from './rise-inside.ts'
import type {SpreadRow} from './spread.ts'
import type {TrueBredRate} from './true-bred.ts'
import type {TrueBredPart} from './true-bred-parts.ts'

/** Which figure has to reach the mark: itself, or the end of an interval that speaks against the breed. */
export type DecidedBy = 'estimate' | 'families' | 'exact'

/** Chicks of inter se matings, of these seasons. */
export interface ShownOfType {
  readonly kind: 'true-to-type'
  readonly by: LooksAsked['by']
  readonly decidedBy: DecidedBy
  readonly seasons: readonly number[]
  /** in the order of what is asked: chicks scored for each look, and of them those scored only while the clause read otherwise, which does not count; `tolerated`: the clause accepts something for a time yet, which does not meet it */
  readonly looks: readonly {readonly clause: Clause | null; readonly trait: Trait; readonly scored: number; readonly otherWords: number; readonly tolerated: boolean}[]
  /** clauses that nothing can be held against */
  readonly untold: readonly string[]
  readonly rate: TrueBredRate
  /** the same chicks with every interval; and with those not fully scored, those culled before they could be, and those of an age that nobody listed, all failing, and all passing */
  readonly part: TrueBredPart
  readonly ifFail: TrueBredPart
  readonly ifPass: TrueBredPart
  /** how many these are */
  readonly open: {readonly scored: number; readonly culled: number; readonly unlisted: number}
  /** it would still be reached, by the figure that decides, if every chick not fully scored failed */
  readonly sure: boolean
}

/** One figure of evenness in one sex, held against its mark. */
export interface EvenPart {
  readonly of: 'cv' | 'within-tenth' | 'inside'
  readonly trait: Trait
  readonly sex: 'male' | 'female'
  readonly mark: number
  /** null: cannot be said */
  readonly have: number | null
  /** what was held against the mark: the figure, or the end of its interval that speaks against the breed */
  readonly judged: number | null
  /** of birds taken one by one where the figure decides, else by sire families */
  readonly interval: Interval | null
  /** birds weighed that count in it */
  readonly n: number
  /** so many sire families they come of, and the birds that would tell as much were they no kin; null where the figure itself decides */
  readonly families: {readonly count: number; readonly effective: number | null} | null
  readonly met: boolean | null
}

export interface ShownEven {
  readonly kind: 'even-weight'
  readonly step: string
  readonly decidedBy: 'estimate' | 'cautious'
  readonly rows: readonly SpreadRow[]
  /** in the order of the rows: birds inside what is wanted of them */
  readonly inside: readonly {readonly trait: Trait; readonly sex: 'male' | 'female'; readonly share: Share | CannotSay}[]
  readonly parts: readonly EvenPart[]
  /** a sex asked about of which no bird was measured there */
  readonly missing: readonly {readonly trait: Trait; readonly sex: 'male' | 'female'}[]
  /** classes named that say no sex and age; clauses named of which nothing measured can be held against birds */
  readonly unknownClasses: readonly string[]
  readonly untoldClauses: readonly string[]
  /** birds weighed of which it is not known whether they are asked about */
  readonly untold: number
}

/** What the living breeders may carry of what the trait is to be rid of; `traits`: those asked about; no loci: no rule says what they come of. */
export interface ShownFixed {
  readonly kind: 'fixed'
  /** null: every required trait */
  readonly trait: Trait | null
  readonly asked: number
  readonly birds: number
  readonly loci: readonly FixedAtLocus[]
  /** asked about, and no rule says which genes their looks come of; and clauses named that have no trait, or are not in the latest draft */
  readonly without: readonly Trait[]
  readonly untoldClauses: readonly string[]
  /** breeders of which it is not known whether they are asked about */
  readonly untold: readonly Bird[]
}

export interface FixedAtLocus {
  readonly fixation: Fixation
  /** the trait that birds are scored for */
  readonly scoredFor: Trait
  /** null: of any; else only breeders of this colour variety are asked */
  readonly variety: string | null
  readonly breeders: readonly Bird[]
  /** breeders scored for the trait or tested at the locus */
  readonly scored: number
  /** of a sex that can show it, and neither */
  readonly unscored: readonly Bird[]
}

/** One figure of descent, held against its mark. */
export interface ClosenessPart {
  readonly of: 'mean' | 'rate' | 'size' | 'male-lines'
  readonly mark: number
  /** null: cannot be said */
  readonly have: number | null
  /** where doubt of descent may take it, or what sire families leave open of rate and size; null where it is not known */
  readonly low: number | null
  readonly high: number | null
  /** of rate and size: whether F or mean kinship rose the faster, and so decides */
  readonly by: 'inbreeding' | 'kinship' | null
  readonly met: boolean | null
}

export interface ShownInbreeding {
  readonly kind: 'inbreeding'
  readonly asked: number | null
  /** null: no living breeder */
  readonly of: InbreedingOfBreeders | null
  readonly parts: readonly ClosenessPart[]
  /** breeders of which it is not known whether they are asked about */
  readonly untold: readonly Bird[]
  /** what rate and size are read from; null where neither is asked for, or no step was mated within itself since its line was closed */
  readonly rise: RiseInside | null
  readonly decidedBy: 'estimate' | 'cautious'
  /** by the cock each line goes back to, most breeding males first; null where it cannot be told */
  readonly lines: readonly {readonly founder: Bird | null; readonly males: readonly Bird[]}[]
  /** 4 M N / (M + N) of the breeders counted by sex; null without both */
  readonly census: number | null
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
  /** equivalent complete generations of descent known, mean */
  readonly generations: number
  /** mean among them, each with itself */
  readonly kinship: number
}

/** An allele that a look asked for cannot be had without, and that kills, or of which a caution speaks. */
export interface HarmAsked {
  readonly clause: Clause | null
  readonly trait: Trait
  readonly sex: 'male' | 'female'
  readonly locus: Locus
  readonly allele: number
  /** `lethal`: birds of it never hatch, by a rule or a caution · `welfare`: a caution speaks of the bird's good */
  readonly harm: 'lethal' | 'welfare'
  /** the caution's own words; null where a rule of the project alone says it */
  readonly says: string | null
}

export interface ShownWelfare {
  readonly kind: 'welfare'
  readonly harms: readonly HarmAsked[]
  /** looks asked for: all, and those whose genes no rule says */
  readonly looks: number
  readonly withoutGenes: readonly Trait[]
  /** clauses named that have no trait, or are not in the latest draft */
  readonly untoldClauses: readonly string[]
  /** null: no floor is asked for */
  readonly life: LifeAsked | null
  readonly papers: readonly Paper[]
  readonly valid: readonly Paper[]
  readonly stated: string | null
  readonly met: {readonly genes: boolean | null; readonly life: boolean | null; readonly word: boolean | null}
}

export interface LifeAsked extends LifeToFloor {
  /** a step's label, or seasons */
  readonly of: string
  readonly age: number
  readonly mark: number
  readonly decidedBy: 'estimate' | 'cautious'
}
