import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import {laySheets} from '../../src/findings/lay-sheets.ts'
import {layOfBook} from '../../src/findings/lay.ts'
import type {Bird, CareEntry, EggCount, Logbook, Pen} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {expectClose} from '../expect-close.ts'
import {at, bird, date, F1, F2, logbook, pen, stay} from '../pages/small-logbook.ts'

const FIRST = date('2024-03-01').first
const hens = (count: number, more: Partial<Bird> = {}) => Array.from({length: count}, (_, place) => bird(`F-${place}-${more.step?.label ?? ''}`, 'female', {step: F1, hatched: date('2023-04-01'), ...more}))
const penOf = (birds: readonly Bird[], more: Partial<Pen> = {}) => pen('2024-A', 2024, {females: birds.map(one => stay(one)), from: date('2024-02-01'), to: date('2024-06-01'), ...more})
const counts = (of: Partial<EggCount>, eggs: readonly (number | null)[], from = FIRST): EggCount[] => eggs.flatMap((count, place) => (count === null ? [] : [{pen: null, bird: null, on: date(isoDay(from + place)), eggs: count, hens: null, at, ...of}]))
const layOf = (book: Logbook) => layOfBook(book, careTouching(book))
const book = (eggCounts: EggCount[], more: Partial<Logbook> = {}) => logbook('2025-06-01', {eggCounts, ...more})

describe('how hens lay', () => {
  // one day of the example of the Indian Council of Agricultural Research's formulas (thebigbookproject.org, “Hen-day vs. hen-housed egg production”), in hundreds: 100 hens housed, 1 died, 91.08 eggs hen-housed; here 8 hens of 10 left, 6 eggs
  it('works hen-day from the hens alive each day and hen-housed from those at the start', () => {
    const all = hens(10), died = all.map((hen, place) => (place < 2 ? {...hen, left: {on: date('2024-03-03'), how: 'died', why: null}} as Bird : hen)), A = penOf(died)
    // two days of ten hens, two of eight: 36 hen-days, 27 eggs
    const [sheet] = layOf(book(counts({pen: A}, [8, 7, 6, 6]), {pens: [A], birds: died})).sheets
    expect(sheet).toMatchObject({eggs: 27, henDays: 36, days: 4, missing: 0, henHoused: {eggs: 2.7, hens: 10}})
    expectClose(sheet?.henDay.ratio ?? NaN, 27 / 36, 1e-12)
    expectClose(sheet?.henHoused?.rate ?? NaN, 27 / 40, 1e-12)
  })

  it('takes the hens that the sheet names before those of the pen’s record, and counts the days they differ', () => {
    const A = penOf(hens(5))
    expect(laySheets(book(counts({pen: A, hens: 6}, [3, 3, 3]), {pens: [A]}))[0]).toMatchObject({henDays: 18, hensAtStart: 6, otherHens: 3})
    expect(laySheets(book(counts({pen: A, hens: 5}, [3, 3, 3]), {pens: [A]}))[0]).toMatchObject({henDays: 15, otherHens: 0})
  })

  it('never counts a day without a row as a day without eggs', () => {
    const A = penOf(hens(5)), [sheet] = layOf(book(counts({pen: A}, [4, 4, null, null, 4, 0, 4]), {pens: [A]})).sheets
    expect(sheet).toMatchObject({days: 5, missing: 2, eggs: 16, henDays: 25})
  })

  it('follows a hen from pen to pen', () => {
    const [mover, ...stayed] = hens(3)
    if (!mover) throw new Error('no hen')
    const A = penOf(stayed, {females: [...stayed.map(one => stay(one)), stay(mover, {to: date('2024-03-02')})]}), B = pen('2024-B', 2024, {females: [stay(mover, {from: date('2024-03-03')})], from: date('2024-02-01'), to: date('2024-06-01')})
    const sheets = laySheets(book([...counts({pen: A}, [2, 2, 2, 2]), ...counts({pen: B}, [null, null, 1, 1])], {pens: [A, B]}))
    expect(sheets.map(({pen: of, henDays, hensAtStart}) => [of?.id, henDays, hensAtStart])).toEqual([['2024-A', 3 + 3 + 2 + 2, 3], ['2024-B', 2, 1]])
  })

  it('says nothing of a pen without hens, and counts its eggs as unclear', () => {
    const A = penOf([])
    expect(layOf(book(counts({pen: A}, [1, 2]), {pens: [A]})).sheets).toEqual([])
    expect(layOf(book(counts({pen: A, hens: 0}, [0, 0]), {pens: [A]})).sheets).toEqual([])
    expect(layOf(book([])).sheets).toEqual([])
    const later = penOf(hens(2), {from: date('2024-03-03')})
    expect(laySheets(book(counts({pen: later}, [1, 2, 1, 2]), {pens: [later]}))[0]).toMatchObject({unclear: 3, eggs: 3, henDays: 4, missing: 0})
  })

  it('of a hen that laid nothing is nought', () => expect(layOf(book(counts({bird: hens(1)[0]!}, [0, 0, 0]))).sheets[0]).toMatchObject({eggs: 0, henDay: {ratio: 0, interval: null}, henHoused: {eggs: 0}}))

  it('has limits between hens of a group, and between weeks of a single pen from four on', () => {
    const four = hens(4), found = layOf(book(four.flatMap((hen, place) => counts({bird: hen}, Array.from({length: 10}, (_, day) => (day % 4 <= place ? 1 : 0))))))
    expect(found.groups.map(({by, name, hens: count, speaksOf}) => [by, name, count, speaksOf])).toEqual([['step', 'F1', 4, 'hens'], ['season', '2024', 4, 'hens']])
    expect(found.groups[0]?.henDay.interval?.high).toBeLessThanOrEqual(1)
    expect(found.sheets.every(({henDay}) => henDay.interval === null)).toBe(true)
    const A = penOf(hens(5)), month = layOf(book(counts({pen: A}, Array.from({length: 30}, (_, day) => 2 + (day % 3))), {pens: [A]})).sheets[0]
    expect(month).toMatchObject({speaksOf: 'these-hens', henDay: {parts: 4}})
    expect(month?.henDay.interval).not.toBeNull()
  })

  it('weighs eggs by the mean of all that were on the scales', () => {
    const A = penOf(hens(5)), [sheet] = layOf(book([...counts({pen: A, weight: {grams: 220, eggs: 4}}, [4]), ...counts({pen: A, weight: {grams: 58, eggs: 1}}, [3], FIRST + 1), ...counts({pen: A}, [5], FIRST + 2)], {pens: [A]})).sheets
    expect(sheet?.eggWeight).toMatchObject({ratio: 278 / 5, eggs: 5})
  })

  it('takes no egg twice where a hen of a counted pen has a sheet of her own', () => {
    const [own, ...others] = hens(3)
    if (!own) throw new Error('no hen')
    const A = penOf([own, ...others]), found = layOf(book([...counts({pen: A}, [2, 3, 2]), ...counts({bird: own}, [1, 1, 1])], {pens: [A]}))
    expect(found.twice).toBe(1)
    expect(found.groups.find(({by}) => by === 'season')).toMatchObject({eggs: 7, hens: 3})
    expect(found.sheets).toHaveLength(2)
  })

  it('leaves a pen of hens of two steps out of both', () => {
    const A = penOf([...hens(2), ...hens(2, {step: F2})])
    const found = layOf(book(counts({pen: A}, [2, 3, 2]), {pens: [A]}))
    expect([found.mixed, found.groups.map(({by}) => by)]).toEqual([1, ['season']])
  })

  it('compares steps, and warns of another time of year, age and feed', () => {
    const early = hens(3), late = hens(3, {step: F2, hatched: date('2024-04-01')}), A = penOf(early)
    const care: CareEntry[] = [{at, body: '', id: 'f', care: 'feed', on: date('2024-02-20'), to: date('2024-04-01'), pens: [], birds: early, hatches: [], with: 'pellets', eggsWithheldUntil: null, meatWithheldUntil: null}]
    const found = layOf(book([...early.flatMap(hen => counts({bird: hen}, [1, 0, 1, 1, 0, 1])), ...late.flatMap(hen => counts({bird: hen}, [1, 0, 0, 1, 0, 0], date('2024-11-01').first))], {pens: [A], care}))
    expect(found.comparisons.map(({one, other}) => `${one.name} / ${other.name}`)).toEqual(['F2 / F1'])
    expect(found.comparisons[0]).toMatchObject({speaksOf: 'hens', alike: {verdict: 'not-alike', unlike: [{what: 'months', one: ['11'], other: ['03']}, {what: 'feed', one: [], other: ['pellets']}]}})
  })

  it('loses no egg of any sheet', () => {
    const drawn = fc.array(fc.record({day: fc.nat(60), eggs: fc.nat(9), hens: fc.option(fc.nat(6), {nil: null})}), {maxLength: 20})
    fc.assert(fc.property(drawn, fc.nat(5), (rows, count) => {
      const A = penOf(hens(count)), eggCounts = rows.map(({day, eggs, hens: named}): EggCount => ({pen: A, bird: null, on: date(isoDay(FIRST + day)), eggs, hens: named, at}))
      const [sheet] = laySheets(book(eggCounts, {pens: [A]})), lay = layOf(book(eggCounts, {pens: [A]})).sheets[0]
      if (!sheet || !lay) return
      expect(sheet.eggs + sheet.unclear).toBe(rows.reduce((sum, {eggs}) => sum + eggs, 0))
      expect(sheet.days + sheet.missing).toBeGreaterThanOrEqual(sheet.to - sheet.from + 1 - rows.length)
      expect(Number.isFinite(lay.henDay.ratio)).toBe(true)
      if (lay.henDay.interval) expect(lay.henDay.interval.low <= lay.henDay.ratio + 1e-12 && lay.henDay.ratio <= lay.henDay.interval.high + 1e-12).toBe(true)
    }))
  })
})
