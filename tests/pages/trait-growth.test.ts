import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {traitGrowth} from '../../src/pages/trait-growth.ts'
import {at, bird, date, F2, hatch, logbook, trait, weight} from './small-logbook.ts'

const adult = trait('weight-adult', 'Weight at a year', {kind: 'measured', unit: 'g', measure: 'weight', atAge: 364, window: 56})

function bookAt(ages: readonly number[]): Logbook {
  const on = date('2024-03-23'), from = hatch('2024-03', {on, step: F2})
  const chicks = [0, 1, 2, 3, 4].map(index => bird(`24-${index}`, 'male', {
    hatched: on, hatch: from, step: F2, strain: null, weighings: ages.map(after => ({measure: 'weight', value: 10 * after + index, on: {text: '', first: on.first + after, last: on.first + after}, at})),
  }))
  return logbook('2025-10-30', {traits: [weight, adult], birds: chicks, hatches: [Object.assign(from, {chicks})]})
}

describe('traitGrowth(trait, findings, first)', () => {
  it('draws each sex that was weighed at two ages, with counts and intervals in its table', () => {
    const found = traitGrowth(weight, study(bookAt([56, 140, 364])), 3)
    expect(found?.figures.map(({head, id, name}) => [head, id, name])).toEqual([['Figure 3.', 'growth-male', 'weight-growth-male']])
    expect(found?.figures[0]?.table).toEqual({
      columns: [{head: 'Step'}, {head: '8 weeks', number: true}, {head: '20 weeks', number: true}, {head: '52 weeks', number: true}],
      rows: [['F2', '0.56 of 5, 0.56–0.56', '1.40 of 5, 1.40–1.40', '3.64 of 5, 3.64–3.64']],
    })
    expect(found?.figures[0]?.description).toBe('F2: 0.56 at 8 weeks, 1.40 at 20 weeks and 3.64 at 52 weeks.')
  })

  it('sends a second trait of the measure to the first', () => {
    expect(traitGrowth(adult, study(bookAt([56, 140])), 1)).toMatchObject({figures: [], elsewhere: {text: 'How they grow: weight at 20 weeks', link: 'traits/weight-20.html'}})
  })

  it('is nothing where all were weighed at one age', () => expect(traitGrowth(weight, study(bookAt([140])), 1)).toBeNull())
})
