import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {mannKendall} from '../../src/statistics/mann-kendall.ts'
import {expectClose} from '../expect-close.ts'

/** R package trend (Pohlert), data set maxau, column s: yearly mean of suspended matter in a river. */
const RIVER = [
  37.38356, 31.28219, 26.41918, 28.82787, 32.88219, 37.5726, 27.34247, 29.85792, 35.49315, 28.90411, 25.69315, 16.96995, 28.90137, 20.25205, 19.26849, 19.19126, 24.33699, 28.81096, 17.69589, 19.63661,
  20.95616, 29.10411, 27.34521, 27.60383, 20.98904, 26.96986, 27.44384, 32.79235, 27.56164, 30.72877, 33.14521, 25.77869, 25.28767, 24.40822, 28.38356, 17.97268, 16.09589, 17.26849, 11.89041, 13.77049,
  21.46897, 23.09863, 16.44413, 15.77322, 13.87363,
]

function tested(values: readonly number[]) {
  const got = mannKendall(values)
  if (got.kind !== 'tested') throw new Error(got.kind)
  return got
}

/** Orders of so many different numbers, one after the other. */
function orders(numbers: readonly number[]): number[][] {
  return numbers.length === 0 ? [[]] : numbers.flatMap((first, place) => orders(numbers.filter((_, other) => other !== place)).map(rest => [first, ...rest]))
}
const rises = (values: readonly number[]) => values.reduce((sum, later, j) => sum + values.slice(0, j).reduce((part, earlier) => part + Math.sign(later - earlier), 0), 0)

describe('mannKendall(values)', () => {
  it('of a short series with ties', () => {
    // US EPA QA/G-9S, Data Quality Assessment: Statistical Methods for Practitioners, the Mann–Kendall example with ties: S 22, variance 155.33, z 1.685
    const got = tested([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15])
    expect(got).toMatchObject({s: 22, how: 'asymptotic'})
    expectClose(got.variance, 155.33, 0.005)
    expectClose((Math.abs(got.s) - 1) / Math.sqrt(got.variance), 1.685, 0.0005)
    // recomputed by independent code
    expectClose(got.p, 0.091998, 0.0000005)
    expectClose(got.tau, 0.428174, 0.0000005)
  })

  it('of 45 years of a river', () => {
    // R package trend, mk.test(maxau[, "s"]): S −394, variance 10450, z −3.8445, P .0001208
    const got = tested(RIVER)
    expect(got).toMatchObject({s: -394, variance: 10450})
    expectClose(got.p, 0.0001208, 0.00000005)
    expectClose(got.tau, -0.39798, 0.0000005)
  })

  // Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, table A18: one-sided P(S ≥ s) (from memory; recomputed). The two-sided P is twice that
  it.each([[4, 4, 0.16667], [4, 6, 0.04167], [5, 6, 0.11667], [5, 8, 0.04167], [5, 10, 0.00833], [6, 9, 0.06806], [6, 11, 0.02778], [6, 13, 0.00833], [6, 15, 0.00139],
    [8, 16, 0.03051], [8, 20, 0.00707], [10, 21, 0.03628], [10, 23, 0.02331], [10, 29, 0.00457]])('has the printed P with %i seasons and S = %i', (n, s, p) => {
    // rising, then neighbours changed round until so many pairs fall; each change turns one pair
    const values = Array.from({length: n}, (_, place) => place)
    for (let turns = ((n * (n - 1)) / 2 - s) / 2; turns > 0; turns--) {
      const place = values.findIndex((value, at) => value < (values[at + 1] ?? -1))
      values.splice(place, 2, ...values.slice(place, place + 2).reverse())
    }
    expect(rises(values)).toBe(s)
    expectClose(tested(values).p, 2 * p, 0.00002)
  })

  it('is the share of all orders', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({min: 0, max: 99}), {minLength: 3, maxLength: 6}), values => {
      const all = orders(values), got = tested(values)
      expect(got.how).toBe('exact')
      expect(got.s).toBe(rises(values))
      expectClose(got.p, all.filter(order => Math.abs(rises(order)) >= Math.abs(got.s)).length / all.length, 1e-12)
      expectClose(got.variance, all.reduce((sum, order) => sum + rises(order) ** 2, 0) / all.length, 1e-9)
    }), {numRuns: 25})
  })

  it('turns over with the figures and with time, and asks for the order alone', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: -9, max: 9}), {minLength: 3, maxLength: 15}), values => {
      const got = mannKendall(values), falling = mannKendall(values.map(value => -value)), back = mannKendall([...values].reverse())
      expect(mannKendall(values.map(value => value ** 3 + 5))).toEqual(got)
      if (got.kind !== 'tested' || falling.kind !== 'tested' || back.kind !== 'tested') return
      expect(falling.s === -got.s && back.s === -got.s).toBe(true)
      expectClose(falling.p, got.p, 1e-12)
      expect(got.p).toBeGreaterThanOrEqual(got.smallestP - 1e-12)
      expect(got.p).toBeLessThanOrEqual(1)
      expect(Math.abs(got.tau)).toBeLessThanOrEqual(1)
    }))
  })

  it('cannot show a trend in three seasons, and says so', () => expectClose(tested([1, 2, 3]).smallestP, 1 / 3, 1e-12))
  it('gives the value of its example', () => expectClose(tested([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15]).p, 0.092, 0.00005))
  it('says why there is none', () => {
    expect(mannKendall([1, 2])).toEqual({kind: 'few', n: 2})
    expect(mannKendall([2, 2, 2])).toEqual({kind: 'all-alike', n: 3})
  })
  it('refuses what is not finite', () => expect(() => mannKendall([1, NaN, 2])).toThrow(RangeError))
})
