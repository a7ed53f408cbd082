import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile'
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {fisherQuantile} from '../../src/statistics/fisher-f.ts'
import {mixtureLimits} from '../../src/statistics/mean-square-mixture.ts'
import {expectClose} from '../expect-close.ts'

const meanSquare = fc.record({square: fc.double({min: 0.1, max: 100, noNaN: true}), freedom: fc.integer({min: 1, max: 60})})

describe('mixtureLimits(squares, mixture)', () => {
  it('is the interval of a variance for one alone', () => {
    // NIST/SEMATECH e-Handbook, 7.2.3.1: ν·s²/χ²; ten values of variance 10: 9·10/19.0228 and 9·10/2.7004
    fc.assert(fc.property(meanSquare, own => {
      const {low, high} = mixtureLimits([own], [1])
      expectClose(low, (own.freedom * own.square) / chiSquareQuantile(0.975, own.freedom), 1e-9 * own.square)
      const top = (own.freedom * own.square) / chiSquareQuantile(0.025, own.freedom)
      expectClose(high, top, 1e-9 * top)
    }))
    expectClose(mixtureLimits([{square: 10, freedom: 9}], [1]).low, 4.7312, 0.00005)
    expectClose(mixtureLimits([{square: 10, freedom: 9}], [1]).high, 33.3285, 0.0001)
  })

  it('just holds 0 where the ratio of two reaches the quantile of F', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 40}), fc.integer({min: 1, max: 40}), (above, below) => {
      const f = fisherQuantile(0.025, above, below)
      expectClose(mixtureLimits([{square: f, freedom: above}, {square: 1, freedom: below}], [1, -1]).low, 0, 1e-5 * f, {above, below})
      const g = 1 / fisherQuantile(0.025, below, above)
      expectClose(mixtureLimits([{square: g, freedom: above}, {square: 1, freedom: below}], [1, -1]).high, 0, 1e-5, {above, below})
    }), {numRuns: 40})
  })

  it('holds its value, turns over with the signs, and follows the unit', () => {
    fc.assert(fc.property(fc.array(fc.tuple(meanSquare, fc.double({min: -3, max: 3, noNaN: true})), {minLength: 1, maxLength: 4}), parts => {
      const squares = parts.map(([own]) => own), mixture = parts.map(([, part]) => part)
      const value = parts.reduce((sum, [{square}, part]) => sum + square * part, 0)
      const got = mixtureLimits(squares, mixture), back = mixtureLimits(squares, mixture.map(part => -part)), double = mixtureLimits(squares, mixture.map(part => 2 * part))
      expect(got.low).toBeLessThanOrEqual(value)
      expect(got.high).toBeGreaterThanOrEqual(value)
      expectClose(back.low, -got.high, 1e-9 * Math.max(1, Math.abs(got.high)))
      expectClose(double.high, 2 * got.high, 1e-9 * Math.max(1, Math.abs(got.high)))
    }))
  })

  it('covers a difference and a sum about 95 times in a hundred', () => {
    const chance = chanceOf(50), share = () => (chance.next() + 0.5) / 2 ** 32
    // a mean square of ν degrees of freedom as the mean of squared normal draws
    const drawn = (expected: number, freedom: number) => {
      let sum = 0
      for (let each = 0; each < freedom; each++) sum += -2 * Math.log(share()) * Math.cos(2 * Math.PI * share()) ** 2
      return {square: (expected * sum) / freedom, freedom}
    }
    for (const mixture of [[1, -1, 0], [0.5, 1, 2], [1, 0.5, -2]]) {
      const truth = 8 * (mixture[0] ?? 0) + 3 * (mixture[1] ?? 0) + 2 * (mixture[2] ?? 0)
      let held = 0
      for (let run = 0; run < 2000; run++) {
        const {low, high} = mixtureLimits([drawn(8, 5), drawn(3, 12), drawn(2, 30)], mixture)
        if (low <= truth && truth <= high) held += 1
      }
      expectClose(held / 2000, 0.955, 0.02, {mixture})
    }
  })

  it('is nothing of nothing', () => expect(mixtureLimits([], [])).toEqual({low: 0, high: 0}))
  it('refuses what is out of range', () => {
    expect(() => mixtureLimits([{square: 1, freedom: 0}], [1])).toThrow(RangeError)
    expect(() => mixtureLimits([{square: -1, freedom: 2}], [1])).toThrow(RangeError)
    expect(() => mixtureLimits([{square: 1, freedom: 2}], [])).toThrow(RangeError)
    expect(() => mixtureLimits([{square: 1, freedom: 2}], [1], 1)).toThrow(RangeError)
  })
})
