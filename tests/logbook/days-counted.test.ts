import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {EggCount} from '../../src/logbook/book.ts'
import {daysCounted} from '../../src/logbook/days-counted.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, date, pen} from '../pages/small-logbook.ts'

const here = pen('2024-A', 2024)
const row = (on: string, eggs: number, more: Partial<EggCount> = {}): EggCount => ({pen: here, bird: null, on: date(on), eggs, hens: 5, at, ...more})
const told = (...counts: EggCount[]) => {
  const {rows, missing, unclear} = daysCounted(counts, () => 5)
  return {days: rows.map(({from, to, eggs}) => `${isoDay(from)} to ${isoDay(to)}: ${eggs}`), missing, unclear}
}

describe('the days that an egg sheet speaks of', () => {
  it('are its rows’ own days where it is kept from day to day, and what is left out is missing, never nought', () => {
    expect(told(row('2024-03-01', 3), row('2024-03-02', 4), row('2024-03-03', 0), row('2024-03-06', 4))).toEqual({
      days: ['2024-03-01 to 2024-03-01: 3', '2024-03-02 to 2024-03-02: 4', '2024-03-03 to 2024-03-03: 0', '2024-03-06 to 2024-03-06: 4'], missing: 2, unclear: 0,
    })
  })
  it('are the whole gap where its eggs are too many for one day', () => {
    expect(told(row('2024-03-01', 3), row('2024-03-02', 4), row('2024-03-05', 11))).toMatchObject({days: [expect.anything(), expect.anything(), '2024-03-03 to 2024-03-05: 11'], missing: 0})
  })
  it('are weeks where it is kept on Saturdays', () => {
    expect(told(row('2024-03-02', 20), row('2024-03-09', 22), row('2024-03-16', 18), row('2024-03-30', 21))).toEqual({
      days: ['2024-02-25 to 2024-03-02: 20', '2024-03-03 to 2024-03-09: 22', '2024-03-10 to 2024-03-16: 18', '2024-03-24 to 2024-03-30: 21'], missing: 7, unclear: 0,
    })
  })
  it('are what is written', () => {
    expect(told(row('2024-03-04', 9, {days: 4}), row('2024-03-05', 3)).days).toEqual(['2024-03-01 to 2024-03-04: 9', '2024-03-05 to 2024-03-05: 3'])
    // the step is that from the row directly before, whatever it is: the 1st speaks of itself alone
    expect(told(row('2024-03-01', 3), row('2024-03-03', 8, {days: 2}), row('2024-03-04', 4)).days).toEqual(['2024-03-01 to 2024-03-01: 3', '2024-03-02 to 2024-03-03: 8', '2024-03-04 to 2024-03-04: 4'])
    expect(told(row('2024-03', 80)).days).toEqual(['2024-03-01 to 2024-03-31: 80'])
  })
  it('cannot be told of a single row of more eggs than its hens lay in a day', () => {
    expect(told(row('2024-03-31', 80))).toEqual({days: [], missing: 0, unclear: 80})
    expect(told(row('2024-03-31', 5)).days).toEqual(['2024-03-31 to 2024-03-31: 5'])
  })
  it('are counted once where a day was gathered twice', () => {
    const {rows} = daysCounted([row('2024-03-01', 3, {weight: {grams: 160, eggs: 3}}), row('2024-03-01', 1, {weight: {grams: 50, eggs: 1}}), row('2024-03-02', 2)], () => 5)
    expect(rows[0]).toMatchObject({eggs: 4, weight: {grams: 210, eggs: 4}})
    expect(rows).toHaveLength(2)
  })
  it('never overlap, lose no egg, and do not hang on the order of the rows', () => {
    const any = fc.record({day: fc.nat(40), eggs: fc.nat(30), days: fc.option(fc.integer({min: 1, max: 9}), {nil: undefined})})
    fc.assert(fc.property(fc.array(any, {maxLength: 12}), drawn => {
      const counts = drawn.map(({day, eggs, days}) => row(isoDay(19783 + day), eggs, days === undefined ? {} : {days}))
      const {rows, missing, unclear} = daysCounted(counts, () => 5)
      expect(daysCounted([...counts].reverse(), () => 5)).toEqual({rows, missing, unclear})
      expect(rows.reduce((sum, {eggs}) => sum + eggs, unclear)).toBe(counts.reduce((sum, {eggs}) => sum + eggs, 0))
      rows.forEach(({from, to}, place) => {
        expect(from).toBeLessThanOrEqual(to)
        expect(from).toBeGreaterThan(rows[place - 1]?.to ?? -Infinity)
      })
      const first = rows[0], last = rows.at(-1)
      if (first && last) expect(rows.reduce((sum, {from, to}) => sum + to - from + 1, missing)).toBe(last.to - first.from + 1)
    }))
  })
})
