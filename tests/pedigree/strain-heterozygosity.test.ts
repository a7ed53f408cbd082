import {describe, expect, it} from 'vitest'
import type {Animal} from '../../src/pedigree/pedigree.ts'
import {strainHeterozygosity} from '../../src/pedigree/strain-heterozygosity.ts'

const bases = [{inbreeding: 0.05, kinship: 0.04, within: null}, {inbreeding: 0, kinship: 0, within: null}]
const founder = (base: number): Animal => ({sex: 'unknown', base, matings: []})
const chick = (sire: number, dam: number): Animal => ({sex: 'unknown', base: null, matings: [{sire, dam, chance: 1}]})

describe('strainHeterozygosity(pedigree)', () => {
  it('F1 1, F2 ½, each backcross half of the one before', () => {
    // source: Dickerson 1973 (from memory); F2 of two F1 pairs that are not kin
    const animals = [
      founder(0), founder(1), chick(0, 1), founder(0), founder(1), chick(3, 4), chick(2, 5),
      founder(0), chick(2, 7), founder(0), chick(8, 9),
    ]
    const h = strainHeterozygosity({animals, bases, kin: []})
    expect([0, 2, 6, 8, 10].map(bird => h[bird])).toEqual([0, 1, 0.5, 0.5, 0.25])
  })

  it('brother × sister from the F1 on follows the recurrence of full sibs', () => {
    // source: Wright 1921, F'' = (1 + 2F' + F)/4, here from F1 0 and F2 ½: H 1, ½, ½, 3/8, 5/16
    const animals = [founder(0), founder(1), chick(0, 1), chick(0, 1)]
    for (let step = 0; step < 3; step++) animals.push(chick(animals.length - 2, animals.length - 1), chick(animals.length - 2, animals.length - 1))
    animals.push(chick(animals.length - 2, animals.length - 1))
    const h = strainHeterozygosity({animals, bases, kin: []})
    expect([2, 4, 6, 8, 10].map(bird => h[bird])).toEqual([1, 1 / 2, 1 / 2, 3 / 8, 5 / 16])
  })
})
