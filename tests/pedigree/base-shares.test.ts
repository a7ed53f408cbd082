import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {baseShares} from '../../src/pedigree/base-shares.ts'
import type {Animal, Pedigree} from '../../src/pedigree/pedigree.ts'
import {anyPedigree} from './pedigrees.ts'

const RECURRENT = 0, DONOR = 1
const bases = [0, 1].map(() => ({inbreeding: 0, kinship: 0, within: null}))
const founder = (sex: Animal['sex'], base: number): Animal => ({sex, base, matings: []})
const chick = (sex: Animal['sex'], sire: number, dam: number): Animal => ({sex, base: null, matings: [{sire, dam, chance: 1}]})

/** a son and a daughter each step, then again to a new cock of the recurrent strain */
function alwaysToCocks(first: [Animal, Animal]): {pedigree: Pedigree; daughters: number[]; sons: number[]} {
  const animals: Animal[] = [...first]
  const sons: number[] = [], daughters: number[] = []
  const hatch = (sire: number, dam: number) => {
    sons.push(animals.push(chick('male', sire, dam)) - 1)
    daughters.push(animals.push(chick('female', sire, dam)) - 1)
  }
  hatch(0, 1)
  for (let n = 0; n < 3; n++) {
    const cock = animals.push(founder('male', RECURRENT)) - 1
    hatch(cock, daughters.at(-1) ?? 0)
  }
  return {pedigree: {animals, bases, kin: []}, sons, daughters}
}

describe('baseShares(pedigree, transmission, base)', () => {
  it('autosomes: each backcross halves the donor', () => {
    // source: University lessons on backcrossing, donor share (1/2)^(n+1)
    const {pedigree, daughters} = alwaysToCocks([founder('male', RECURRENT), founder('female', DONOR)])
    const share = baseShares(pedigree, 'autosome', RECURRENT)
    expect(daughters.map(bird => share[bird])).toEqual([0.5, 0.75, 0.875, 0.9375])
  })

  it('the Z: a donor hen\'s is lost in the first hen line', () => {
    // computed exactly: a hen's one Z is her sire's
    const {pedigree, daughters, sons} = alwaysToCocks([founder('male', RECURRENT), founder('female', DONOR)])
    const share = baseShares(pedigree, 'Z', DONOR)
    expect(daughters.map(bird => share[bird])).toEqual([0, 0, 0, 0])
    expect(sons.map(bird => share[bird])).toEqual([0.5, 0, 0, 0])
  })

  it('the Z: a donor cock\'s goes on through cocks', () => {
    const animals = [
      founder('male', DONOR), founder('female', RECURRENT), chick('male', 0, 1), chick('female', 0, 1), founder('female', RECURRENT),
      chick('female', 2, 4), chick('male', 2, 4), founder('female', RECURRENT), chick('female', 6, 7), chick('male', 6, 7),
    ]
    const share = baseShares({animals, bases, kin: []}, 'Z', DONOR)
    expect([2, 3, 5, 6, 8, 9].map(bird => share[bird])).toEqual([1 / 2, 1, 1 / 2, 1 / 4, 1 / 4, 1 / 8])
  })

  it('the mother\'s line goes whole from hen to chick', () => {
    const {pedigree, daughters, sons} = alwaysToCocks([founder('male', RECURRENT), founder('female', DONOR)])
    const share = baseShares(pedigree, 'dam line', DONOR)
    expect([...daughters, ...sons].every(bird => share[bird] === 1)).toBe(true)
  })

  it('sums to 1 less what comes from birds of no stated strain, whatever is doubtful', () => {
    fc.assert(fc.property(anyPedigree(), fc.constantFrom('autosome' as const, 'Z' as const, 'dam line' as const), (pedigree, transmission) => {
      const all = pedigree.bases.flatMap(({within}, base) => (within === null ? [baseShares(pedigree, transmission, base)] : []))
      pedigree.animals.forEach((animal, index) => {
        const sum = all.reduce((total, share) => total + (share[index] ?? 0), 0)
        expect(sum).toBeLessThanOrEqual(1 + 1e-12)
        if (animal.matings.length === 0 && !animal.oneOf) expect(sum).toBe(animal.base === null ? 0 : 1)
      })
    }))
  })
})
