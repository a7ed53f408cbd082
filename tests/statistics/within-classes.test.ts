import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {leastSquares} from '../../src/statistics/least-squares.ts'
import {withinClasses, type ClassedRow} from '../../src/statistics/within-classes.ts'
import {expectClose} from '../expect-close.ts'
import {LONGLEY, LONGLEY_CERTIFIED} from './longley.ts'

const bird = fc.record({group: fc.constantFrom('a', 'b', 'c', 'd'), x: fc.tuple(fc.integer({min: 0, max: 25}), fc.integer({min: 0, max: 9})), y: fc.integer({min: 900, max: 3000})})

describe('withinClasses(rows)', () => {
  it('of one class is the regression with a level: Longley’s certified values', () => {
    const got = withinClasses(LONGLEY.map(([y, ...x]) => ({group: 'all', x, y: y ?? NaN})))
    if (got.kind !== 'fitted') throw new Error(got.kind)
    LONGLEY_CERTIFIED.slice(1).forEach(([value, error], place) => {
      expectClose(got.coefficients[place]?.value ?? NaN, value, 1e-8 * Math.abs(value))
      expectClose(got.coefficients[place]?.error ?? NaN, error, 1e-8 * error)
    })
    expect(got.freedom).toBe(9)
  })

  it('is the regression with a column for every class', () => {
    fc.assert(fc.property(fc.array(bird, {minLength: 3, maxLength: 25}), rows => {
      const names = [...new Set(rows.map(({group}) => group))]
      const got = withinClasses(rows), full = leastSquares(rows.map(({group, x}) => [...names.map(name => (name === group ? 1 : 0)), ...x]), rows.map(({y}) => y))
      expect(got.kind).toBe(full.kind)
      if (got.kind !== 'fitted' || full.kind !== 'fitted') return
      expect(got.freedom).toBe(full.freedom)
      got.coefficients.forEach(({value, error}, place) => {
        const other = full.coefficients[names.length + place]
        expectClose(value, other?.value ?? NaN, 1e-6 * Math.max(1, Math.abs(value)))
        expectClose(error, other?.error ?? NaN, 1e-6 * Math.max(1, error))
      })
    }))
  })

  it('does not see a better hatch', () => {
    fc.assert(fc.property(fc.array(bird, {minLength: 8, maxLength: 25}), rows => {
      const fed: ClassedRow[] = rows.map(row => (row.group === 'b' ? {...row, y: row.y + 500} : row))
      const got = withinClasses(rows), other = withinClasses(fed)
      if (got.kind !== 'fitted' || other.kind !== 'fitted') return
      got.coefficients.forEach(({value}, place) => expectClose(other.coefficients[place]?.value ?? NaN, value, 1e-7 * Math.max(1, Math.abs(value))))
    }))
  })

  it('names a column that does not vary in any class, and says when there are too few', () => {
    const rows = ['a', 'b', 'c'].flatMap((group, place) => [1, 2, 3].map(y => ({group, x: [0.1 * (place + 1)], y})))
    expect(withinClasses(rows)).toEqual({kind: 'dependent', n: 9, columns: [0]})
    expect(withinClasses([])).toEqual({kind: 'few', n: 0})
    expect(withinClasses([{group: 'a', x: [1], y: 2}, {group: 'b', x: [2], y: 3}]).kind).toBe('few')
  })
  it('gives the value of its example', () => {
    const got = withinClasses([{group: 'a', x: [0], y: 1}, {group: 'a', x: [1], y: 3}, {group: 'b', x: [0], y: 11}, {group: 'b', x: [1], y: 14}])
    if (got.kind !== 'fitted') throw new Error(got.kind)
    expectClose(got.coefficients[0]?.value ?? NaN, 2.5, 1e-12)
  })
  it('refuses what is not finite', () => expect(() => withinClasses([{group: 'a', x: [NaN], y: 1}])).toThrow(RangeError))

  describe('with families named', () => {
    const paired = (spread: number, own: number): ClassedRow[] => [0, 1, 2, 3, 4, 5, 6].flatMap(pair => ['a', 'b', 'c'].map((group, place) => ({
      group, family: `p${pair}`, x: [0.05 * (pair % 4)], y: 2000 + 100 * place + spread * [3, -1, 4, -1, -5, 2, 6][pair]! + own * [2, -7, 1, 8, -2, 8, 1, -8, 2, 8, -4, 5, 9, 0, -4, 5, 2, -3, 5, 3, -6][3 * pair + place]!,
    })))

    it('of pairs that are all in every class is the regression of the pairs’ means, error and freedom too', () => {
      const rows = paired(40, 1), got = withinClasses(rows), means = [0, 1, 2, 3, 4, 5, 6].map(pair => rows.filter(({family}) => family === `p${pair}`).reduce((sum, {y}) => sum + y, 0) / 3)
      const plain = leastSquares(means.map((_, pair) => [1, 0.05 * (pair % 4)]), means)
      if (got.kind !== 'fitted' || plain.kind !== 'fitted') throw new Error(got.kind)
      expectClose(got.freedom, 5, 1e-9)
      for (const of of ['value', 'error', 'p'] as const) expectClose(got.coefficients[0]?.[of] ?? NaN, plain.coefficients[1]?.[of] ?? NaN, 1e-7)
    })

    it('never makes an error less, and of families of one row each changes nothing', () => {
      const rows = paired(0, 5), bare = withinClasses(rows.map(({group, x, y}) => ({group, x, y}))), got = withinClasses(rows), each = withinClasses(rows.map((row, place) => ({...row, family: String(place)})))
      if (bare.kind !== 'fitted' || got.kind !== 'fitted' || each.kind !== 'fitted') throw new Error(got.kind)
      expect(got.coefficients[0]?.error).toBeGreaterThanOrEqual(bare.coefficients[0]?.error ?? NaN)
      expectClose(each.freedom, bare.freedom, 1e-9)
      expectClose(each.coefficients[0]?.error ?? NaN, bare.coefficients[0]?.error ?? NaN, 1e-9)
    })

    it('has too few with two families, however many rows', () => {
      expect(withinClasses(['a', 'b', 'c', 'd'].flatMap(group => [0, 1].map(pair => ({group, family: String(pair), x: [pair], y: 10 * pair + group.charCodeAt(0) % 3})))).kind).toBe('few')
    })
  })
})
