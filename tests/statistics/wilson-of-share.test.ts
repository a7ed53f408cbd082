import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {wilsonOfShare} from '../../src/statistics/wilson-of-share.ts'

describe('wilsonOfShare(p, n)', () => {
  it('gives the published limits of 81 of 263 and 15 of 148', () => {
    // source: Newcombe 1998, Stat. Med. 17:857, Table I, method 3
    const limits = (k: number, n: number) => Object.values(wilsonOfShare(k / n, n)).map(each => Number(each.toFixed(4)))
    expect([limits(81, 263), limits(15, 148), limits(0, 20), limits(1, 29)]).toEqual([[0.2553, 0.3662], [0.0624, 0.1605], [0, 0.1611], [0.0061, 0.1718]])
  })

  it('is the interval of a count where n is whole', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 500}), fc.nat(500), (n, some) => {
      const k = Math.min(n, some), whole = wilsonInterval(k, n), found = wilsonOfShare(k / n, n)
      expect(found.low).toBeCloseTo(whole.low, 12)
      expect(found.high).toBeCloseTo(whole.high, 12)
    }))
  })

  it('narrows as n grows, and holds the share', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 1, noNaN: true}), fc.double({min: 0.1, max: 1e4, noNaN: true}), (p, n) => {
      const few = wilsonOfShare(p, n), more = wilsonOfShare(p, 2 * n)
      expect(more.high - more.low).toBeLessThanOrEqual(few.high - few.low + 1e-12)
      expect(few.low - 1e-12).toBeLessThanOrEqual(p)
      expect(few.high + 1e-12).toBeGreaterThanOrEqual(p)
    }))
  })

  it('throws out of range', () => {
    for (const [p, n] of [[-0.1, 3], [1.1, 3], [0.5, 0], [Number.NaN, 3]] as const) expect(() => wilsonOfShare(p, n)).toThrow(RangeError)
  })
})
