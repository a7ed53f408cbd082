import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {scoreInterval} from '../../src/statistics/score-interval.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

describe('scoreInterval(share, n, z)', () => {
  it('has Wilson’s printed limits of 81 in 263', () => {
    // Newcombe 1998, Stat. Med. 17:857–872, Table I, method 3; to six digits by independent code
    const got = scoreInterval(81 / 263, 263)
    expectClose(got.low, 0.255289, 1e-6)
    expectClose(got.high, 0.36621, 1e-6)
  })
  it('has more of his table', () => {
    const limits = (k: number, n: number) => Object.values(scoreInterval(k / n, n)).map(each => Number(each.toFixed(4)))
    expect([limits(15, 148), limits(0, 20), limits(1, 29)]).toEqual([[0.0624, 0.1605], [0, 0.1611], [0.0061, 0.1718]])
  })
  it('holds the share, and is exactly 0 and 1 where the share is', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 1, noNaN: true}), fc.double({min: 0.1, max: 1e4, noNaN: true}), (share, n) => {
      const {low, high} = scoreInterval(share, n)
      expect(low - 1e-12).toBeLessThanOrEqual(share)
      expect(high + 1e-12).toBeGreaterThanOrEqual(share)
    }))
    expect([scoreInterval(0, 3).low, scoreInterval(1, 3).high]).toEqual([0, 1])
  })
  it('is Wilson’s wherever n is whole', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 200}).chain(n => fc.tuple(fc.nat(n), fc.constant(n))), ([k, n]) => {
      const got = scoreInterval(k / n, n), his = wilsonInterval(k, n)
      expectClose(got.low, his.low, 1e-12)
      expectClose(got.high, his.high, 1e-12)
    }))
  })
  it('widens as n falls', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 1, noNaN: true}), fc.double({min: 0.5, max: 100, noNaN: true}), fc.double({min: 1.01, max: 9, noNaN: true}), (share, n, by) => {
      const few = scoreInterval(share, n, 2), many = scoreInterval(share, n * by, 2)
      expect(many.high - many.low).toBeLessThanOrEqual(few.high - few.low + 1e-12)
    }))
  })
  it.each([[1.1, 5, 2], [0.5, 0, 2], [0.5, 5, 0], [NaN, 5, 2]])('refuses %f, %f, %f', (...args) => expect(() => scoreInterval(...args)).toThrow(RangeError))
})
