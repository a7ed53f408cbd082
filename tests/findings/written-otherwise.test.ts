import {describe, expect, it} from 'vitest'
import {ofOtherPens, pensLikelier, timesLikelier, withoutLoop, writtenOtherwise} from '../../src/findings/written-otherwise.ts'
import type {Animal} from '../../src/pedigree/pedigree.ts'
import {expectClose} from '../expect-close.ts'

const founder = (sex: 'male' | 'female'): Animal => ({sex, base: null, matings: []})
const chick = (sire: number, dam: number): Animal => ({sex: 'male', base: null, matings: [{sire, dam, chance: 1}]})

describe('writtenOtherwise(animal, sires, dams)', () => {
  it('adds matings with one parent changed, never both, and the chances still make 1', () => {
    const {animal: {matings}} = writtenOtherwise(chick(0, 1), [2, 3], [4])
    expect(matings.map(({sire, dam}) => [sire, dam])).toEqual([[0, 1], [2, 1], [3, 1], [0, 4]])
    expectClose(matings.reduce((sum, {chance}) => sum + chance, 0), 1, 1e-12, {})
  })
  it('leaves a family its one unknown dam', () => expect(writtenOtherwise({...chick(0, 1), damStandIn: 5}, [], [4])).toMatchObject({dams: [], animal: {matings: [{sire: 0, dam: 1, chance: 1}]}}))
  it('keeps the chances of several matings as they were to each other', () => {
    const {animal: {matings}} = writtenOtherwise({...chick(0, 1), matings: [{sire: 0, dam: 1, chance: 0.75}, {sire: 2, dam: 1, chance: 0.25}]}, [3], [])
    expect(matings.map(({sire}) => sire)).toEqual([0, 2, 3])
    expectClose((matings[0]?.chance ?? 0) / (matings[1]?.chance ?? 0), 3, 1e-12, {})
  })
})

describe('timesLikelier(otherwise, from)', () => {
  const otherwise = writtenOtherwise(chick(0, 1), [2], [4])
  it('is 1 where nothing was learnt', () => {
    const found = timesLikelier(otherwise, {sires: [{is: 0, probability: 0.95}, {is: 2, probability: 0.05}], dams: [{is: 1, probability: 0.95}, {is: 4, probability: 0.05}]})
    for (const {times} of found) expectClose(times ?? NaN, 1, 1e-12, {})
  })
  it('is the gain in odds', () => {
    // 0.05 against 0.9 beforehand, 0.8 against 0.1 afterwards
    const [sire] = timesLikelier(otherwise, {sires: [{is: 2, probability: 0.8}, {is: 0, probability: 0.2}], dams: [{is: 1, probability: 0.9}, {is: 4, probability: 0.1}]})
    expectClose(sire?.times ?? NaN, 8 / (0.05 / 0.9), 1e-9, {})
  })
  it('is not a number where as written it cannot be', () => expect(timesLikelier(otherwise, {sires: [{is: 2, probability: 1}], dams: [{is: 1, probability: 1}]}).map(({times}) => times)).toEqual([null, null]))
})

describe('ofOtherPens(animal, pens)', () => {
  const pens = [{sires: [2, 3], dams: [4, 5]}, {sires: [2], dams: [5, 6]}]
  it('changes both parents at once, each pen alike, and a hen counts for the first that has her', () => {
    const {animal: {matings}, pens: hens} = ofOtherPens(chick(0, 1), pens)
    expect(hens).toEqual([[4, 5], [6]])
    expect(matings.map(({sire, dam, chance}) => [sire, dam, Math.round(chance * 1e6) / 1e6])).toEqual([[0, 1, 0.9], [2, 4, 0.0125], [3, 4, 0.0125], [2, 5, 0.0125], [3, 5, 0.0125], [2, 6, 0.05]])
  })
  it('leaves a family its one unknown dam', () => expect(ofOtherPens({...chick(0, 1), damStandIn: 7}, pens).pens).toEqual([[], []]))
  it('gives each pen its gain in odds, and its likeliest hen', () => {
    const found = pensLikelier(ofOtherPens(chick(0, 1), pens), [{is: 5, probability: 0.6}, {is: 1, probability: 0.3}, {is: 4, probability: 0.1}])
    expectClose(found[0]?.times ?? NaN, (0.7 / 0.05) / (0.3 / 0.9), 1e-9, {})
    expect(found).toMatchObject([{dam: 5}, {times: 0}])
    expect(pensLikelier(ofOtherPens(chick(0, 1), pens), [{is: 5, probability: 1}])[0]).toEqual({times: null, dam: 5})
  })
})

it('withoutLoop(pedigree) gives no bird its own offspring as a parent, whatever was given before', () => {
  const free = withoutLoop({animals: [founder('male'), founder('female'), chick(0, 1), chick(2, 1), chick(0, 1)], bases: [], kin: []})
  expect(free(2, [0, 2, 3, 4])).toEqual([0, 4])
  expect(free(4, [2, 3])).toEqual([])
})
