import {describe, expect, it} from 'vitest'
import {unrelatedGroups} from '../../src/pedigree/breeding-groups.ts'
import {hatchOf, type SeasonPlan} from '../../src/pedigree/group-mating.ts'
import {expectClose} from '../expect-close.ts'

describe('hatchOf(groups, plan, sizes)', () => {
  const onePen: SeasonPlan = {pens: [{males: 0, females: 1}], next: [{chicksOf: [0]}, {chicksOf: [0]}]}

  it('of one pair: full sibs', () => {
    const {inbreeding, byPen, kinship, next} = hatchOf(unrelatedGroups([1, 1]), onePen, [1, 1])
    expect([inbreeding, ...byPen, kinship]).toEqual([0, 0, 0.25])
    expect(next).toEqual({sizes: [1, 1], self: [0.5, 0.5], kinship: [[0.25, 0.25], [0.25, 0.25]]})
  })

  it('of one cock and four hens: half sibs three times in four', () => {
    // ¼ (½ + 2 · 0 + ¼ · ½), which is ¼ · ¼ + ¾ · ⅛
    expectClose(hatchOf(unrelatedGroups([1, 4]), onePen, [1, 4]).kinship, 0.15625, 1e-15)
  })

  it('of two pens: chicks of both count by the hens, and share nothing between unrelated pens', () => {
    const plan: SeasonPlan = {pens: [{males: 0, females: 1}, {males: 2, females: 3}], next: [{chicksOf: [0]}, {chicksOf: [1]}, {chicksOf: [0, 1]}]}
    // pen one: a cock with his only daughter; pen two: one cock, three hens, unrelated
    const groups = {...unrelatedGroups([1, 1, 1, 3]), kinship: [[0, 0.25, 0, 0], [0.25, 0, 0, 0], [0, 0, 0, 0], [0, 0, 0, 0]]}
    const {byPen, inbreeding, next, kinship} = hatchOf(groups, plan, [2, 2, 2])
    expect(byPen).toEqual([0.25, 0])
    expectClose(inbreeding, 0.25 / 4, 1e-15)
    expect(next.self).toEqual([0.625, 0.5, 0.25 * 0.625 + 0.75 * 0.5])
    expect(next.kinship[0]?.[1]).toBe(0)
    // pen one: ¼ (½ + ¼ + ¼ + ½); pen two ¼ (½ + ½ · ⅓)
    const [within, other] = [0.375, (0.5 + 0.5 / 3) / 4]
    expectClose(next.kinship[0]?.[0] ?? NaN, within, 1e-15)
    expectClose(next.kinship[1]?.[1] ?? NaN, other, 1e-15)
    expectClose(kinship, within / 16 + (9 / 16) * other, 1e-15)
  })

  it('keeps a group as it is, no larger than it was, and knows its kinship with the chicks', () => {
    const plan: SeasonPlan = {pens: [{males: 0, females: 1}], next: [{kept: 0}, {chicksOf: [0]}, {kept: 1}]}
    const {next} = hatchOf(unrelatedGroups([1, 4]), plan, [3, 2, 2])
    expect(next.sizes).toEqual([1, 2, 2])
    // a cock with his chicks ¼; a hen with a chick of one of the four: ¼ · ¼
    expect(next.kinship[0]).toEqual([0, 0.25, 0])
    expectClose(next.kinship[2]?.[1] ?? NaN, 0.0625, 1e-15)
  })
})
