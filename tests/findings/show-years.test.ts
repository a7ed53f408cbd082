import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {showResults} from '../../src/findings/show-results.ts'
import {LEAST_PLACED, relativePlace, showYears} from '../../src/findings/show-years.ts'
import type {ShowEntry} from '../../src/logbook/book.ts'
import {entry, show} from '../pages/shown-logbook.ts'
import {bird, logbook} from '../pages/small-logbook.ts'
import {expectClose} from '../expect-close.ts'

const [one, two] = [bird('1', 'female'), bird('2', 'male')]
const pullet = (place: number | null, of: number | null, more: Partial<ShowEntry> = {}): ShowEntry => entry(one, {class: 'pullet', place, of, ...more})
const years = (...shows: Parameters<typeof show>[]) => showYears(showResults(logbook('2026-01-01', {shows: shows.map(each => show(...each))})))

describe('relativePlace(entry)', () => {
  it('is 1 for the first, 0 for the last, and half in the middle', () => {
    expect([1, 2, 3, 4, 5].map(place => relativePlace({place, of: 5, disqualified: false}))).toEqual([1, 0.75, 0.5, 0.25, 0])
  })
  it('is not told of a bird alone, unplaced, disqualified, or of a class of unknown size', () => {
    for (const [place, of, disqualified] of [[1, 1, false], [null, 5, false], [2, 5, true], [2, null, false]] as const) expect(relativePlace({place, of, disqualified})).toBeNull()
  })
  it('averages a half over all places of a class, however large', () => {
    fc.assert(fc.property(fc.integer({min: 2, max: 60}), of => {
      const all = Array.from({length: of}, (_, index) => relativePlace({place: index + 1, of, disqualified: false}) ?? NaN)
      expectClose(all.reduce((sum, place) => sum + place, 0) / of, 0.5, 1e-12)
    }), {numRuns: 30})
  })
})

describe('showYears(results)', () => {
  const found = years(
    ['a', 'A', '2023-09-01', {entries: [pullet(1, 5), pullet(2, 5, {award: 'Best pullet', grade: 'good', points: 94}), entry(two, {class: 'cock', disqualified: true})]}],
    ['b', 'B', '2023-11-01', {entries: [pullet(5, 5), pullet(1, 3, {grade: 'very good', points: 95.5}), pullet(4, 5, {grade: 'good'})]}],
    ['off', 'C', '2024-03-01', {cancelled: 'forbidden'}], ['c', 'D', '2025-03-01', {entries: [entry(two, {class: 'cock', place: 1})]}],
  )

  it('has every year with a show, those in which all were cancelled among them', () => {
    expect(found.years.map(({year, shows, cancelled, entries, birds, firsts, awards, disqualified}) => [year, shows.length, cancelled.length, entries, birds, firsts, awards, disqualified]))
      .toEqual([[2023, 2, 0, 6, 2, 2, 1, 1], [2024, 0, 1, 0, 0, 0, 0, 0], [2025, 1, 0, 1, 1, 1, 0, 0]])
  })
  it('takes the mean of relative places where there are enough, and counts what is left out', () => {
    // 1, ¾, 0, 1, ¼ of five pullets
    expect(found.years[0]?.place).toEqual({placed: 5, mean: 0.6, leftOut: 1})
    expect(found.years[2]?.place).toEqual({placed: 0, mean: null, leftOut: 1})
    expect(LEAST_PLACED).toBe(5)
  })
  it('counts the grades, and gives the least and the most of the points', () => {
    expect(found.years.map(({grades, points}) => [grades, points])).toEqual([[[{grade: 'good', entries: 2}, {grade: 'very good', entries: 1}], {low: 94, high: 95.5, entries: 2}], [[], null], [[], null]])
  })
  it('does the same by class, and by class and year', () => {
    expect(found.classes.map(each => [each.class, each.entries, each.place.mean, each.years.map(({year, entries}) => [year, entries])])).toEqual([['pullet', 5, 0.6, [[2023, 5]]], ['cock', 2, null, [[2023, 1], [2025, 1]]]])
    expect(found.all).toMatchObject({entries: 7, birds: 2, firsts: 3, disqualified: 1})
  })
  it('has nothing where nothing was shown', () => expect(years()).toMatchObject({years: [], classes: [], all: {entries: 0, place: {placed: 0, mean: null}}}))
})
