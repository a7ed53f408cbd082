import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {shiftBetween} from '../../src/statistics/shift.ts'
import {expectClose} from '../expect-close.ts'

const values = fc.uniqueArray(fc.integer({min: 0, max: 4000}), {minLength: 4, maxLength: 12})

describe('shiftBetween(one, other)', () => {
  it('permeability of a membrane at term and earlier', () => {
    // Hollander & Wolfe 1973, pp. 75–79: shift 0.305 with −0.15 to 0.76 (from memory); the same from R's wilcox.test(x, y, conf.int = TRUE)
    const got = shiftBetween([0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46], [1.15, 0.88, 0.9, 0.74, 1.21])
    expectClose(got?.shift ?? NaN, 0.305, 1e-12)
    expectClose(got?.interval?.low ?? NaN, -0.15, 1e-12)
    expectClose(got?.interval?.high ?? NaN, 0.76, 1e-12)
  })

  it('holds every shift that the rank sum does not reject, and no other', () => {
    fc.assert(fc.property(values, values, (one, other) => {
      const got = shiftBetween(one, other)
      if (!got?.interval) return
      const p = (shift: number) => {
        const test = rankSum(one.map(value => value - shift), other)
        return test.kind === 'compared' ? test.p : 1
      }
      // a hair inside and outside, so that no difference is tied
      expect(p(got.interval.low + 1e-4)).toBeGreaterThan(0.05 - 1e-9)
      expect(p(got.interval.high - 1e-4)).toBeGreaterThan(0.05 - 1e-9)
      expect(p(got.interval.low - 1e-4)).toBeLessThanOrEqual(0.05 + 1e-9)
      expect(p(got.interval.high + 1e-4)).toBeLessThanOrEqual(0.05 + 1e-9)
    }), {numRuns: 50})
  })

  it('moves with the birds and turns over', () => {
    fc.assert(fc.property(values, values, fc.integer({min: -500, max: 500}), (one, other, by) => {
      const got = shiftBetween(one, other), moved = shiftBetween(one.map(value => value + by), other), back = shiftBetween(other, one)
      expectClose(moved?.shift ?? NaN, (got?.shift ?? NaN) + by, 1e-9)
      expectClose(back?.shift ?? NaN, -(got?.shift ?? NaN), 1e-9)
      if (got?.interval) {
        expectClose(back?.interval?.low ?? NaN, -got.interval.high, 1e-9)
        expect(got.interval.low).toBeLessThanOrEqual(got.shift)
        expect(got.interval.high).toBeGreaterThanOrEqual(got.shift)
      }
    }))
  })

  it('goes over to the curve without a jump', () => {
    const one = Array.from({length: 31}, (_, place) => place * 7 % 31), other = Array.from({length: 31}, (_, place) => place * 11 % 31 + 0.5)
    const many = shiftBetween(one, other), fewer = shiftBetween(one.slice(0, 30), other.slice(0, 30))
    expectClose(many?.interval?.low ?? NaN, fewer?.interval?.low ?? NaN, 1)
    expectClose(many?.interval?.high ?? NaN, fewer?.interval?.high ?? NaN, 1)
  })

  it('gives the value of its example', () => expect(shiftBetween([7, 8, 8, 9], [5, 6, 7, 7, 8])).toEqual({shift: 1, interval: {low: 0, high: 3}}))
  it('has no interval of three and three, and nothing without birds', () => {
    expect(shiftBetween([1, 2, 3], [4, 5, 6])).toEqual({shift: -3, interval: null})
    expect(shiftBetween([], [1])).toBeNull()
  })
  it('refuses what is no grade and no level', () => {
    expect(() => shiftBetween([NaN], [1])).toThrow(RangeError)
    expect(() => shiftBetween([1], [1], 1)).toThrow(RangeError)
  })
})
