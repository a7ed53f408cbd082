import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {scoreInterval} from '../../src/statistics/score-interval.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

describe('scoreInterval(share, n, z)', () => {
  it('has Wilson’s printed limits of 81 in 263', () => {
    const got = scoreInterval(81 / 263, 263, 1.959963984540054) // check-values J: Newcombe 1998, Table I
    expectClose(got.low, 0.255289, 1e-6)
    expectClose(got.high, 0.36621, 1e-6)
  })
  it('is Wilson’s wherever n is whole', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 200}).chain(n => fc.tuple(fc.nat(n), fc.constant(n))), ([k, n]) => {
      const got = scoreInterval(k / n, n, 1.959963984540054), his = wilsonInterval(k, n)
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
