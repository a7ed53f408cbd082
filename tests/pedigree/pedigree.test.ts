import {describe, expect, it} from 'vitest'
import {aboveOf, isFounder, type Animal} from '../../src/pedigree/pedigree.ts'

const founder: Animal = {sex: 'female', base: null, matings: []}

describe('isFounder(animal)', () => {
  it('has no parents, and is not one of others', () => {
    expect(isFounder(founder)).toBe(true)
    expect(isFounder({...founder, matings: [{sire: 0, dam: null, chance: 1}]})).toBe(false)
    expect(isFounder({...founder, oneOf: [{animal: 0, chance: 1}]})).toBe(false)
  })
})

describe('aboveOf(animal)', () => {
  it('names possible parents, the one unknown dam, and whom it may be', () => {
    expect(aboveOf(founder)).toEqual([])
    expect(aboveOf({...founder, damStandIn: 7, matings: [{sire: 0, dam: 1, chance: 0.5}, {sire: null, dam: 2, chance: 0.5}]})).toEqual([7, 0, 1, 2])
    expect(aboveOf({...founder, oneOf: [{animal: 3, chance: 0.5}, {animal: 4, chance: 0.5}]})).toEqual([3, 4])
  })
})
