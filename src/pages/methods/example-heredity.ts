/** Small flocks with one locus for worked examples: white skin or yellow, W+ and w, or whatever two alleles are named. */
import type {Flock} from '../../heredity/flock.ts'
import {genotypeProbabilities} from '../../heredity/genotype-probabilities.ts'
import {readGenotype, writeGenotype} from '../../heredity/genotype-notation.ts'
import type {GenotypePattern} from '../../heredity/genotype-notation.ts'
import type {Locus} from '../../heredity/locus.ts'
import type {LookRule} from '../../heredity/look-rules.ts'
import type {ExampleFlock} from './example-flock.ts'

export interface ExampleHeredity {
  readonly locus: Locus
  /** genotype → the number of a look, or that it never hatches; the first that fits holds */
  readonly shows: readonly (readonly [string, number | 'lethal'])[]
  /** genotypes known for certain, by name */
  readonly tested?: Readonly<Record<string, string>>
  /** every scoring of a bird, as the number of a look */
  readonly scored?: Readonly<Record<string, readonly number[]>>
  /** shares of the alleles among founders; alike when not given */
  readonly shares?: readonly number[]
  /** chance that a look is taken for the other */
  readonly wrong?: number
}

export interface ExampleAnswer {
  /** chance of a genotype, written as `W+/w` */
  chance(name: string, genotype: string): number
  /** chance that a bird is the sire of another */
  sire(name: string, sire: string): number
  isExact(name: string): boolean
}

export const SKIN: Locus = {symbol: 'W', on: 'autosome', alleles: ['W+', 'w']}
/** white 0, yellow 1 */
export const WHITE_OR_YELLOW: ExampleHeredity['shows'] = [['w/w', 1], ['_/_', 0]]

/** @throws Error when a genotype is none of the locus */
export function exampleGenotypes(example: ExampleFlock, heredity: ExampleHeredity): ExampleAnswer {
  const {locus, wrong = 0, scored = {}, tested = {}, shares = locus.alleles.map(() => 1 / locus.alleles.length)} = heredity
  const rules = heredity.shows.map(([genotype, is]): LookRule => ({patterns: [patternOf(genotype, locus)], is, sex: null, penetrance: 1}))
  const byNumber = <Value>(named: Readonly<Record<string, Value>>) => new Map(Object.entries(named).map(([name, value]) => [example.of(name), value] as const))
  const looks = byNumber(scored), tests = byNumber(tested)
  const flock: Flock = {
    pedigree: example.pedigree, loci: [locus], linkages: [], shares: () => [shares],
    traits: [{look: {loci: [0], states: ['first', 'second'], rules, seenIn: null}, misscoring: [[1 - wrong, wrong], [wrong, 1 - wrong]]}],
    readings: animal => {
      const seen = looks.get(animal)
      return seen === undefined ? [] : [{trait: 0, scored: seen}]
    },
    tested: animal => {
      const genotype = tests.get(animal)
      return genotype === undefined ? null : [patternOf(genotype, locus)]
    },
  }
  const found = genotypeProbabilities(flock)
  return {
    chance: (name, genotype) => found.at(example.of(name), 0).find(({is}) => writeGenotype(is, locus) === genotype)?.probability ?? 0,
    sire: (name, sire) => found.sires(example.of(name))?.find(({is}) => is === example.of(sire))?.probability ?? 0,
    isExact: name => found.isExact(example.of(name), 0),
  }
}

function patternOf(genotype: string, locus: Locus): GenotypePattern {
  const read = readGenotype(genotype, locus)
  if (read.kind !== 'read') throw new Error(`${genotype} is no genotype of ${locus.symbol}`)
  return read.pattern
}
