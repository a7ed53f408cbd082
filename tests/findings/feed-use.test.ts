import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {feedUse} from '../../src/findings/feed-use.ts'
import {laySheets} from '../../src/findings/lay-sheets.ts'
import {weightAtDay, weightCourses} from '../../src/findings/weight-courses.ts'
import type {Bird, EggCount, Feeding, Hatch, Logbook} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {expectClose} from '../expect-close.ts'
import {at, bird, date, F1, hatch, logbook, pen, stay} from '../pages/small-logbook.ts'

const fed = (of: Partial<Feeding>, on: string, kilograms: number, left?: number): Feeding => ({pen: null, hatch: null, on: date(on), feed: kilograms * 1000, ...(left === undefined ? {} : {left: left * 1000}), at, ...of})
const used = (book: Logbook) => feedUse(book, laySheets(book))
const hens = Array.from({length: 5}, (_, place) => bird(`F-${place}`, 'female', {step: F1, hatched: date('2023-04-01')})), cock = bird('M-1', 'male', {hatched: date('2023-04-01')})
const A = pen('2024-A', 2024, {males: [stay(cock)], females: hens.map(one => stay(one)), from: date('2024-02-01'), to: date('2024-06-01')})

describe('feed and what became of it', () => {
  it('is eaten up by the next record, and of the last nothing is known', () => {
    // by hand: 5.4 + 5.4 kg in 14 days by 6 birds: 128.6 g a bird and day
    const [got] = used(logbook('2025-01-01', {pens: [A], feedings: [fed({pen: A}, '2024-03-02', 5.4), fed({pen: A}, '2024-03-09', 5.4), fed({pen: A}, '2024-03-16', 5.7)]}))
    expect(got).toMatchObject({eaten: 10800, after: 5700, birdDays: 84, weighedBack: 0, records: 3})
    expectClose(got?.perBirdDay ?? NaN, 10800 / 84, 1e-9)
  })
  it('takes off what was left, and carries it on', () => {
    // 6 − 1 eaten in the first week, 1 + 5 − 0.4 in the second
    const [got] = used(logbook('2025-01-01', {pens: [A], feedings: [fed({pen: A}, '2024-03-02', 6), fed({pen: A}, '2024-03-09', 5, 1), fed({pen: A}, '2024-03-16', 5, 0.4)]}))
    expectClose(got?.eaten ?? NaN, 5000 + 5600, 1e-9)
    expect(got).toMatchObject({weighedBack: 2, after: 5400})
  })
  it('is set against the eggs of the days that both sheets hold', () => {
    const eggs = (on: string, count: number): EggCount => ({pen: A, bird: null, on: date(on), eggs: count, hens: 5, at, weight: {grams: 55 * count, eggs: count}})
    const eggCounts = ['2024-03-01', '2024-03-02', '2024-03-03', '2024-03-09', '2024-03-16'].map(on => eggs(on, 4))
    const [got] = used(logbook('2025-01-01', {pens: [A], eggCounts, feedings: [fed({pen: A}, '2024-03-02', 7), fed({pen: A}, '2024-03-09', 5.6), fed({pen: A}, '2024-03-16', 5.7)]}))
    // 2 and 3 March at 1 kg a day, 9 March at 0.8 kg: 2.8 kg for 12 eggs of 55 g
    expect(got?.ofEggs).toMatchObject({days: 3, eggs: 12, eggWeight: 55})
    expectClose(got?.ofEggs?.perEgg ?? NaN, 2800 / 12, 1e-9)
    expectClose(got?.ofEggs?.conversion ?? NaN, 2800 / (12 * 55), 1e-9)
  })

  function growers(weights: readonly (readonly [string, number])[], more: (place: number) => Partial<Bird> = () => ({})): {readonly one: Hatch; readonly chicks: readonly Bird[]} {
    const one = hatch('2024-01', {on: date('2024-03-23'), machine: 'I1', hatched: 10})
    const chicks = Array.from({length: 10}, (_, place) => bird(`24-${place}`, 'unknown', {hatch: one, hatched: one.on, step: F1, weighings: weights.map(([on, value]) => ({measure: 'weight', value, on: date(on), at})), ...more(place)}))
    one.chicks = chicks
    return {one, chicks}
  }
  it('is set against the gain of a hatch between its weigh days', () => {
    const {one, chicks} = growers([['2024-04-20', 300], ['2024-05-18', 900]])
    const [got] = used(logbook('2025-01-01', {birds: chicks, hatches: [one], feedings: [fed({hatch: one}, '2024-04-20', 9), fed({hatch: one}, '2024-05-04', 9), fed({hatch: one}, '2024-05-18', 1)]}))
    // ten birds gain 600 g each on 18 kg: 3.0
    expect(got?.ofGain).toMatchObject({eaten: 18000, weighed: 10, unlisted: 0})
    expectClose(got?.ofGain?.gain ?? NaN, 6000, 1e-6)
    expectClose(got?.ofGain?.conversion ?? NaN, 3, 1e-9)
  })
  it('credits those that left with what they had gained by then', () => {
    // two of ten sold half-way: 8 × 600 + 2 × 300
    const {one, chicks} = growers([['2024-04-20', 300], ['2024-05-18', 900]], place => (place < 2 ? {left: {on: date('2024-05-04'), how: 'sold', why: null}, weighings: [{measure: 'weight', value: 300, on: date('2024-04-20'), at}]} : {}))
    const [got] = used(logbook('2025-01-01', {birds: chicks, hatches: [one], feedings: [fed({hatch: one}, '2024-04-20', 9), fed({hatch: one}, '2024-05-18', 1)]}))
    expectClose(got?.ofGain?.gain ?? NaN, 5400, 1e-6)
  })
  it('says nothing of one record, of no gain, or of a hatch never weighed', () => {
    const {one, chicks} = growers([['2024-04-20', 300], ['2024-05-18', 300]])
    const of = (feedings: Feeding[]) => used(logbook('2025-01-01', {birds: chicks, hatches: [one], feedings}))
    expect(of([fed({hatch: one}, '2024-04-20', 9)])).toEqual([])
    expect(of([fed({hatch: one}, '2024-04-20', 9), fed({hatch: one}, '2024-05-18', 9)])[0]?.ofGain).toBeNull()
    const bare = hatch('2', {on: date('2024-03-23')})
    expect(used(logbook('2025-01-01', {hatches: [bare], feedings: [fed({hatch: bare}, '2024-04-20', 9), fed({hatch: bare}, '2024-05-18', 9)]}))[0]).toMatchObject({birdDays: 0, perBirdDay: null, ofGain: null})
  })
  it('eats all that was given and not left, in any order of the rows', () => {
    fc.assert(fc.property(fc.array(fc.record({day: fc.nat(40), kilograms: fc.nat(9)}), {minLength: 2, maxLength: 9}), rows => {
      const feedings = rows.map(({day, kilograms}) => fed({pen: A}, isoDay(date('2024-03-01').first + day), kilograms))
      const [got] = used(logbook('2025-01-01', {pens: [A], feedings})), [back] = used(logbook('2025-01-01', {pens: [A], feedings: [...feedings].reverse()}))
      expect(back?.eaten).toBe(got?.eaten)
      if (got) expectClose(got.eaten + got.after, rows.reduce((sum, {kilograms}) => sum + kilograms * 1000, 0), 1e-6)
    }))
  })
})

describe('the mean weight of a hatch from day to day', () => {
  it('runs straight from weigh day to weigh day, and leaves out a day of one sex alone', () => {
    const one = hatch('2024-01', {on: date('2024-03-23')}), weigh = (on: string, value: number) => ({measure: 'weight', value, on: date(on), at})
    const birds = [bird('1', 'male', {hatch: one, hatched: one.on, weighings: [weigh('2024-04-20', 400), weigh('2024-05-20', 1000), weigh('2024-08-10', 2400)]}), bird('2', 'female', {hatch: one, hatched: one.on, weighings: [weigh('2024-04-20', 300), weigh('2024-08-10', 1800)]})]
    const course = weightCourses(logbook('2025-01-01', {birds, hatches: [one]})).get(one) ?? []
    expect(course.map(({n, mean}) => [n, mean])).toEqual([[2, 350], [2, 2100]])
    expectClose(weightAtDay(course, date('2024-06-15').first), (350 + 2100) / 2, 1e-9)
    expect(weightAtDay(course, 0)).toBe(350)
    expect(weightAtDay([], 0)).toBe(0)
  })
})
