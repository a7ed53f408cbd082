import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {shiftWithin} from '../../src/statistics/shift.ts'
import {expectClose} from '../expect-close.ts'

const values = fc.uniqueArray(fc.integer({min: 0, max: 4000}), {minLength: 4, maxLength: 12})

const shiftBetween = (one: readonly number[], other: readonly number[], level?: number) => shiftWithin([{one, other}], level)

describe('shiftWithin(groups) of one group', () => {
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

  it('takes grades that are tied', () => expect(shiftBetween([7, 8, 8, 9], [5, 6, 7, 7, 8])).toEqual({shift: 1, interval: {low: 0, high: 3}}))
  it('has no interval of three and three, and nothing without birds', () => {
    expect(shiftBetween([1, 2, 3], [4, 5, 6])).toEqual({shift: -3, interval: null})
    expect(shiftBetween([], [1])).toBeNull()
  })
  it('refuses what is no grade and no level', () => {
    expect(() => shiftBetween([NaN], [1])).toThrow(RangeError)
    expect(() => shiftBetween([1], [1], 1)).toThrow(RangeError)
  })
})

describe('shiftWithin(groups) of several', () => {
  it('leaves out exactly what the sum of the groups’ U would leave out: every shift tried', () => {
    // by the duality of Hodges and Lehmann: a shift d is inside where the U of all groups, the first step moved by −d, lies within its own 95 %
    fc.assert(fc.property(fc.tuple(values, values, values, values).map(all => all.map(each => each.slice(0, 5))), ([a = [], b = [], c = [], d = []]) => {
      const groups = [{one: a, other: b}, {one: c, other: d}], found = shiftWithin(groups), all = groups.flatMap(({one, other}) => one.flatMap(x => other.map(y => x - y))).sort((x, y) => x - y)
      const middle = all.length % 2 === 1 ? all[all.length >> 1] : ((all[all.length / 2 - 1] ?? 0) + (all[all.length / 2] ?? 0)) / 2
      expect(found?.shift).toBe(middle)
      const counts = groups.map(({one, other}) => uCounts(one.length, other.length)), tail = (most: number): number => {
        let sum = 0
        counts[0]?.forEach((x, u) => counts[1]?.forEach((y, v) => { if (u + v <= most) sum += x * y }))
        return sum / ((counts[0] ?? []).reduce((x, y) => x + y, 0) * (counts[1] ?? []).reduce((x, y) => x + y, 0))
      }
      if (!found?.interval) return
      const deepest = all.findIndex((_, place) => tail(place) > 0.025)
      expect(found.interval).toEqual({low: all[deepest - 1], high: all[all.length - deepest]})
    }), {numRuns: 30})
  })

  it('gives the value of its example, does not change when all of one sex lie higher, and passes over a group of one step', () => {
    expect(shiftWithin([{one: [8, 9], other: [7]}, {one: [4], other: [3, 3]}])).toEqual({shift: 1, interval: null})
    expect(shiftWithin([{one: [18, 19], other: [17]}, {one: [4], other: [3, 3]}, {one: [1], other: []}])).toEqual({shift: 1, interval: null})
    expect(shiftWithin([{one: [1], other: []}])).toBeNull()
  })
})

/** Of n and m birds without ties, in how many ways U comes to each number: by the recursion of Mann and Whitney. */
function uCounts(n: number, m: number): number[] {
  const of = (a: number, b: number, u: number): number => (u < 0 ? 0 : a === 0 || b === 0 ? Number(u === 0) : of(a - 1, b, u - b) + of(a, b - 1, u))
  return Array.from({length: n * m + 1}, (_, u) => of(n, m, u))
}
