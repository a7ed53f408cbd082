import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {contrast} from '../../src/statistics/contrast.ts'
import {welchT} from './welch-t.ts'
import {expectClose} from '../expect-close.ts'

const group = fc.record({n: fc.integer({min: 2, max: 40}), mean: fc.integer({min: -100, max: 100}), sd: fc.integer({min: 1, max: 50})})

describe('contrast(parts)', () => {
  it('is Welch’s t of two means', () => {
    fc.assert(fc.property(group, group, (a, b) => {
      const one = contrast([{of: a, times: 1}, {of: b, times: -1}]), other = welchT(a, b)
      expectClose(one?.value ?? NaN, other?.difference ?? NaN, 1e-12)
      expectClose(one?.interval.low ?? NaN, other?.interval.low ?? NaN, 1e-9)
      expectClose(one?.p ?? NaN, other?.p ?? NaN, 1e-9)
    }))
  })

  it('has the mean and the error that it says by hand', () => {
    // one less the half of two others: errors by hand √(4/4 + (1/4)·9/9 + (1/4)·16/4)
    const found = contrast([{of: {n: 4, mean: 12, sd: 2}, times: 1}, {of: {n: 9, mean: 8, sd: 3}, times: -0.5}, {of: {n: 4, mean: 10, sd: 4}, times: -0.5}])
    expect(found?.value).toBe(3)
    expect(found?.error).toBeCloseTo(Math.sqrt(1 + 0.25 + 1), 12)
    // ν by hand: 2.25² / (1/3 + 0.0625/8 + 1/3) = 7.51, and printed tables have t 2.3646 at 7 and 2.3060 at 8
    const t = found ? (found.interval.high - found.interval.low) / 2 / found.error : NaN
    expect(t).toBeGreaterThan(2.306)
    expect(t).toBeLessThan(2.3646)
  })

  it('takes the degrees of freedom of a spread put together of classes', () => {
    const width = (freedom: number) => contrast([{of: {n: 10, mean: 1, sd: 2, freedom}, times: 1}])?.interval.high ?? NaN
    // t of 5 and 9: 2.5706, 2.2622
    expect(width(5)).toBeCloseTo(1 + (2.570582 * 2) / Math.sqrt(10), 5)
    expect(width(9)).toBeCloseTo(1 + (2.262157 * 2) / Math.sqrt(10), 5)
  })

  it('says nothing of single birds and of none that differ', () => {
    expect(contrast([{of: {n: 1, mean: 3, sd: null}, times: 1}])).toBeNull()
    expect(contrast([{of: {n: 3, mean: 3, sd: 0}, times: 1}])).toBeNull()
    expect(contrast([{of: {n: 3, mean: 3, sd: 1, freedom: 0}, times: 1}])).toBeNull()
    expect(() => contrast([], 1)).toThrow(RangeError)
  })
})
