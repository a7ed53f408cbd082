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
})
