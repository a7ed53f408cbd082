import {describe, expect, it} from 'vitest'
import {FOWL_AUTOSOMES} from '../../src/pedigree/chromosome-map.ts'
import type {Animal, Pedigree} from '../../src/pedigree/pedigree.ts'
import {shareSpread} from '../../src/pedigree/share-spread.ts'
import {chanceOf} from '../bench/chance.ts'

const founder = (base: number): Animal => ({sex: 'unknown', base, matings: []})
const chick = (sire: number, dam: number): Animal => ({sex: 'unknown', base: null, matings: [{sire, dam, chance: 1}]})
const RECURRENT = 0, DONOR = 1
const bases = [0, 1].map(() => ({inbreeding: 0, kinship: 0, within: null}))

/** bird 2 is the F1, 2 + 2n the nth backcross by a new recurrent bird */
function backcrosses(count: number): Pedigree {
  const animals = [founder(RECURRENT), founder(DONOR), chick(0, 1)]
  for (let n = 1; n <= count; n++) animals.push(founder(RECURRENT), chick(animals.length - 1, animals.length))
  return {animals, bases, kin: []}
}

describe('shareSpread(pedigree, base)', () => {
  it('one chromosome of 100 cM in BC1', () => {
    // the share still heterozygous has SD √((2L − 1 + e^(−2L))/(8L²)) = .376719 at L = 1 (Haldane's map; Hill 1993, J. Hered. 84:212, formula recomputed); the share of genes is half of it
    const spread = shareSpread(backcrosses(1), RECURRENT, [100])
    expect(spread.at(-1)).toBeCloseTo(0.376719 / 2, 5)
  })

  it('t backcrosses by integration: both places of the gamete still the donor\'s ((1 − r)/2)^t', () => {
    const pedigree = backcrosses(5), spread = shareSpread(pedigree, DONOR)
    const whole = FOWL_AUTOSOMES.reduce((sum, length) => sum + length, 0)
    for (let t = 1; t <= 5; t++) {
      let square = 0, linked = 0
      for (const length of FOWL_AUTOSOMES) {
        linked += (length / whole) ** 2
        for (let step = 0; step < 2000; step++) {
          const far = (step + 0.5) / 2000
          square += (length / whole) ** 2 * (2 * (1 - far) / 2000) * ((1 - (1 - Math.exp(-2 * far * length / 100)) / 2) / 2) ** t
        }
      }
      square += (1 - linked) * 0.25 ** t
      expect(spread[2 + 2 * t]).toBeCloseTo(Math.sqrt(square - 0.25 ** t) / 2, 6)
    }
  })

  it('is 0 for founders and the F1, and the same seen from either strain', () => {
    const pedigree = backcrosses(2)
    const recurrent = shareSpread(pedigree, RECURRENT)
    expect(Array.from(recurrent.slice(0, 3))).toEqual([0, 0, 0])
    shareSpread(pedigree, DONOR).forEach((spread, index) => expect(spread).toBeCloseTo(recurrent[index] ?? NaN, 9))
  })

  it('a gene drop of whole chromosomes: brother and sister of BC1 mated, and their chick of two possible sires', () => {
    const animals = [...backcrosses(1).animals, chick(2, 3), chick(4, 5), {sex: 'unknown', base: null, matings: [{sire: 4, dam: 6, chance: 0.5}, {sire: 2, dam: 6, chance: 0.5}]} as const]
    const lengths = [150, 60]
    const chance = chanceOf(20)
    const drops = 8_000
    const sums = animals.map(() => ({sum: 0, square: 0}))
    const PLACES = 60
    for (let drop = 0; drop < drops; drop++) {
      const genomes: boolean[][][][] = []
      animals.forEach((animal, index) => {
        const gamete = (parent: number) => lengths.map((length, c) => {
          let from = chance.whole(0, 1)
          return Array.from({length: Math.round(PLACES * length / 210)}, (_, place) => {
            const apart = length / Math.round(PLACES * length / 210) / 100
            if (place > 0 && chance.happens((1 - Math.exp(-2 * apart)) / 2)) from = 1 - from
            return genomes[parent]?.[from]?.[c]?.[place] ?? false
          })
        })
        const mating = animal.matings.length === 0 ? null : chance.oneOf(animal.matings)
        const pure = () => lengths.map(length => Array.from({length: Math.round(PLACES * length / 210)}, () => animal.base === RECURRENT))
        genomes[index] = mating ? [gamete(mating.sire ?? 0), gamete(mating.dam ?? 0)] : [pure(), pure()]
        const all = genomes[index]?.flat(2) ?? []
        const share = all.filter(Boolean).length / all.length
        const tally = sums[index]
        if (tally) { tally.sum += share; tally.square += share * share }
      })
    }
    const spread = shareSpread({animals, bases, kin: []}, RECURRENT, lengths)
    // tolerance: five standard errors of an SD from 8,000 drops, and the steps between the places
    sums.forEach(({sum, square}, index) => expect(Math.abs(Math.sqrt(Math.max(0, square / drops - (sum / drops) ** 2)) - (spread[index] ?? NaN))).toBeLessThan(0.006))
  })
})
