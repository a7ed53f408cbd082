import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import {layParts} from '../../src/findings/lay-parts.ts'
import {laySheets} from '../../src/findings/lay-sheets.ts'
import {layOfBook} from '../../src/findings/lay.ts'
import type {Bird, EggCount, Logbook, Pen} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {chanceOf} from '../../src/statistics/chance.ts'
import {ratioOfSums} from '../../src/statistics/ratio-of-sums.ts'
import {at, bird, date, F1, logbook, pen, stay} from '../pages/small-logbook.ts'

const hensOf = (count: number, name = 'F') => Array.from({length: count}, (_, place) => bird(`${name}-${place}`, 'female', {step: F1, hatched: date('2021-04-01')}))
const rows = (of: Partial<EggCount>, year: number, eggs: readonly number[]): EggCount[] => eggs.map((count, place) => ({pen: null, bird: null, on: date(isoDay(date(`${year}-03-01`).first + place)), eggs: count, hens: null, at, ...of}))
const penOf = (name: string, season: number, hens: readonly Bird[]): Pen => pen(`${season}-${name}`, season, {females: hens.map(hen => stay(hen)), from: date(`${season}-02-01`), to: date(`${season}-08-01`)})
const layOf = (book: Logbook) => layOfBook(book, careTouching(book))
const book = (eggCounts: EggCount[], pens: Pen[] = []) => logbook('2025-06-01', {eggCounts, pens})
const YEARS = [2022, 2023, 2024]

describe('parts of a group of egg sheets', () => {
  it('is one hen, however many years she was counted', () => {
    const hens = hensOf(4), own = book(hens.flatMap((hen, place) => YEARS.flatMap(year => rows({bird: hen}, year, [1, 0, 1, place % 2, 0]))))
    expect(layParts(laySheets(own)).map(({length}) => length)).toEqual([3, 3, 3, 3])
    expect(layOf(own).groups.find(({by}) => by === 'step')).toMatchObject({speaksOf: 'hens', henDay: {parts: 4}})
  })

  it('leaves one hen of several years to speak of herself alone', () => {
    const [hen] = hensOf(1), own = book(YEARS.slice(0, 2).flatMap(year => rows({bird: hen ?? null}, year, Array.from({length: 21}, (_, day) => (day % 3 === year % 2 ? 0 : 1)))))
    expect(layOf(own).groups.find(({by}) => by === 'step')).toMatchObject({speaksOf: 'these-hens', henDay: {parts: 6}})
  })

  it('holds pens together of which most hens are the same, and no others', () => {
    const hens = hensOf(5), more = hensOf(3, 'G'), pens = [penOf('A', 2022, hens), penOf('A', 2023, [...hens.slice(0, 4), ...more]), penOf('B', 2024, [...hens.slice(0, 2), ...more])]
    const sheets = laySheets(book(pens.flatMap(one => rows({pen: one}, one.season, [3, 2, 3])), pens))
    // four of five; then five of five, by way of the pen between
    expect(layParts(sheets).map(own => own.map(({season}) => season))).toEqual([[2022, 2023, 2024]])
    expect(layParts(sheets.filter(({season}) => season !== 2023)).map(own => own.map(({season}) => season))).toEqual([[2022], [2024]])
  })

  it('gives pens and single hens limits of their own, and none together', () => {
    const pens = ['A', 'B'].map(name => penOf(name, 2024, hensOf(5, name))), singles = hensOf(6, 'S')
    const own = book([...pens.flatMap((one, place) => rows({pen: one}, 2024, [3 + place, 2, 4])), ...singles.flatMap((hen, place) => rows({bird: hen}, 2024, [1, place % 2, 1]))], pens)
    const group = layOf(own).groups.find(({by}) => by === 'season')
    expect(group).toMatchObject({of: 'both', speaksOf: 'mixed', henDay: {interval: null}})
    expect(group?.kinds.map(({of, henDay: {parts}, speaksOf}) => [of, parts, speaksOf])).toEqual([['pens', 2, 'pens'], ['hens', 6, 'hens']])
    expect(group?.kinds.map(({henDay}) => henDay.interval?.low)).toEqual([ratioOfSums([{of: 9, per: 15}, {of: 10, per: 15}]), ratioOfSums([2, 3, 2, 3, 2, 3].map(of => ({of, per: 3})))].map(found => found?.interval?.low))
  })

  it('sets pens beside pens and hens beside hens where a group has both', () => {
    const pens = ['A', 'B'].flatMap(name => [2023, 2024].map(year => penOf(name, year, hensOf(5, `${name}${year}`)))), singles = hensOf(3, 'S')
    const own = book([...pens.flatMap((one, place) => rows({pen: one}, one.season, [3, place, 4])), ...singles.flatMap((hen, place) => rows({bird: hen}, 2024, [1, place % 2, 1]))], pens)
    expect(layOf(own).comparisons.map(({one, other, kind, speaksOf}) => [one.name, other.name, kind, speaksOf])).toEqual([['2024', '2023', 'pens', 'pens']])
  })

  it('holds the rate of hens nine times in ten or more where each was counted for three years', () => {
    const chance = chanceOf(7), share = () => chance.next() / 2 ** 32
    let held = 0
    const runs = 250
    for (let run = 0; run < runs; run++) {
      const hens = hensOf(4), own = book(hens.flatMap(hen => {
        // hens differ: 0.4 to 0.8 eggs a day, 0.6 on average
        const rate = 0.4 + 0.4 * share()
        return YEARS.flatMap(year => rows({bird: hen}, year, Array.from({length: 20}, () => (share() < rate ? 1 : 0))))
      }))
      const interval = layOf(own).groups.find(({by}) => by === 'step')?.henDay.interval
      if (interval && interval.low <= 0.6 && interval.high >= 0.6) held += 1
    }
    expect(held / runs).toBeGreaterThanOrEqual(0.9)
  })
})
