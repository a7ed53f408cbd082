import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import {hatchResultsOfGroups} from '../../src/findings/hatch-comparisons.ts'
import {hatchGroups} from '../../src/findings/hatch-groups.ts'
import {layOfBook} from '../../src/findings/lay.ts'
import {livabilityOfGroups} from '../../src/findings/livability-of-groups.ts'
import {seasonsOfLife} from '../../src/findings/seasons-of-life.ts'
import type {Bird, EggCount, Hatch, Logbook} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, bird, date, F1, hatch, holm, logbook, strainStep, weekOld} from '../pages/small-logbook.ts'
import {lifeBook} from './life-book.ts'

function seasonsOf(book: Logbook) {
  const groups = hatchGroups(book), touching = careTouching(book)
  return seasonsOfLife(hatchResultsOfGroups(groups), livabilityOfGroups(book, groups, touching), layOfBook(book, touching))
}
const told = (book: Logbook) => seasonsOf(book).map(({season, hatching, livability, lay}) =>
  [season, hatching?.share.kind === 'share' ? [hatching.share.count, hatching.share.total] : null, livability ? [livability.n, livability.deaths] : null, lay ? [lay.eggs, lay.henDays] : null])

/** A setting of 1 April with so many chicks, of which some died at a fortnight. */
function setting(id: string, year: number, eggs: number | null, chicks: number, died: number, more: Partial<Hatch> = {}): Hatch {
  const own = hatch(id, {on: date(`${year}-04-01`), eggs, hatched: chicks, step: F1, ...more})
  own.chicks = Array.from({length: chicks}, (_, place): Bird => bird(`${id}-${place}`, 'unknown', {hatch: own, hatched: own.on, step: own.step, left: place < died ? {how: 'died', on: date(`${year}-04-15`), why: null} : null}))
  return own
}
const hen = bird('B-1', 'female')
const laid = (year: number, ...eggs: readonly number[]): EggCount[] => eggs.map((count, place) => ({pen: null, bird: hen, on: date(isoDay(date(`${year}-03-01`).first + place)), eggs: count, hens: null, at}))
const bookOf = (hatches: readonly Hatch[], eggCounts: readonly EggCount[] = [], asOf = '2026-01-01') => logbook(asOf, {hatches, eggCounts, birds: [hen, ...hatches.flatMap(({chicks}) => chicks)]})

describe('the seasons in three figures', () => {
  it('stand in turn, each with what it has', () => {
    const hatches = [setting('3', 2025, 10, 6, 0), setting('1', 2023, null, 3, 1), setting('2', 2025, 20, 14, 2)]
    expect(told(bookOf(hatches, [...laid(2024, 1, 0, 1, 1), ...laid(2025, 1, 1)]))).toEqual([
      // the eggs of 2023 were not counted; in 2024 nothing was set
      ['2023', null, [3, 1], null], ['2024', null, null, [3, 4]], ['2025', [20, 30], [20, 2], [2, 2]],
    ])
  })

  it('say nothing of chicks not yet eight weeks old', () => {
    expect(told(bookOf([setting('1', 2025, 10, 6, 0)], [], '2025-05-01'))).toEqual([['2025', [6, 10], null, null]])
    expect(told(bookOf([setting('1', 2025, 10, 6, 0)], [], '2025-05-27'))).toEqual([['2025', [6, 10], [6, 0], null]])
  })

  it('leave a pure strain aside, but for its eggs', () => {
    const strain = setting('1', 2024, 10, 6, 1, {step: strainStep(holm)})
    expect(told(bookOf([strain]))).toEqual([])
    expect(told(bookOf([strain], laid(2024, 1)))).toEqual([['2024', null, null, [1, 1]]])
  })

  it('keep the season of a setting set aside, and judge nothing by it', () => {
    expect(told(bookOf([setting('1', 2024, 10, 6, 1, {setAside: 'The heat failed'})]))).toEqual([['2024', null, null, null]])
  })

  it('are none where nothing was set or laid, and one for one chick', () => {
    expect([weekOld(), logbook('2026-01-01')].map(seasonsOf)).toEqual([[], []])
    expect(told(bookOf([setting('1', 2025, 1, 1, 0)]))).toEqual([['2025', [1, 1], [1, 0], null]])
  })

  it('are what going through the book year by year gives', () => {
    fc.assert(fc.property(lifeBook, book => {
      const found = seasonsOf(book), years = [...new Set([...book.hatches.map(({pens}) => pens[0]?.pen.season), ...layOfBook(book, careTouching(book)).sheets.flatMap(({sheets}) => sheets.map(({season}) => season))])]
      expect(found.map(({season}) => Number(season))).toEqual(years.filter(year => year !== undefined).sort((a, b) => a - b))
      for (const {season, hatching, lay} of found) {
        const counted = book.hatches.filter(({pens, eggs, hatched}) => String(pens[0]?.pen.season) === season && eggs !== null && hatched !== null && hatched <= eggs), eggs = counted.reduce((sum, {eggs: set}) => sum + (set ?? 0), 0)
        expect(hatching?.share.kind === 'share' ? [hatching.share.count, hatching.share.total] : null).toEqual(eggs === 0 ? null : [counted.reduce((sum, {hatched}) => sum + (hatched ?? 0), 0), eggs])
        if (lay) expect([lay.by, lay.name]).toEqual(['season', season])
      }
    }), {numRuns: 25})
  })
})
