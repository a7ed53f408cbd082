import {describe, expect, it} from 'vitest'
import type {LifeOfChicks} from '../../src/findings/livability-of-groups.ts'
import {livabilityTable, livedWords} from '../../src/pages/livability-rows.ts'

const life = (died: number, early: number): LifeOfChicks => ({n: 20, ages: [{age: 56, found: null, died: 0}, {age: 140, found: null, died: early}], died, leftAlive: {culled: 0, sold: 0, taken: 0, lost: 0}, undated: 0, unlisted: 0})
const diedOf = (died: number, early: number) => livabilityTable([{name: 'F1', life: life(died, early)}])?.rows[0]?.[5]

describe('how chicks lived, in words', () => {
  it('tells deaths to the last age and later ones apart, so that they fit the shares beside them', () => {
    expect([diedOf(0, 0), diedOf(3, 3), diedOf(5, 1), diedOf(4, 0)]).toEqual(['0', '3 by 20 weeks', '1 by 20 weeks, 4 later', '4 after 20 weeks'])
    expect(livedWords(life(5, 1))[0]).toContain('Died: 1 by 20 weeks, 4 later.')
  })

  it('says of whom the shares speak right behind them', () =>
    expect(livabilityTable([{name: 'F1', life: life(0, 0)}])?.columns.map(({head}) => head)).toEqual(['Of', 'To 8 weeks', 'To 20 weeks', 'Speaks of', 'Chicks', 'Died', 'Left alive']))
})
