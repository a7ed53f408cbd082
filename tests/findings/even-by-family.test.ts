import {describe, expect, it} from 'vitest'
import {evenByFamily} from '../../src/findings/even-by-family.ts'
import type {Measured, SpreadRow} from '../../src/findings/spread.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import {familyVariation} from '../../src/statistics/family-variation.ts'
import {bird, hatch, parents, weight} from '../pages/small-logbook.ts'

const from = hatch('h', {rearing: 'h'}), cocks = Array.from({length: 6}, (_, place) => bird(`C${place}`, 'male'))
const son = (cock: Bird, value: number, counted = true): Measured => ({bird: bird(`${cock.id}-${value}`, 'male', {hatch: from, parentage: parents([[cock, 1]], null)}), hatch: from, sex: 'male', value, counted})
const row = (values: readonly Measured[]): SpreadRow => ({step: 'F2', trait: weight, sex: 'male', spread: {kind: 'cannot-say', have: 0, need: 5, why: 'too-few', leftOut: []}, values})
const sons = (families: number): Measured[] => cocks.slice(0, families).flatMap((cock, place) => [2200, 2400, 2700].map(grams => son(cock, grams + 10 * place)))

describe('evenByFamily(row, wanted)', () => {
  it('hands each figure its chicks by family', () => {
    const values = sons(5), found = evenByFamily(row(values), weight.wanted.male)
    expect(found.cv).toEqual({interval: familyVariation([values.map(({value}, place) => ({family: Math.floor(place / 3), value}))]), families: 5, effective: null})
    // by hand: mean 2453.3, a tenth 2208 to 2698.7: of 2200 and 2700 the first of cock 0 and every last fall out; wanted 2160 to 2640: every last falls out
    const near = familyShare([1, 2, 2, 2, 2].map(k => ({k, n: 3})), {seed: 1}), inside = familyShare([2, 2, 2, 2, 2].map(k => ({k, n: 3})), {seed: 1})
    expect(found['within-tenth']).toEqual({interval: {low: near?.low, high: near?.high}, families: 5, effective: near?.effective})
    expect(found.inside).toEqual({interval: {low: inside?.low, high: inside?.high}, families: 5, effective: inside?.effective})
  })

  it('has no interval under five families, and none of a target that is not there', () => {
    expect(Object.values(evenByFamily(row(sons(4)), weight.wanted.male)).map(({interval, families}) => [interval, families])).toEqual([[null, 4], [null, 4], [null, 4]])
    expect(evenByFamily(row(sons(5)), null).inside).toEqual({interval: null, families: 0, effective: null})
  })

  it('holds birds without a class against the target only', () => {
    const cock = cocks[5] ?? expect.fail('no cock'), found = evenByFamily(row([...sons(5), son(cock, 2400, false)]), weight.wanted.male)
    expect([found.cv.families, found['within-tenth'].families, found.inside.families]).toEqual([5, 5, 6])
  })
})
