import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {fisherQuantile, fisherTail} from '../../src/statistics/fisher-f.ts'
import {expectClose} from '../expect-close.ts'

const freedom = fc.integer({min: 1, max: 120})

describe('fisherTail, fisherQuantile', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3, upper critical values of the F distribution; printed to three decimals, here as recomputed to four
  it.each([
    [0.05, 1, 10, 4.9646], [0.05, 2, 12, 3.8853], [0.05, 3, 16, 3.2389], [0.05, 4, 20, 2.8661], [0.05, 9, 90, 1.9856], [0.01, 1, 10, 10.0443], [0.01, 9, 90, 2.6109],
  ])('%f of (%i, %i)', (p, above, below, f) => {
    expectClose(fisherQuantile(p, above, below), f, 0.00005)
    expectClose(fisherTail(f, above, below), p, 2e-5)
  })

  it('is a closed form with two degrees above: P = (1 + 2f/ν)^(−ν/2)', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 50, noNaN: true}), freedom, (f, below) => {
      const expected = (1 + (2 * f) / below) ** (-below / 2)
      expectClose(fisherTail(f, 2, below), expected, 1e-11 * Math.max(expected, 1e-3), {f, below})
    }))
  })

  it('undo each other, and turn over: P(F ≥ f) of (a, b) = 1 − P(F ≥ 1/f) of (b, a)', () => {
    fc.assert(fc.property(fc.double({min: 0.001, max: 0.999, noNaN: true}), freedom, freedom, (p, above, below) => {
      const f = fisherQuantile(p, above, below)
      expectClose(fisherTail(f, above, below), p, 1e-9, {p, above, below})
      expectClose(fisherTail(1 / f, below, above), 1 - p, 1e-9, {p, above, below})
    }), {numRuns: 60})
  })

  it('is 1 for a ratio of 0', () => expect(fisherTail(0, 3, 4)).toBe(1))
  it.each([[-1, 1, 1], [NaN, 1, 1], [Infinity, 1, 1], [1, 0, 1], [1, 1, NaN]])('refuses %f with %f and %f', (f, above, below) => {
    expect(() => fisherTail(f, above, below)).toThrow(RangeError)
  })
  it.each([[0, 1, 1], [1, 1, 1], [NaN, 1, 1], [0.5, -1, 1], [0.5, 1, Infinity]])('has no quantile at %f with %f and %f', (p, above, below) => {
    expect(() => fisherQuantile(p, above, below)).toThrow(RangeError)
  })
})
