import {describe, expect, it} from 'vitest'
import {clans, closedPen, rollingPens, wholeFlock} from '../../src/pedigree/mating-systems.ts'

const three = [{males: 1, females: 4}, {males: 2, females: 5}, {males: 1, females: 6}]

describe('clans(pens, shifts)', () => {
  it('puts the males of each clan to the hens of the next, the last to the first; chicks are of their dam’s clan', () => {
    const {sizes, plan, cycle} = clans(three)
    expect(sizes).toEqual([1, 4, 2, 5, 1, 6])
    expect(cycle).toBe(1)
    expect(plan(1).pens).toEqual([{males: 4, females: 1}, {males: 0, females: 3}, {males: 2, females: 5}])
    expect(plan(1).next).toEqual([0, 0, 1, 1, 2, 2].map(clan => ({chicksOf: [clan]})))
    expect(plan(7)).toEqual(plan(1))
  })

  it('moves males by the shifts in turn, so that each clan meets every other', () => {
    const {plan, cycle} = clans([...three, {males: 1, females: 4}], [1, 2, 3])
    expect(cycle).toBe(3)
    // males that the hens of the first clan meet, season by season: of clans 4, 3, 2 and 4 again
    expect([1, 2, 3, 4].map(season => plan(season).pens[0]?.males)).toEqual([6, 4, 2, 6])
    for (const season of [1, 2, 3]) for (const {males, females} of plan(season).pens) expect(Math.floor(males / 2)).not.toBe(Math.floor(females / 2))
  })

  it('refuses a shift that keeps males at home, and no clan at all', () => {
    expect(() => clans(three, [3])).toThrow('keeps males at home')
    expect(() => clans(three, [1.5])).toThrow(RangeError)
    expect(() => clans(three, [])).toThrow('need a shift')
    expect(() => clans([])).toThrow('1 clan or more')
  })
})

describe('closedPen(pen) and wholeFlock(pens)', () => {
  it('are one pen, of its own birds or of all', () => {
    expect(closedPen({males: 1, females: 4}).plan(1)).toEqual({pens: [{males: 0, females: 1}], next: [{chicksOf: [0]}, {chicksOf: [0]}]})
    expect(wholeFlock(three).sizes).toEqual([4, 15])
  })
})

describe('rollingPens(birds, apart)', () => {
  const birds = {cockerels: 2, cocks: 1, pullets: 5, hens: 4}

  it('puts cockerels to hens and cocks to pullets, and keeps this year’s young for another', () => {
    const {sizes, plan} = rollingPens(birds)
    expect(sizes).toEqual([2, 1, 5, 4])
    expect(plan(1).pens).toEqual([{males: 0, females: 3}, {males: 1, females: 2}])
    expect(plan(1).next).toEqual([{chicksOf: [0, 1]}, {kept: 0}, {chicksOf: [0, 1]}, {kept: 2}])
  })

  it('keeps pullets from their fathers and cockerels from their mothers, where that is asked', () => {
    // the cock of the pullets' pen was the cockerel of the hens' pen: his daughters hatch there
    expect(rollingPens(birds, {fathers: true}).plan(1).next[2]).toEqual({chicksOf: [1]})
    expect(rollingPens(birds, {mothers: true}).plan(1).next[0]).toEqual({chicksOf: [0]})
  })
})
