import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {classValues, familiesWeighed, strayingByFamily} from '../../src/findings/spread-classes.ts'
import {spreadOfMeasures, type SpreadRow} from '../../src/findings/spread.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {relativeDeviations} from '../../src/statistics/relative-deviations.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F2, hatch, parents, weight} from '../pages/small-logbook.ts'
import {turned} from './drawn-book.ts'
import {bookOfFamilies, evenBook} from './evenness-book.ts'

const rowsOf = (book: Logbook): readonly SpreadRow[] => spreadOfMeasures(book, ladderOf(book)).rows
const ascending = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b)

/** A row made by hand: grams with the cocks that may be the father, all hatched and reared together. */
const rowByHand = (birds: readonly {readonly grams: number; readonly by: readonly string[]; readonly counted?: boolean}[]): SpreadRow => {
  const from = hatch('h', {on: date('2024-03-23'), step: F2})
  return {
    step: 'F2', trait: weight, sex: 'male', spread: {kind: 'cannot-say', have: 0, need: 5, why: 'too-few', leftOut: []},
    values: birds.map(({grams, by, counted = true}, place) => ({
      bird: bird(`${place}`, 'male', {hatch: from, parentage: parents(by.map(id => [bird(id, 'male'), 1 / by.length] as const), null)}), hatch: from, sex: 'male', value: grams, counted,
    })),
  }
}

// by hand: median 100, away 0.1 0.05 – 0.05 0.1; the two greatest of five normal values are 1.16296 and 0.49502 on average (Harter 1961, from memory), their mean 0.82899
const FIVE = [90, 95, 100, 105, 110], ONE_TENTH = 0.1 / 0.82899, HALF = 0.05 / 0.82899

describe('classValues(row)', () => {
  it('keeps hatches reared apart, and cocks and hens, in classes of their own', () => {
    const rows = rowsOf(bookOfFamilies([{step: F2, grams: FIVE}, {step: F2, grams: [1, 2, 3, 4]}, {step: F2, grams: [1, 2, 3, 4, 5]}, {step: F2, grams: [180, 190, 200, 210, 220], sex: 'female'}]))
    const of = (sex: SpreadRow['sex']) => classValues(rows.find(row => row.sex === sex) ?? expect.fail(`no ${sex}`))
    expect([of('male'), of('female'), of('all')]).toEqual([[FIVE, [1, 2, 3, 4, 5]], [[180, 190, 200, 210, 220]], [[180, 190, 200, 210, 220], FIVE, [1, 2, 3, 4, 5]]])
  })

  it('holds as many classes of as many birds as the spread of the row is worked from', () => {
    fc.assert(fc.property(evenBook, book => {
      for (const row of rowsOf(book)) {
        const own = classValues(row)
        expect(ascending(own.map(({length}) => length))).toEqual(row.spread.kind === 'spread' ? ascending(row.spread.classes.map(({n}) => n)) : [])
        for (const values of own) expect(values.length).toBeGreaterThanOrEqual(5)
      }
    }), {numRuns: 30})
  })

  it('has none of one bird, of four, or of nobody', () => {
    for (const grams of [[2000], [1, 2, 3, 4]]) expect(rowsOf(bookOfFamilies([{step: F2, grams}])).map(classValues)).toEqual([[], []])
    expect(classValues(rowByHand([]))).toEqual([])
  })
})

describe('strayingByFamily(row), familiesWeighed(row)', () => {
  it('deals the birds of one class out to their cocks, the middle bird left out', () => {
    const row = rowByHand(FIVE.map((grams, place) => ({grams, by: [place < 2 ? 'A' : 'B']})))
    const [first = [], second = [], ...more] = strayingByFamily(row)
    expect([first.length, second.length, more.length, familiesWeighed(row)]).toEqual([2, 2, 0, 2])
    ;[ONE_TENTH, HALF].forEach((far, place) => expectClose(first[place] ?? NaN, far, 1e-5))
    ;[HALF, ONE_TENTH].forEach((far, place) => expectClose(second[place] ?? NaN, far, 1e-5))
  })

  it('makes one family of two cocks that may both have had one chick, and counts a family of the middle bird alone', () => {
    expect(strayingByFamily(rowByHand(FIVE.map((grams, place) => ({grams, by: place === 0 ? ['A', 'B'] : [place < 3 ? 'A' : 'B']})))).map(({length}) => length)).toEqual([4])
    const alone = rowByHand(FIVE.map((grams, place) => ({grams, by: [place === 2 ? 'B' : 'A']})))
    expect([strayingByFamily(alone).map(({length}) => length), familiesWeighed(alone)]).toEqual([[4], 2])
  })

  it('puts birds weighed without a band with their hatch', () => {
    const row = rowByHand(FIVE.map(grams => ({grams, by: ['A']}))), loose = {...row, values: row.values.map((value, place) => (place < 2 ? {...value, bird: null} : value))}
    // the hatch of the row has no cock in the book: a family of its own beside that of A
    expect([strayingByFamily(loose).map(({length}) => length).sort(), familiesWeighed(loose)]).toEqual([[2, 2], 2])
  })

  it('gives nought to birds all of one weight, and nothing for nobody or for birds in no class', () => {
    expect(strayingByFamily(rowByHand(FIVE.map(() => ({grams: 7, by: ['A']}))))).toEqual([[0, 0, 0, 0]])
    for (const row of [rowByHand([]), rowByHand([{grams: 2000, by: ['A'], counted: false}])]) expect([strayingByFamily(row), familiesWeighed(row)]).toEqual([[], 0])
  })

  it('agrees with cocks joined over and over till nothing joins any more, and loses no bird', () => {
    fc.assert(fc.property(evenBook, book => {
      for (const row of rowsOf(book)) {
        const families = strayingByFamily(row), all = ascending(families.flat())
        ascending(classValues(row).flatMap(relativeDeviations)).forEach((far, place) => expectClose(all[place] ?? NaN, far, 0))
        expect(all.length).toBe(classValues(row).reduce((sum, own) => sum + own.length - (own.length % 2), 0))
        let sets = row.values.flatMap(({bird: one, hatch: from, counted}) => (counted && one ? [one.parentage.sires.length > 0 ? one.parentage.sires.map(({bird: {id}}) => id) : [`of ${from?.id}`]] : []))
        for (let before = Infinity; sets.length < before;) {
          before = sets.length
          sets = sets.reduce<string[][]>((kept, own) => [...kept.filter(other => !other.some(id => own.includes(id))), [...own, ...kept.filter(other => other.some(id => own.includes(id))).flat()]], [])
        }
        expect(familiesWeighed(row)).toBe(sets.length)
        expect(families.length).toBeLessThanOrEqual(sets.length)
      }
    }), {numRuns: 30})
  })

  it('does not mind the order of the records', () => {
    fc.assert(fc.property(evenBook, book => {
      const other = rowsOf(turned(book))
      rowsOf(book).forEach((row, place) => {
        const there = other[place] ?? expect.fail('no such row')
        expect(familiesWeighed(there)).toBe(familiesWeighed(row))
        // of a class with its middle weight twice, either bird may be the one left out
        const sum = (of: SpreadRow) => strayingByFamily(of).flat().reduce((total, far) => total + far, 0)
        expectClose(sum(there), sum(row), 1e-9)
      })
    }), {numRuns: 20})
  })
})
