import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {rotationPage, type RotationView} from '../../src/pages/rotation.ts'

import {longRunRate, matingForecast} from '../../src/pedigree/mating-forecast.ts'
import {clans} from '../../src/pedigree/mating-systems.ts'
import {twoPens} from '../findings/breeding-book.ts'
import {logbook, smallBook, weekOld} from './small-logbook.ts'

const of = (book: Logbook): RotationView => rotationPage(study(book)).view as RotationView

describe('rotationPage(findings)', () => {
  const view = of(twoPens())

  it('draws F and kinship side by side, each with a table of ten years', () => {
    expect(view.figures.map(({name}) => name)).toEqual(['ways-of-mating-inbreeding', 'ways-of-mating-kinship'])
    for (const {table} of view.figures) expect(table.rows.map(([year]) => year)).toEqual(['2027', '2028', '2029', '2030', '2031', '2032', '2033', '2034', '2035', '2036'])
  })

  it('names which way passes the limit in which year, and does not recommend closed pens', () => {
    // closed pens ¼ at once; at random ⅛ in the first season, on the limit and not past it
    expect(view.passing.slice(0, 3)).toEqual(['Closed pens: past 12.5% in 2027.', 'One flock and rolling: past 12.5% in 2028.', 'Clans and rolling apart: past 12.5% in 2029.'])
    // clans: no kin meets until the A's daughters meet their own blood again
    expect(view.answer[0]).toMatch(/^By F of the chicks in 2036, the least first: (clans|rolling apart) .*\. Avoid closed pens: /)
    expect(view.answer[1]).toMatch(/^By kinship of two chicks, .* Closed pens have \d/)
    expect(view.answer[2]).toBe('Reckoned with 1 male and 2 females of pen 2026-A and 1 male and 1 female of pen 2026-B, and as many every season; in rolling pens 1 cockerel with 1 hen and 1 cock with 2 pullets.')
    expect(view.answer[3]).toContain('the males of pen 2026-A to the hens of 2026-B and the males of pen 2026-B to the hens of 2026-A.')
    expect(view.ways.find(({title}) => title === 'Closed pens')?.words).toContain('not recommended')
  })

  it('says once that all pass at once, and gives the years only where they differ', () => {
    expect(view.summary?.columns.map(({head}) => head)).toContain('Passes the limit')
    const near = of(twoPens(-0.01))
    expect(near.summary?.columns.map(({head}) => head)).not.toContain('Passes the limit')
    expect(near.passing[0]).toMatch(/^Every way passes the limit of -1\.0% with the first chicks, in 2027/)
  })

  it('says what cannot be said yet, and never NaN', () => {
    expect(of(weekOld()).wanting).not.toBe('')
    expect(of(weekOld()).figures).toEqual([])
    expect(of(smallBook()).start.join(' ')).toContain('With one pen there are no clans')
    for (const book of [logbook('2024-01-01'), weekOld(), smallBook(), twoPens(null)]) expect(JSON.stringify(of(book))).not.toMatch(/NaN|undefined|Infinity/)
  })
})

describe('what the page says of three clans', () => {
  it('is what the recursion gives: past 10 % in the fifth generation, 20 % in the eighth, then 3.7 % a generation', () => {
    const three = clans(Array.from({length: 3}, () => ({males: 1, females: 4})))
    const course = matingForecast(three, 8).map(({inbreeding}) => inbreeding)
    expect([course.findIndex(f => f > 0.1) + 1, course.findIndex(f => f > 0.2) + 1]).toEqual([5, 8])
    expect(Math.round(longRunRate(three) * 1000) / 10).toBe(3.7)
  })
})
