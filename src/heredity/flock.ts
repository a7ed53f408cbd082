import type {Pedigree} from '../pedigree/pedigree.ts'
import type {GenotypePattern} from './genotype-notation.ts'
import type {Linkage, Locus} from './locus.ts'
import type {LookRules} from './look-rules.ts'

/** A trait told by eye, and how often one of its states is taken for another. */
export interface HeritableTrait {
  readonly look: LookRules
  /** by true state, the chance that each state is scored; a row sums to 1 */
  readonly misscoring: readonly ArrayLike<number>[]
}

/** What was seen of one trait of one bird: every scoring of it, as numbers of states. Each is a reading of the same true look. */
export interface Reading {
  readonly trait: number
  readonly scored: readonly number[]
}

/** A flock as heredity sees it: who may descend from whom, and what was seen. One group of loci is worked at a time. */
export interface Flock {
  readonly pedigree: Pedigree
  readonly loci: readonly Locus[]
  readonly linkages: readonly Linkage[]
  readonly traits: readonly HeritableTrait[]
  /** shares of the alleles of each locus in a base population, each summing to 1; null: birds of which nothing is known */
  shares(base: number | null): readonly ArrayLike<number>[]
  readings(animal: number): readonly Reading[]
  /** what a test of its blood or feather said, a pattern a locus; null where it was not tested */
  tested(animal: number): readonly (GenotypePattern | null)[] | null
}
