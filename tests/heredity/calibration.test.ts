/** Genes dropped through large flocks, so that the truth is known: of birds said to carry with a probability, do so many? And how far is loose from exact? */
import {describe, expect, it} from 'vitest'
import {genotypeProbabilities, type GenotypeProbabilities} from '../../src/heredity/genotype-probabilities.ts'
import {LIMITS} from '../../src/heredity/propagation.ts'
import {drawPedigree} from '../bench/draw-pedigree.ts'
import type {Animal} from '../../src/pedigree/pedigree.ts'
import {chanceOf} from '../bench/chance.ts'
import {dropGenes, type Dropped} from '../bench/drop-genes.ts'

/** nothing is worked exactly that needs any joining */
const LOOSE = {...LIMITS, exactCluster: 0, exactAll: 0}

/** twelve generations of twenty bred from three cocks and five hens each: loops everywhere */
const flockOf = (seed: number, doubtful: number): Dropped => dropGenes(seed, drawPedigree(seed, {birds: 240, doubtful}), {dominant: 0.5, scored: 0.8, wrong: 0.01})

/** four generations of seven cocks and seven hens, mated as chance has it, two sires in five one of two: every other bird a parent, and loops everywhere */
function wideFlock(seed: number): Dropped {
  const chance = chanceOf(seed), animals: Animal[] = [], of = (sex: 'male' | 'female', generation: number) => generation * 14 + 2 * chance.whole(0, 6) + (sex === 'male' ? 0 : 1)
  for (let generation = 0; generation < 4; generation++) {
    for (let bird = 0; bird < 14; bird++) {
      const sex = bird % 2 === 0 ? 'male' : 'female'
      if (generation === 0) animals.push({sex, matings: [], base: null})
      else {
        const sires = [...new Set([of('male', generation - 1), ...(chance.happens(0.4) ? [of('male', generation - 1)] : [])])], dam = of('female', generation - 1)
        animals.push({sex, base: null, matings: sires.map(sire => ({sire, dam, chance: 1 / sires.length}))})
      }
    }
  }
  return dropGenes(seed, {animals, bases: [], kin: []}, {dominant: 0.5, scored: 0.75, wrong: 0.01})
}

const carries = (found: GenotypeProbabilities, animal: number): number => found.at(animal, 0).find(({is}) => is.join() === '0,1')?.probability ?? 0

/** by tenth of what was said: how many birds, how many truly carry, the sum of what was said and of its variance */
function tenths(flocks: readonly Dropped[], worked: readonly GenotypeProbabilities[]) {
  const bins = Array.from({length: 10}, () => ({birds: 0, true: 0, said: 0, variance: 0}))
  flocks.forEach(({genes}, index) => genes.forEach(([a, b], animal) => {
    const found = worked[index], p = found ? carries(found, animal) : 0, bin = bins[Math.min(9, Math.floor(p * 10))]
    if (!bin) return
    bin.birds++
    bin.true += a === b ? 0 : 1
    bin.said += p
    bin.variance += p * (1 - p)
  }))
  return bins
}

describe('genotypeProbabilities on flocks whose truth is known', () => {
  const flocks = [1, 2, 3, 4, 5, 6].map(seed => flockOf(seed, seed > 4 ? 1 / 3 : 0))
  const exact = flocks.map(({flock}) => genotypeProbabilities(flock)), loose = flocks.map(({flock}) => genotypeProbabilities(flock, new Set(), LOOSE))

  for (const [how, worked, within] of [['exact', exact, 3], ['loose', loose, 4]] as const) {
    it(`carries as often as said, in every tenth: ${how}`, () => {
      expect(worked.every(({exact: whole}) => whole)).toBe(how === 'exact')
      for (const {birds, true: carriers, said, variance} of tenths(flocks, worked)) {
        expect(birds).toBeGreaterThan(20)
        // so many times the binomial error, for birds of one family err together; and loose figures a little besides
        expect(Math.abs(carriers - said), JSON.stringify({birds, carriers, said})).toBeLessThan(within * Math.sqrt(variance) + 1)
      }
    })
  }

  /** over flocks: the largest difference, and the mean */
  function apart(truth: readonly GenotypeProbabilities[], other: readonly GenotypeProbabilities[], birds: number): readonly [number, number] {
    const off = truth.flatMap((one, index) => Array.from({length: birds}, (_, animal) => Math.abs(carries(one, animal) - carries(other[index] ?? one, animal))))
    return [Math.max(...off), off.reduce((sum, each) => sum + each, 0) / off.length]
  }

  // the largest difference in these six flocks is 0.080, the mean 0.0024; flocks so closely bred are in truth worked exactly
  it('is loosely within 0.09 of exact for every bird of a closely bred flock, and within 0.003 on the whole', () => {
    const [most, mean] = apart(exact, loose, 240)
    expect(most).toBeLessThan(0.09)
    expect(mean).toBeLessThan(0.003)
  })

  // what is truly worked loosely is bred widely: of flocks whose every other bird is a parent, those that are still worked exactly
  it('is loosely within 0.2 of exact for every bird of a widely bred flock, and within 0.003 on the whole', () => {
    const wide = Array.from({length: 24}, (_, seed) => wideFlock(seed)).map(({flock}) => flock), truth = wide.map(flock => genotypeProbabilities(flock))
    const told = wide.filter((_, index) => truth[index]?.exact)
    expect(told.length).toBeGreaterThan(8)
    const [most, mean] = apart(truth.filter(each => each.exact), told.map(flock => genotypeProbabilities(flock, new Set(), LOOSE)), 56)
    expect(most).toBeLessThan(0.2)
    expect(mean).toBeLessThan(0.003)
  })
})
