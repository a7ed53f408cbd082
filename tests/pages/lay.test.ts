import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {hatchPage} from '../../src/pages/hatch.ts'
import {hatchesPage, type HatchesView} from '../../src/pages/hatches.ts'
import {layPage, type LayView} from '../../src/pages/lay.ts'
import type {Table} from '../../src/pages/page.ts'
import {penPage} from '../../src/pages/pen.ts'
import {lifeBook} from '../findings/life-book.ts'
import {at, bird, date, F1, hatch, logbook, pen, smallBook, stay, weekOld} from './small-logbook.ts'

const layOf = (book: Logbook) => layPage(study(book)).view as LayView
const hatchesOf = (book: Logbook) => hatchesPage(study(book)).view as HatchesView

/** Every text of a view. */
function textsOf(value: unknown, key = ''): string[] {
  if (typeof value === 'string') return [value]
  if (value === null || typeof value !== 'object' || key === 'spec') return []
  return Object.entries(value).flatMap(([name, inner]) => textsOf(inner, name))
}

describe('the page of life and lay', () => {
  it('says of a project one week old that there is nothing yet', () => {
    expect(layOf(weekOld())).toMatchObject({lead: 'No chick has hatched and no egg has been counted yet.', figures: [], living: null, laying: null, firstEggs: null, feed: null})
  })
  it('draws a chart a measure, each with its table and words', () => {
    const {figures, living} = layOf(smallBook())
    expect(figures.map(({id, head}) => [id, head])).toEqual([['hatching', 'Figure 1.'], ['living', 'Figure 2.']])
    // 14 of 20 and 6 of 12, by the hand-made book
    expect(figures[0]?.table.rows.map(row => row.slice(0, 3))).toEqual([['2024', '14 of 20', '70.0'], ['2025', '6 of 12', '50.0']])
    expect(figures[0]?.description).toContain('2024 70.0 per cent')
    expect(living?.compared).not.toBeNull()
    expect(living?.alike).toContain('none of these were kept alike')
  })
  it('tells a gap in a sheet, weights and feed, and sends nobody to an empty place', () => {
    const hens = Array.from({length: 4}, (_, place) => bird(`F-${place}`, 'female', {step: F1, hatched: date('2023-04-01')})), A = pen('2024-A', 2024, {females: hens.map(one => stay(one)), from: date('2024-02-01'), to: date('2024-06-01')})
    const eggs = (on: string, count: number) => ({pen: A, bird: null, on: date(on), eggs: count, hens: null, at, weight: {grams: 56 * count, eggs: count}})
    const book = logbook('2025-01-01', {birds: hens, pens: [A], eggCounts: ['2024-03-01', '2024-03-02', '2024-03-05'].map(on => eggs(on, 3)), feedings: [{pen: A, hatch: null, on: date('2024-03-01'), feed: 1200, at}, {pen: A, hatch: null, on: date('2024-03-03'), feed: 1200, at}]})
    const {laying, feed, living, figures} = layOf(book)
    expect(laying?.pens?.rows).toEqual([[{text: '2024-A', link: 'pens/2024-A.html'}, '75.0', '–', '9', '12', '4', '1\u00a0Mar\u00a02024', '3', '2.3 in 3 days', '2 days']])
    expect(laying?.words[0]).toBe('Weight of an egg: F1 56.0 g (9 eggs).')
    // 1200 g by four hens in two days; 6 eggs of 56 g in them
    expect(feed?.rows).toEqual([[{text: '2024-A', link: 'pens/2024-A.html'}, '1.20 kg, 1 to 2 March 2024', '8', '150 g', '200 g', '3.57']])
    expect([living, figures.length]).toEqual([null, 1])
    const view = penPage(A, study(book)).view as {laid: readonly string[]}
    expect(view.laid[0]).toContain('9 eggs on 3 days counted (1 to 5 March 2024), 12 hen-days: hen-day rate 75.0%; 2.3 for each of the 4 hens there at the start')
    expect(view.laid[1]).toBe('Not counted, and in no rate: 2 days. A day without a row is not taken for a day without eggs.')
  })
  it('holds no number that is none and nothing undefined, whatever the records; nor do those of hatches and pens', () => {
    fc.assert(fc.property(lifeBook, book => {
      const findings = study(book)
      const views = [layPage(findings), hatchesPage(findings), ...findings.hatchResults.hatches.map(result => hatchPage(result, findings, new Set())), ...book.pens.map(each => penPage(each, findings))].map(({view}) => view)
      for (const words of views.flatMap(view => textsOf(view))) expect(words).not.toMatch(/NaN|undefined|Infinity|-0\.0\b/)
    }), {numRuns: 12})
  })
})

describe('the page of hatches', () => {
  const dead = (table: Table | null) => table?.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell.replaceAll('\u2060', '') : cell.text)))
  it('tells the dead of each stage, season by season', () => {
    // by hand: 17 fertile, 1 and 2 of them dead; Wilson's formula worked apart in Python 3
    expect(dead(hatchesOf(smallBook()).dead)).toEqual([['2024', '1 of 17: 5.9 (1.0–27.0)', '2 of 17: 11.8 (3.3–34.3)']])
  })
  it('sets groups side by side and warns where they were not kept alike', () => {
    const {compared, alike, answer, steps} = hatchesOf(smallBook())
    expect(compared?.rows.map(([what]) => what)).toEqual(['F2 less F1', '2025 less 2024'])
    expect(compared?.rows[0]?.at(-1)).toBe('no: season, hen or machine')
    expect(alike).toMatch(/^By the records none of these were kept alike/)
    expect(answer).toBe('None of two comparisons shows a difference: the limits of each leave room for none.')
    expect(steps?.heads).toContain('Speaks of')
  })
  it('has its seasons also where only pure strains have hatched', () => {
    const strains = hatch('1', {set: date('2024-03-01'), on: date('2024-03-22'), eggs: 10, hatched: 7, step: {label: 'strain', kind: 'strain', to: null, strains: [], backcrosses: 0, interSe: 0, depth: 0}})
    const {seasons, compared, ways} = hatchesOf(logbook('2025-01-01', {hatches: [strains]}))
    expect([seasons?.caption, seasons?.rows.length, compared, ways]).toEqual(['Every season', 1, null, null])
  })
})
