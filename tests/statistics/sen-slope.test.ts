import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {mannKendall} from '../../src/statistics/mann-kendall.ts'
import {senSlope} from '../../src/statistics/sen-slope.ts'
import {expectClose} from '../expect-close.ts'

/** R package trend (Pohlert), data set maxau, column s, the first 45 years. */
const RIVER = [
  37.38356, 31.28219, 26.41918, 28.82787, 32.88219, 37.5726, 27.34247, 29.85792, 35.49315, 28.90411, 25.69315, 16.96995, 28.90137, 20.25205, 19.26849, 19.19126, 24.33699, 28.81096, 17.69589, 19.63661,
  20.95616, 29.10411, 27.34521, 27.60383, 20.98904, 26.96986, 27.44384, 32.79235, 27.56164, 30.72877, 33.14521, 25.77869, 25.28767, 24.40822, 28.38356, 17.97268, 16.09589, 17.26849, 11.89041, 13.77049,
  21.46897, 23.09863, 16.44413, 15.77322, 13.87363,
]
const values = fc.array(fc.integer({min: -99, max: 99}), {minLength: 2, maxLength: 12})

describe('senSlope(values, times)', () => {
  it('of 45 years of a river', () => {
    // R package trend, sens.slope(maxau[, "s"]): −0.2876
    expectClose(senSlope(RIVER)?.slope ?? NaN, -0.2876, 0.00005)
  })

  it('of a short series with ties: 1', () => {
    // US EPA QA/G-9S data example; slope recomputed by independent code
    expect(senSlope([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15])?.slope).toBe(1)
  })

  it('is the slope that leaves as many pairs rising as falling', () => {
    fc.assert(fc.property(values, all => {
      const slope = senSlope(all)?.slope ?? NaN
      let up = 0, down = 0
      all.forEach((later, j) => all.slice(0, j).forEach((earlier, i) => {
        const left = later - earlier - slope * (j - i)
        if (left > 1e-9) up += 1
        if (left < -1e-9) down += 1
      }))
      const pairs = (all.length * (all.length - 1)) / 2
      expect(Math.max(up, down)).toBeLessThanOrEqual(pairs / 2)
    }))
  })

  it('has an interval that holds the slope, and that leaves nought out where Mann and Kendall see a trend', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({min: -999, max: 999}), {minLength: 5, maxLength: 14}), all => {
      const got = senSlope(all), trend = mannKendall(all)
      if (!got?.interval || trend.kind !== 'tested') return
      expect(got.interval.low).toBeLessThanOrEqual(got.slope)
      expect(got.interval.high).toBeGreaterThanOrEqual(got.slope)
      // the normal curve of S on both sides, without continuity
      const z = Math.abs(trend.s) / Math.sqrt(trend.variance)
      if (z < 1.6) expect(got.interval.low <= 0 && got.interval.high >= 0).toBe(true)
      if (z > 2.6) expect(got.interval.low > 0 || got.interval.high < 0).toBe(true)
    }))
  })

  it('moves with a straight line put on top, and knows longer gaps', () => {
    fc.assert(fc.property(values, fc.integer({min: -20, max: 20}), (all, by) => {
      const slope = senSlope(all)?.slope ?? NaN
      expectClose(senSlope(all.map((value, place) => value + by * place))?.slope ?? NaN, slope + by, 1e-9)
      expectClose(senSlope(all, all.map((_, place) => 2020 + 2 * place))?.slope ?? NaN, slope / 2, 1e-9)
    }))
  })

  it('has no interval of so few seasons or of one figure, and nothing of one season', () => {
    expect(senSlope([1, 2])).toEqual({slope: 1, interval: null})
    expect(senSlope([3, 3, 3, 3])).toEqual({slope: 0, interval: null})
    expect(senSlope([1])).toBeNull()
  })
  it('gives the value of its example', () => expect(senSlope([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15])).toEqual({slope: 1, interval: {low: 0, high: 2}}))
  it('refuses times that do not rise, and what is not finite', () => {
    expect(() => senSlope([1, 2], [2020, 2020])).toThrow(RangeError)
    expect(() => senSlope([1, 2], [2020])).toThrow(RangeError)
    expect(() => senSlope([1, NaN])).toThrow(RangeError)
    expect(() => senSlope([1, 2], [0, 1], 1)).toThrow(RangeError)
  })
})
