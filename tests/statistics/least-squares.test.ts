import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {leastSquares} from '../../src/statistics/least-squares.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'
import {LONGLEY, LONGLEY_CERTIFIED, LONGLEY_SD} from './longley.ts'

function fitted(...args: Parameters<typeof leastSquares>) {
  const got = leastSquares(...args)
  if (got.kind !== 'fitted') throw new Error(got.kind)
  return got
}

describe('leastSquares(rows, values)', () => {
  it('has NIST’s certified values for Longley', () => {
    const got = fitted(LONGLEY.map(row => [1, ...row.slice(1)]), LONGLEY.map(([y]) => y ?? NaN))
    LONGLEY_CERTIFIED.forEach(([value, error], place) => {
      expectClose(got.coefficients[place]?.value ?? NaN, value, 1e-10 * Math.abs(value))
      expectClose(got.coefficients[place]?.error ?? NaN, error, 1e-10 * error)
    })
    expectClose(got.sd, LONGLEY_SD, 1e-10 * LONGLEY_SD)
    expect(got.freedom).toBe(9)
  })

  it('is the mean and its error with a level alone', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: -99, max: 99}), {minLength: 2, maxLength: 20}), values => {
      const got = fitted(values.map(() => [1]), values), {mean, sd} = meanAndDeviation(values)
      expectClose(got.coefficients[0]?.value ?? NaN, mean, 1e-9)
      expectClose(got.sd, sd ?? NaN, 1e-9)
      expectClose(got.coefficients[0]?.error ?? NaN, (sd ?? NaN) / Math.sqrt(values.length), 1e-9)
    }))
  })

  it('leaves the same over when columns are mixed, and follows units', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({min: -9, max: 9}), fc.integer({min: -9, max: 9}), fc.integer({min: -99, max: 99})), {minLength: 5, maxLength: 15}), lines => {
      const values = lines.map(([, , y]) => y), got = leastSquares(lines.map(([a, b]) => [1, a, b]), values)
      const mixed = leastSquares(lines.map(([a, b]) => [1, 10 * a, a + b]), values)
      expect(mixed.kind).toBe(got.kind)
      if (got.kind !== 'fitted' || mixed.kind !== 'fitted') return
      expectClose(mixed.squares, got.squares, 1e-6 * Math.max(1, got.squares))
      expectClose(mixed.coefficients[2]?.value ?? NaN, got.coefficients[2]?.value ?? NaN, 1e-6)
      for (const {value, error, interval, p} of got.coefficients) {
        expect(error).toBeGreaterThanOrEqual(0)
        expect(interval.low).toBeLessThanOrEqual(value)
        expect(interval.high).toBeGreaterThanOrEqual(value)
        if (p !== null && Math.abs(p - 0.05) > 1e-9) expect(interval.low <= 0 && interval.high >= 0).toBe(p > 0.05)
      }
    }))
  })

  it('has no error and no P where nothing is left over', () => {
    const got = fitted([[1, 0], [1, 1], [1, 2]], [0.1, 0.3, 0.5])
    expect(got.sd).toBe(0)
    expect(got.coefficients.map(({p}) => p)).toEqual([null, null])
  })
  it('gives the value of its example', () => {
    const got = fitted([[1, 0], [1, 1], [1, 2], [1, 3]], [1, 3, 4, 8])
    expectClose(got.coefficients[0]?.value ?? NaN, 0.7, 1e-12)
    expectClose(got.coefficients[1]?.value ?? NaN, 2.2, 1e-12)
    expectClose(got.sd, 0.9487, 0.00005)
  })
  it('says why there is none', () => {
    expect(leastSquares([], [])).toEqual({kind: 'few', n: 0})
    expect(leastSquares([[1, 0], [1, 1]], [1, 2])).toEqual({kind: 'few', n: 2})
    expect(leastSquares([[1, 3], [1, 3], [1, 3]], [1, 2, 3])).toEqual({kind: 'dependent', n: 3, columns: [1]})
  })
  it('refuses a level of 1', () => expect(() => leastSquares([[1], [1]], [1, 2], {level: 1})).toThrow(RangeError))
})
