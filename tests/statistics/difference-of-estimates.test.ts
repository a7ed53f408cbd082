import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {differenceOfEstimates} from '../../src/statistics/difference-of-estimates.ts'
import {shareDifference} from '../../src/statistics/share-difference.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

const count = fc.integer({min: 1, max: 60}).chain(n => fc.record({n: fc.constant(n), k: fc.nat(n)}))
const withLimits = (k: number, n: number) => ({value: k / n, ...wilsonInterval(k, n)})

describe('differenceOfEstimates(one, other)', () => {
  // Newcombe 1998, Stat. Med. 17:873–890, Table II, contrast (a), method 10: 56 of 70 against 48 of 80
  it('has Newcombe’s printed limits for two shares', () => {
    const got = differenceOfEstimates(withLimits(56, 70), withLimits(48, 80))
    expectClose(got.low, 0.0524, 5e-5)
    expectClose(got.high, 0.3339, 5e-5)
  })
  it('is Newcombe’s interval for any two shares with Wilson’s limits', () => {
    fc.assert(fc.property(count, count, (a, b) => {
      const got = differenceOfEstimates(withLimits(a.k, a.n), withLimits(b.k, b.n)), his = shareDifference(a, b)
      expectClose(got.low, his.low, 1e-12)
      expectClose(got.high, his.high, 1e-12)
    }))
  })
  it('turns round when the two change places', () => {
    fc.assert(fc.property(count, count, (a, b) => {
      const one = differenceOfEstimates(withLimits(a.k, a.n), withLimits(b.k, b.n)), other = differenceOfEstimates(withLimits(b.k, b.n), withLimits(a.k, a.n))
      expectClose(one.low, -other.high, 1e-12)
    }))
  })
  it('is that of two means with known errors where the limits are even', () => {
    const got = differenceOfEstimates({value: 10, low: 7, high: 13}, {value: 4, low: 0, high: 8})
    expect(got).toEqual({difference: 6, low: 1, high: 11})
  })
  it('refuses an estimate outside its limits', () => expect(() => differenceOfEstimates({value: 2, low: 3, high: 4}, {value: 1, low: 0, high: 2})).toThrow(RangeError))
})
