import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {leastSquares} from '../../src/statistics/least-squares.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'
import {LONGLEY, LONGLEY_CERTIFIED, LONGLEY_SD} from './longley.ts'

/** NIST StRD, linear least squares, data set Norris: calibration of ozone monitors. */
const NORRIS_Y = [
  0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888, 998.5, 778.9, 10.2,
  117.6, 228.9, 668.4, 449.2, 0.2,
]
const NORRIS_X = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, 0.4, 0.6, 775.5, 666.9, 338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999, 779, 11.1, 118.3,
  229.2, 669.1, 448.9, 0.5,
]

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

  const ofLine = (x: readonly number[], y: readonly number[]) => leastSquares(x.map(value => [1, value]), y)

  it('has NIST’s certified values for Norris', () => {
    const {coefficients: [intercept, slope], sd} = fitted(NORRIS_X.map(value => [1, value]), NORRIS_Y)
    for (const [got, certified] of [
      [intercept?.value, -0.262323073774029], [intercept?.error, 0.232818234301152], [slope?.value, 1.00211681802045], [slope?.error, 0.000429796848199937], [sd, 0.884796396144373],
    ] as const) expectClose(got ?? NaN, certified, 1e-10 * Math.abs(certified))
  })

  it('is Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², through the middle of the points, for a line', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({min: -50, max: 50}), fc.integer({min: -99, max: 99})), {minLength: 3, maxLength: 20}), all => {
      const got = ofLine(all.map(([x]) => x), all.map(([, y]) => y))
      if (got.kind !== 'fitted') return
      const mx = all.reduce((sum, [x]) => sum + x, 0) / all.length, my = all.reduce((sum, [, y]) => sum + y, 0) / all.length
      const sxy = all.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0), sxx = all.reduce((sum, [x]) => sum + (x - mx) ** 2, 0)
      const [intercept, slope] = got.coefficients
      expectClose(slope?.value ?? NaN, sxy / sxx, 1e-9 * Math.max(1, Math.abs(sxy / sxx)))
      expectClose((intercept?.value ?? NaN) + (slope?.value ?? NaN) * mx, my, 1e-8)
    }))
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
