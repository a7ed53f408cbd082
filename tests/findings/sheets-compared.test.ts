import {describe, expect, it} from 'vitest'
import {sheetsCompared} from '../../src/findings/sheets-compared.ts'
import {sheetsOfPoints} from '../../src/findings/sheets-of-points.ts'
import type {Keeper, KeepersSheet, Logbook, ShowScore} from '../../src/logbook/book.ts'
import {plainDraft} from '../paper-parts.ts'
import {keeper, show} from '../pages/shown-logbook.ts'
import {at, bird, date, logbook} from '../pages/small-logbook.ts'

const [one, two] = [bird('1', 'female'), bird('2', 'male')], [inga, rasmus] = [keeper('inga', 'Inga'), keeper('rasmus', 'Rasmus')]
const draft = plainDraft(1, '2025-01-01', {points: [{name: 'Type', points: 60}, {name: 'Colour', points: 40}]})
const points = (of: typeof one, by: Keeper | string | null, type: number, colour: number | null): ShowScore =>
  ({bird: of, by, draft: null, at, headings: [{name: 'Type', points: type, of: 60}, ...(colour === null ? [] : [{name: 'Colour', points: colour, of: null}])]})
const home = (of: typeof one, by: Keeper, on: string, type: number, colour: number | null, struck: string | null = null): KeepersSheet => ({...points(of, by, type, colour), on: date(on), struck})
const compared = (scores: ShowScore[], sheets: KeepersSheet[] = [], more: Partial<Logbook> = {}) => {
  const book = logbook('2026-01-01', {drafts: [draft], shows: [show('x', 'x', '2025-09-27', {scores})], sheets, ...more})
  return sheetsCompared(sheetsOfPoints(book))
}

describe('sheetsCompared(sheets)', () => {
  it('holds a judge against the last sheet of each keeper by the day of the show, worked by hand', () => {
    // type 50 against 54 and 52, colour 30 against 28 and 30: less by 3, more by 1
    const [found, ...more] = compared([points(one, 'judge 1', 50, 30), points(one, rasmus, 52, 30)], [home(one, inga, '2025-08-01', 40, 10), home(one, inga, '2025-09-20', 54, 28), home(one, inga, '2025-10-02', 60, 40)])
    expect(found).toMatchObject({between: 'judges', names: [['judge 1'], ['Inga', 'Rasmus']], birds: 1, leftOut: {noOther: 0, notNear: 0, otherScale: 0}, whole: {n: 1, mean: -2}})
    expect(found?.headings.map(({heading, of, agreed: {n, mean, interval}}) => [heading, of, n, mean, interval])).toEqual([['Type', 60, 1, -3, null], ['Colour', 40, 1, 1, null]])
    expect(found?.largest.map(({heading, difference}) => [heading, difference])).toEqual([['Type', -3], ['Colour', 1]])
    // the two keepers on their nearest sheets, Rasmus at the show and Inga five days after: 60 − 52, 40 − 30
    expect(more.map(({names, headings}) => [names, headings.map(({agreed: {mean}}) => mean)])).toEqual([[[['Inga'], ['Rasmus']], [8, 10]]])
  })

  it('gives an interval from two birds on, and counts what has nothing to stand against', () => {
    const [found] = compared([points(one, 'judge 1', 50, 30), points(two, 'judge 1', 50, 30), points(bird('3', 'male'), 'judge 1', 50, 30), points(bird('4', 'male'), null, 1, 1)],
      [home(one, inga, '2025-09-20', 49, 30), home(two, inga, '2025-09-20', 47, 30), home(two, inga, '2025-09-25', 47, 39, 'misread')])
    expect(found?.headings[0]?.agreed).toMatchObject({n: 2, mean: 2, limits: null, sd: Math.SQRT2})
    expect(found?.leftOut).toEqual({noOther: 1, notNear: 0, otherScale: 0, unfinished: 0})
  })

  it('counts a bird that two judges scored once, by the mean, and sheets that lack a heading', () => {
    const [found] = compared([points(one, 'judge 1', 50, 30), points(one, 'judge 2', 54, null), points(two, 'judge 1', 50, 31)], [home(one, inga, '2025-09-20', 49, 30), home(two, inga, '2025-09-20', 47, 30)])
    // type: bird 1 by 1 and by 5, 3 in the mean, bird 2 by 3; colour: bird 1 alike, bird 2 by 1
    expect(found?.headings.map(({agreed: {n, mean}, differences}) => [n, mean, differences.length])).toEqual([[2, 3, 3], [2, 0.5, 2]])
    expect(found?.whole).toMatchObject({n: 2, mean: 2.5})
    expect(found?.leftOut.unfinished).toBe(1)
  })

  it('holds no sheet of another draft, of another time, or out of other points against it', () => {
    const later = plainDraft(2, '2025-09-25', {points: [{name: 'Type', points: 50}, {name: 'Colour', points: 50}]})
    expect(compared([points(one, 'judge 1', 50, 30)], [home(one, inga, '2025-09-20', 49, 30)], {drafts: [draft, later]})[0]).toMatchObject({birds: 0, headings: [], leftOut: {noOther: 1}})
    expect(compared([points(one, 'judge 1', 50, 30)], [home(one, inga, '2025-07-01', 49, 30)])[0]).toMatchObject({birds: 0, leftOut: {noOther: 0, notNear: 1}})
    const outOf = {...home(one, inga, '2025-09-20', 24, null), headings: [{name: 'Type', points: 24, of: 30}]}
    expect(compared([points(one, 'judge 1', 50, 30)], [outOf])[0]).toMatchObject({birds: 0, leftOut: {otherScale: 2}})
  })

  it('has nothing to say of one who scored alone', () => {
    expect(compared([points(one, rasmus, 50, 30)])).toEqual([])
    expect(compared([])).toEqual([])
  })
})
