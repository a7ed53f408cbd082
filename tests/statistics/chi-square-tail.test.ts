import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chiSquareTail} from '../../src/statistics/chi-square-tail.ts'
import {expectClose} from '../expect-close.ts'

/** The twin: for even ν the tail is a sum of ν/2 terms, e^(−x/2) · Σ (x/2)^i / i!. */
function evenTail(x: number, freedom: number): number {
  let term = Math.exp(-x / 2), sum = term
  for (let half = 1; half < freedom / 2; half++) {
    term *= x / 2 / half
    sum += term
  }
  return sum
}

describe('chiSquareTail(x, ν)', () => {
  // NIST/SEMATECH e-Handbook, 1.3.6.7.4: printed to three or four decimals, so P is held as far as the point is
  it.each([
    [1, 3.8415, 0.05], [2, 5.9915, 0.05], [3, 7.8147, 0.05], [6, 12.5916, 0.05], [10, 18.307, 0.05], [100, 124.3421, 0.05],
    [1, 6.6349, 0.01], [2, 9.2103, 0.01], [5, 15.0863, 0.01], [30, 50.8922, 0.01], [5, 1.1455, 0.95], [20, 10.8508, 0.95],
  ])('with ν = %i and x = %f leaves %f above it', (freedom, x, p) => expectClose(chiSquareTail(x, freedom), p, 1e-5))

  it('is the sum it comes to for even degrees of freedom, far into the tail', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 200, noNaN: true}), fc.integer({min: 1, max: 15}), (x, half) => {
      const expected = evenTail(x, 2 * half)
      expectClose(chiSquareTail(x, 2 * half), expected, 1e-11 * expected, {x, half})
    }))
  })

  it('falls as x grows, and rises with the degrees of freedom', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 60, noNaN: true}), fc.double({min: 0.01, max: 5, noNaN: true}), fc.integer({min: 1, max: 30}), (x, more, freedom) => {
      expect(chiSquareTail(x + more, freedom)).toBeLessThanOrEqual(chiSquareTail(x, freedom) + 1e-14)
      expect(chiSquareTail(x, freedom + 1)).toBeGreaterThanOrEqual(chiSquareTail(x, freedom) - 1e-14)
    }))
  })

  it('is 1 at nothing, also with nothing free', () => {
    expect(chiSquareTail(0, 4)).toBe(1)
    expect(chiSquareTail(0, 0)).toBe(1)
  })

  it.each([[-1, 2], [NaN, 2], [Infinity, 2], [1, -1], [1, 1.5], [1, 0]])('refuses x = %f with ν = %f', (x, freedom) => expect(() => chiSquareTail(x, freedom)).toThrow(RangeError))
})
