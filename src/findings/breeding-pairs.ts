import type {Bird} from '../logbook/book.ts'
import type {Census} from './census.ts'
import type {Kinship} from './inbreeding.ts'
import {pairKinship, type ChicksOfPair} from './pair-kinship.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

export interface BreedingPair extends ChicksOfPair {
  readonly male: Bird
  readonly hen: Bird
}

/** Every male with every hen of those bred from. */
export interface BreedingPairs {
  readonly males: readonly Bird[]
  readonly hens: readonly Bird[]
  /** by the F their chicks would have on average, the least first */
  readonly pairs: readonly BreedingPair[]
  chicksOf(male: Bird, hen: Bird): ChicksOfPair
}

/** Which of the new breed's living breeders are least kin to each other, and which most? */
export function breedingPairs({ownBreeders}: Census, pedigree: PedigreeOfBook, kin: Kinship): BreedingPairs {
  const males = ownBreeders.filter(({sex}) => sex === 'male'), hens = ownBreeders.filter(({sex}) => sex === 'female')
  const chicksOf = pairKinship(pedigree, kin, [...males, ...hens])
  const pairs = males.flatMap(male => hens.map(hen => ({male, hen, ...chicksOf(male, hen)})))
  return {males, hens, chicksOf, pairs: pairs.sort((a, b) => a.mean - b.mean || a.high - b.high || byId(a.male, b.male) || byId(a.hen, b.hen))}
}

const byId = (a: Bird, b: Bird): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
