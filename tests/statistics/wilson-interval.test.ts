import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

const counts = fc.integer({min: 1, max: 5000}).chain(n => fc.tuple(fc.integer({min: 0, max: n}), fc.constant(n)))

describe('wilsonInterval(k, n)', () => {
  it('ends where the score test just rejects', () => {
    // another route: at both limits |k/n − p| = z·√(p(1 − p)/n), for any k and n and any level
    fc.assert(fc.property(counts, fc.double({min: 0.5, max: 0.999, noNaN: true}), ([k, n], level) => {
      const z = normalQuantile(level)
      const {low, high} = wilsonInterval(k, n, z)
      for (const p of [low, high]) {
        if (p === 0 || p === 1) continue
        expectClose(Math.abs(k / n - p), z * Math.sqrt((p * (1 - p)) / n), 1e-11, {k, n, level})
      }
    }))
  })

  it('mirrors when failures are counted instead', () => {
    fc.assert(fc.property(counts, ([k, n]) => {
      expectClose(wilsonInterval(k, n).low, 1 - wilsonInterval(n - k, n).high, 1e-15, {k, n})
    }))
  })

  it('holds the share, inside 0 and 1, and is never of no width', () => {
    fc.assert(fc.property(counts, ([k, n]) => {
      const {low, high} = wilsonInterval(k, n)
      expect(low).toBeGreaterThanOrEqual(0)
      expect(high).toBeLessThanOrEqual(1)
      expect(low).toBeLessThanOrEqual(k / n)
      expect(high).toBeGreaterThanOrEqual(k / n)
      expect(high - low).toBeGreaterThan(0)
    }))
  })

  it('narrows as more are counted at the same share', () => {
    fc.assert(fc.property(counts, fc.integer({min: 2, max: 20}), ([k, n], times) => {
      const few = wilsonInterval(k, n), many = wilsonInterval(k * times, n * times)
      expect(many.high - many.low).toBeLessThan(few.high - few.low)
    }))
  })

  it('prints 0 and 1 at the ends, not −0 or a hair more than 1', () => {
    for (const n of [1, 2, 3, 7, 20, 62, 12345]) {
      expect(Object.is(wilsonInterval(0, n).low, 0)).toBe(true)
      expect(wilsonInterval(n, n).high).toBe(1)
    }
  })

  it('gives the value of its example', () => {
    const {low, high} = wilsonInterval(41, 48)
    expectClose(low, 0.7283, 0.00005)
    expectClose(high, 0.9275, 0.00005)
  })

  it.each([[1, 0], [-1, 4], [5, 4], [1.5, 4], [1, 4.5], [NaN, 4], [1, NaN]])('refuses %f of %f', (k, n) => {
    expect(() => wilsonInterval(k, n)).toThrow(RangeError)
  })

  it.each([0, -1, NaN, Infinity])('refuses z = %f', z => {
    expect(() => wilsonInterval(1, 2, z)).toThrow(RangeError)
  })
})
