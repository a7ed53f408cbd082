import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {straightLine} from '../../src/statistics/straight-line.ts'
import {expectClose} from '../expect-close.ts'

/** NIST StRD, linear least squares, data set Norris: calibration of ozone monitors. */
const NORRIS_Y = [
  0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888, 998.5, 778.9, 10.2,
  117.6, 228.9, 668.4, 449.2, 0.2,
]
const NORRIS_X = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, 0.4, 0.6, 775.5, 666.9, 338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999, 779, 11.1, 118.3,
  229.2, 669.1, 448.9, 0.5,
]

function line(...args: Parameters<typeof straightLine>) {
  const got = straightLine(...args)
  if (got.kind !== 'fitted') throw new Error(got.kind)
  return got
}

describe('straightLine(x, y)', () => {
  it('has NIST’s certified values for Norris', () => {
    const {intercept, slope, sd, rSquared} = line(NORRIS_X, NORRIS_Y)
    for (const [got, certified] of [
      [intercept.value, -0.262323073774029], [intercept.error, 0.232818234301152], [slope.value, 1.00211681802045], [slope.error, 0.000429796848199937], [sd, 0.884796396144373], [rSquared, 0.999993745883712],
    ] as const) expectClose(got ?? NaN, certified, 1e-10 * Math.abs(certified))
  })

  const points = fc.array(fc.tuple(fc.integer({min: -50, max: 50}), fc.integer({min: -99, max: 99})), {minLength: 3, maxLength: 20})

  it('is Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², through the middle of the points', () => {
    fc.assert(fc.property(points, all => {
      const got = straightLine(all.map(([x]) => x), all.map(([, y]) => y))
      if (got.kind !== 'fitted') return
      const mx = all.reduce((sum, [x]) => sum + x, 0) / all.length, my = all.reduce((sum, [, y]) => sum + y, 0) / all.length
      const sxy = all.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0), sxx = all.reduce((sum, [x]) => sum + (x - mx) ** 2, 0), syy = all.reduce((sum, [, y]) => sum + (y - my) ** 2, 0)
      expectClose(got.slope.value, sxy / sxx, 1e-9 * Math.max(1, Math.abs(sxy / sxx)))
      expectClose(got.intercept.value + got.slope.value * mx, my, 1e-8)
      if (syy > 0) expectClose(got.rSquared ?? NaN, sxy ** 2 / (sxx * syy), 1e-8)
    }))
  })

  it('turns with y, and stretches with x', () => {
    fc.assert(fc.property(points, all => {
      const x = all.map(([first]) => first), y = all.map(([, second]) => second)
      const got = straightLine(x, y), turned = straightLine(x.map(value => value / 2), y.map(value => -value))
      if (got.kind !== 'fitted' || turned.kind !== 'fitted') return
      expectClose(turned.slope.value, -2 * got.slope.value, 1e-8 * Math.max(1, Math.abs(got.slope.value)))
    }))
  })

  it('gives the value of its example', () => {
    const {slope} = line([0, 1, 2, 3], [1, 3, 4, 8])
    expectClose(slope.value, 2.2, 1e-12)
    expectClose(slope.interval.low, 0.3745, 0.00005)
    expectClose(slope.interval.high, 4.0255, 0.00005)
  })
  it('is flat for one figure throughout', () => expect(line([0, 1, 2], [5, 5, 5]).rSquared).toBeNull())
  it('says why there is none', () => {
    expect(straightLine([1, 2], [1, 2])).toEqual({kind: 'few', n: 2})
    expect(straightLine([3, 3, 3], [1, 2, 3])).toEqual({kind: 'one-place', n: 3})
    expect(straightLine([], [])).toEqual({kind: 'few', n: 0})
  })
  it('refuses x and y that do not fit', () => expect(() => straightLine([1, 2], [1])).toThrow(RangeError))
})
