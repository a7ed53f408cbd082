import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {binomialTail} from '../../src/statistics/binomial-tail.ts'
import {expectClose} from '../expect-close.ts'

/** The twin, in whole numbers: Σ C(n, x)·a^x·(b − a)^(n − x) / b^n for a chance of a/b. */
function inWholeNumbers(k: number, n: number, a: number, b: number): number {
  let sum = 0n, ways = 1n
  for (let x = 0; x <= n; x++) {
    if (x >= k) sum += ways * BigInt(a) ** BigInt(x) * BigInt(b - a) ** BigInt(n - x)
    ways = (ways * BigInt(n - x)) / BigInt(x + 1)
  }
  return Number((sum * 10n ** 40n) / BigInt(b) ** BigInt(n)) / 1e40
}

describe('binomialTail(k, n, p)', () => {
  // Sedcole 1977, Crop Sci. 17:667–668: 23 plants for 3 of chance ¼ at 95 %, 22 do not do; 33 for 10 of ½ at 99 %, 32 miss by a hair. To six decimals: independent code.
  it.each([[10, 32, 1 / 2, 0.989969], [2, 40, 3 / 32, 0.899837], [1, 16, 1 / 4, 1 - 0.010023]])('is %i of %i at %f', (k, n, p, expected) => expectClose(binomialTail(k, n, p), expected, 1e-6))
  it('passes 95 % with the printed number, not with one less', () => {
    expect(binomialTail(3, 23, 1 / 4)).toBeGreaterThanOrEqual(0.95)
    expect(binomialTail(3, 22, 1 / 4)).toBeLessThan(0.95)
  })

  it('is the sum in whole numbers, far into either tail', () => {
    fc.assert(fc.property(fc.integer({min: 0, max: 120}), fc.nat(120), fc.integer({min: 1, max: 63}), (n, k, a) => {
      const expected = inWholeNumbers(Math.min(k, n), n, a, 64)
      expectClose(binomialTail(Math.min(k, n), n, a / 64), expected, 1e-11 * expected + 1e-39, {n, k, a})
    }), {numRuns: 200})
  })

  it('and fewer of the others make 1', () => {
    fc.assert(fc.property(fc.integer({min: 0, max: 400}), fc.nat(400), fc.double({min: 0, max: 1, noNaN: true}), (n, k, p) => {
      expectClose(binomialTail(k, n, p) + (k > n ? 1 : binomialTail(n - k + 1, n, 1 - p)), 1, 1e-11, {n, k, p})
    }))
  })

  it('has its ends', () => {
    expect([binomialTail(0, 0, 0.3), binomialTail(0, 5, 0), binomialTail(1, 5, 0), binomialTail(5, 5, 1), binomialTail(6, 5, 1)]).toEqual([1, 1, 0, 1, 0])
  })

  it.each([[-1, 3, 0.5], [1.5, 3, 0.5], [1, -3, 0.5], [1, 3, -0.1], [1, 3, 1.1], [1, 3, NaN]])('refuses %f of %f at %f', (k, n, p) => expect(() => binomialTail(k, n, p)).toThrow(RangeError))
})
