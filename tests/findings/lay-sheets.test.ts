import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {laySheets} from '../../src/findings/lay-sheets.ts'
import type {Bird, EggCount, Logbook, Pen} from '../../src/logbook/book.ts'
import {isoDay, yearOf} from '../../src/records/dates.ts'
import {at, bird, date, logbook, pen, smallBook, stay, weekOld} from '../pages/small-logbook.ts'
import {lifeBook} from './life-book.ts'

const FIRST = date('2024-03-01').first
const hen = (id: string, more: Partial<Bird> = {}): Bird => bird(id, 'female', {hatched: date('2023-04-01'), ...more})
const penOf = (id: string, birds: readonly Bird[], more: Partial<Pen> = {}): Pen => pen(id, 2024, {females: birds.map(one => stay(one)), from: date('2024-02-01'), to: date('2024-06-01'), ...more})
/** One row a day from 1 March 2024 on; null: no row. */
const daily = (of: Partial<EggCount>, eggs: readonly (number | null)[], from = FIRST): EggCount[] =>
  eggs.flatMap((count, place) => (count === null ? [] : [{pen: null, bird: null, on: date(isoDay(from + place)), eggs: count, hens: null, at, ...of}]))
const book = (eggCounts: readonly EggCount[], pens: readonly Pen[] = []): Logbook => logbook('2025-06-01', {eggCounts, pens})

describe('the egg sheets of a book', () => {
  it('add up days, eggs and hens alive, as worked by hand', () => {
    // three hens; one dies on 3 March and is alive no more that day; no row on the fourth
    const A = penOf('2024-A', [hen('1'), hen('2'), hen('3', {left: {how: 'died', on: date('2024-03-03'), why: null}})])
    const [sheet, ...others] = laySheets(book(daily({pen: A}, [2, 3, 1, null, 2]), [A]))
    expect(others).toEqual([])
    expect(sheet).toMatchObject({pen: {id: '2024-A'}, bird: null, season: 2024, from: FIRST, to: FIRST + 4, days: 4, missing: 1, unclear: 0, eggs: 8, henDays: 3 + 3 + 2 + 2, hensAtStart: 3, otherHens: 0})
    expect(sheet?.hens.map(({id}) => id)).toEqual(['1', '2', '3'])
    expect(sheet?.rows.map(({from, to, eggs, henDays}) => [from - FIRST, to - FIRST, eggs, henDays])).toEqual([[0, 0, 2, 3], [1, 1, 3, 3], [2, 2, 1, 2], [4, 4, 2, 2]])
  })

  it('stand pens first, then hens, each by season and name', () => {
    const [one, two] = [hen('1', {band: '24-2'}), hen('2', {band: '24-1'})], [A, B, C] = [penOf('2024-B', [one]), penOf('2024-A', [one]), penOf('2025-A', [one], {season: 2025, from: date('2025-02-01'), to: null})]
    const rows = [...daily({bird: one}, [1]), ...daily({pen: C}, [1], date('2025-03-01').first), ...daily({bird: two}, [1]), ...daily({pen: A}, [1]), ...daily({pen: B}, [1]), ...daily({bird: one}, [1], date('2023-12-30').first)]
    expect(laySheets(book(rows, [A, B, C])).map(sheet => [sheet.season, sheet.pen?.id ?? sheet.bird?.band])).toEqual([[2024, '2024-A'], [2024, '2024-B'], [2025, '2025-A'], [2023, '24-2'], [2024, '24-1'], [2024, '24-2']])
  })

  it('of a hen turn with the year, and end with her', () => {
    const one = hen('1', {left: {how: 'sold', on: date('2025-01-02'), why: null}}), sheets = laySheets(book(daily({bird: one}, [1, 0, 1, 1], date('2024-12-30').first)))
    // the day she was sold is none of hers, its egg is unclear
    expect(sheets.map(({season, eggs, henDays, unclear, hensAtStart}) => [season, eggs, henDays, unclear, hensAtStart])).toEqual([[2024, 1, 2, 0, 1], [2025, 1, 1, 1, 1]])
  })

  it('count neither males nor hens that were not hatched or not yet there', () => {
    const A = penOf('2024-A', [hen('1'), bird('2', 'male'), hen('3', {hatched: date('2024-03-02')})], {})
    const B = {...A, females: [...A.females, stay(hen('4'), {from: date('2024-03-03')})]}
    expect(laySheets(book(daily({pen: B}, [1, 1, 1]), [B]))[0]).toMatchObject({henDays: 1 + 2 + 3, hensAtStart: 1})
  })

  it('count a hen once on the day she went and came back', () => {
    const [one, two] = [hen('1'), hen('2')], A = penOf('2024-A', [two]), B = {...A, females: [...A.females, stay(one, {to: date('2024-03-02')}), stay(one, {from: date('2024-03-02')})]}
    expect(laySheets(book(daily({pen: B}, [2, 1, 2]), [B]))[0]).toMatchObject({henDays: 6, hens: [{id: '2'}, {id: '1'}]})
  })

  it('take the hens a row names before those of the pen, and count the days they differ', () => {
    const A = penOf('2024-A', [hen('1'), hen('2')]), rows = [...daily({pen: A, hens: 2}, [1, 1]), ...daily({pen: A, hens: 3, days: 2}, [5], FIRST + 3), ...daily({pen: A}, [1], FIRST + 4)]
    expect(laySheets(book(rows, [A]))[0]).toMatchObject({days: 5, eggs: 8, henDays: 2 + 2 + 3 * 2 + 2, hensAtStart: 2, otherHens: 2})
  })

  it('miss no day that lies before the first counted or after the last', () => {
    // no hen is on record until 11 March, and none after the twentieth: ten days between, two of them written, and the eggs outside are unclear
    const A = penOf('2024-A', [hen('1')], {from: date('2024-03-11'), to: date('2024-03-20')})
    const [sheet] = laySheets(book([...daily({pen: A}, [1, 1]), ...daily({pen: A}, [1, null, null, 1], FIRST + 10), ...daily({pen: A}, [1], FIRST + 30)], [A]))
    expect(sheet).toMatchObject({from: FIRST + 10, to: FIRST + 13, days: 2, missing: 2, eggs: 2, unclear: 3})
  })

  it('are none where nothing was counted, or no hen was there', () => {
    expect([logbook('2025-06-01'), weekOld(), smallBook()].map(laySheets)).toEqual([[], [], []])
    const empty = penOf('2024-A', []), gone = penOf('2024-B', [hen('1', {left: {how: 'lost', on: null, why: null}})])
    expect(laySheets(book([...daily({pen: empty}, [1, 2]), ...daily({pen: gone}, [1, 1])], [empty, gone]))).toEqual([])
    expect(laySheets(book(daily({pen: empty, hens: 0}, [0, 0]), [empty]))).toEqual([])
  })

  it('of one hen that laid nothing on one day still count the day', () => {
    expect(laySheets(book(daily({bird: hen('1')}, [0])))).toMatchObject([{eggs: 0, henDays: 1, days: 1, missing: 0, unclear: 0, hensAtStart: 1}])
  })

  it('lose no egg and no day, and count the hens that walking from day to day counts', () => {
    fc.assert(fc.property(lifeBook, drawn => {
      const sheets = laySheets(drawn)
      for (const sheet of sheets) {
        const written = drawn.eggCounts.filter(({pen: of, bird: her, on}) => (sheet.pen ? of === sheet.pen : her === sheet.bird && yearOf(on.first) === sheet.season))
        expect(sheet.eggs + sheet.unclear).toBe(written.reduce((sum, {eggs}) => sum + eggs, 0))
        expect(sheet.days + sheet.missing).toBe(sheet.to - sheet.from + 1)
        expect([sheet.rows[0]?.from, sheet.rows.at(-1)?.to]).toEqual([sheet.from, sheet.to])
        const there = (day: number) => (sheet.pen ? (day >= (sheet.pen.from?.first ?? 0) && day <= (sheet.pen.to?.last ?? 0) ? sheet.pen.females.map(({bird: her}) => her) : []) : [sheet.bird])
          .filter(her => her && (her.hatched === null || her.hatched.first <= day) && (her.left === null || (her.left.on !== null && her.left.on.first > day))).length
        let henDays = 0
        for (const row of sheet.rows) for (let day = row.from; day <= row.to; day++) henDays += row.hens ?? there(day)
        expect(sheet.henDays).toBe(henDays)
        expect(henDays).toBeGreaterThan(0)
      }
      const tell = (all: ReturnType<typeof laySheets>) => JSON.stringify(all.map(({pen: of, bird: her, season, eggs, henDays, days, missing, unclear}) => [of?.id, her?.id, season, eggs, henDays, days, missing, unclear]))
      expect(tell(laySheets({...drawn, eggCounts: [...drawn.eggCounts].reverse()}))).toBe(tell(sheets))
    }), {numRuns: 60})
  })
})
