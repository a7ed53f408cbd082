import type {GenotypePattern} from '../heredity/genotype-notation.ts'
import type {Locus} from '../heredity/locus.ts'
import type {AlleleShares} from '../logbook/allele-shares.ts'
import type {Bird, Strain, Trait} from '../logbook/book.ts'
import type {Chick} from './ladder-chicks.ts'

/** What one bird may hide at one locus, and what speaks for and against each allele. */
export interface EvidenceAtLocus {
  readonly locus: Locus
  /** the looks of its own that speak of the locus */
  readonly looks: readonly {readonly trait: Trait; readonly state: string}[]
  /** alleles, by number, that its own looks say it has */
  readonly shows: readonly number[]
  /** those that its looks leave open, the likeliest first */
  readonly open: readonly HiddenAllele[]
  /** those that its looks would exclude, were they right, and that it may have all the same, the likeliest first */
  readonly excluded: readonly HiddenAllele[]
  readonly exact: boolean
  /** the looks by which a bird shows that it has nothing but an allele, in either sex */
  alone(allele: number): readonly {readonly trait: Trait; readonly state: string}[]
}

export interface HiddenAllele {
  readonly allele: number
  /** that the bird has it, 0 to 1 */
  readonly probability: number
  /** why, in order of weight; one at least */
  readonly evidence: readonly Evidence[]
}

/** Why a bird has an allele or has not. */
export type Evidence =
  | {readonly kind: 'test'; readonly found: GenotypePattern}
  /** chicks, surely its own, that were scored as only birds with nothing but this allele look; `believed`: that one of them at least, the likeliest, is truly so */
  | {readonly kind: 'threw'; readonly trait: Trait; readonly state: string; readonly chicks: readonly Chick[]; readonly count: number; readonly believed: number}
  /** a parent that has nothing else to give */
  | {readonly kind: 'given'; readonly parent: Bird}
  /** no parent that could have given it has it */
  | {readonly kind: 'not-given'; readonly parents: readonly Bird[]}
  /** a founder: how common the allele is in its strain, and how that is known */
  | {readonly kind: 'strain'; readonly strain: Strain; readonly share: number; readonly known: AlleleShares['known']}
  /** its chicks of mates that are known to let the allele show: how many were looked at, and how many showed it; `each`: the chance of one to show it, had it the allele once */
  | {readonly kind: 'chicks'; readonly trait: Trait; readonly state: string; readonly mates: readonly Bird[]; readonly genotype: string; readonly mateLook: string | null; readonly each: number; readonly chicks: number; readonly shown: number}
  /** nothing but the birds it comes of, and their other kin */
  | {readonly kind: 'descent'}
