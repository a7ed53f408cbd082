import {describe, expect, it} from 'vitest'
import {ratesOf} from '../../src/findings/hatch-results.ts'
import {hatchFigure} from '../../src/pages/hatch-rows.ts'
import {hatch} from './small-logbook.ts'

const figure = (hatched: number) => hatchFigure([{label: '2022', rates: ratesOf([hatch('1', {eggs: 121, hatched, clear: 20, deadInGerm: 18})])}], {id: 'eggs', name: 'eggs', head: 'Figure 1.', what: 'season by season'})?.table

describe('the table of what became of the eggs', () => {
  it('adds up to the eggs, those not told among them', () => {
    expect(figure(81)?.columns.at(-1)).toMatchObject({head: 'Not told'})
    expect(figure(81)?.rows).toEqual([['2022', '121', '81', '20', '18', '2']])
  })
  it('has no column for them where all are told', () => expect(figure(83)?.columns.at(-1)).toMatchObject({head: 'Dead'}))
})
