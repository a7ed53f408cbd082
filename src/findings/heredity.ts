import {genotypeProbabilities, type GenotypeProbabilities, type Probable} from '../heredity/genotype-probabilities.ts'
import {writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import {LIMITS, type Limits} from '../heredity/propagation.ts'
import type {Bird, Logbook} from '../logbook/book.ts'
import type {Animal} from '../pedigree/pedigree.ts'
import {flockOfBook, type FlockOfBook, type Otherwise} from './flock-of-book.ts'
import {locusGroups, type LocusGroup} from './locus-groups.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** A genotype as the trade writes it, with its chance. */
export interface WrittenGenotype extends Probable<Alleles> {
  /** `P/p+`, `S/-` */
  readonly written: string
}

export interface GenotypesOfBird {
  /** likeliest first, summing to 1 */
  readonly genotypes: readonly WrittenGenotype[]
  /** exact, or by messages that settled (or were stopped) */
  readonly exact: boolean
}

export interface WorkedGroup extends FlockOfBook {
  readonly found: GenotypeProbabilities
}

/** Two birds that might be put together. */
export interface PairAsked {
  readonly sire: Bird
  readonly dam: Bird
}

export interface Heredity {
  /** pairs of which a cockerel and a pullet not yet hatched stand in every worked group, in this order from its `firstMore` on */
  readonly pairs: readonly PairAsked[]
  readonly groups: readonly LocusGroup[]
  groupOf(locus: Locus): LocusGroup
  /** every genotype at a locus that a bird may have */
  of(bird: Bird, locus: Locus): GenotypesOfBird
  /** chance that a bird has this allele, by its number, at least once */
  carries(bird: Bird, locus: Locus, allele: number): number
  /** how a group was worked; kept */
  worked(group: LocusGroup): WorkedGroup
  /** worked anew, with something otherwise; not kept */
  workedOtherwise(group: LocusGroup, otherwise: Otherwise, asked?: ReadonlySet<number>, limits?: Limits): WorkedGroup
}

/**
 * What every bird may carry, from all that was seen in the flock. Each group of loci is worked once, when it is first asked for.
 *
 * @param pairs whose chicks will be asked about, such as those that stand together now: they are worked along with the rest
 */
export function heredityOf(book: Logbook, pedigree: PedigreeOfBook, pairs: readonly PairAsked[] = []): Heredity {
  const groups = locusGroups(book)
  const kept = new Map<LocusGroup, WorkedGroup>()
  const groupOf = (locus: Locus): LocusGroup => {
    const found = groups.find(({loci}) => loci.includes(locus))
    if (!found) throw new RangeError(`${locus.symbol} is no locus of the book`)
    return found
  }
  const workedOtherwise: Heredity['workedOtherwise'] = (group, otherwise, asked = new Set(), limits = LIMITS) => {
    const flock = flockOfBook(book, pedigree, group, otherwise)
    return {...flock, found: genotypeProbabilities(flock.flock, asked, limits)}
  }
  const workedWithPairs = (group: LocusGroup): WorkedGroup => {
    const more = chicksOfPairs(pairs, pedigree), flock = flockOfBook(book, pedigree, group, {more})
    return {...flock, found: genotypeProbabilities(flock.flock, new Set(more.map((_, index) => flock.firstMore + index)))}
  }
  const worked = (group: LocusGroup): WorkedGroup => {
    const found = kept.get(group) ?? workedWithPairs(group)
    kept.set(group, found)
    return found
  }
  const at = (bird: Bird, locus: Locus): readonly Probable<Alleles>[] => {
    const group = groupOf(locus)
    return worked(group).found.at(pedigree.numberOf(bird), group.loci.indexOf(locus))
  }
  return {
    pairs, groups, groupOf, worked, workedOtherwise,
    of(bird, locus) {
      const group = groupOf(locus)
      return {
        genotypes: at(bird, locus).map(each => ({...each, written: writeGenotype(each.is, locus)})),
        exact: worked(group).found.isExact(pedigree.numberOf(bird), group.loci.indexOf(locus)),
      }
    },
    carries: (bird, locus, allele) => at(bird, locus).reduce((sum, {is, probability}) => sum + (is.includes(allele) ? probability : 0), 0),
  }
}

/** Of each pair a cockerel, then a pullet, of which nothing was seen. */
export function chicksOfPairs(pairs: readonly PairAsked[], {numberOf}: PedigreeOfBook): readonly Animal[] {
  return pairs.flatMap(({sire, dam}): Animal[] => {
    const matings = [{sire: numberOf(sire), dam: numberOf(dam), chance: 1}]
    return [{sex: 'male', base: null, matings}, {sex: 'female', base: null, matings}]
  })
}
