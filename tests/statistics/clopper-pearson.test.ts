import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {binomialTail} from '../../src/statistics/binomial-tail.ts'
import {clopperPearson} from '../../src/statistics/clopper-pearson.ts'
import {expectClose} from '../expect-close.ts'

const counts = fc.integer({min: 1, max: 400}).chain(n => fc.tuple(fc.integer({min: 0, max: n}), fc.constant(n)))

/** P(X ≤ k) term by term. */
function atMost(k: number, n: number, p: number): number {
  let term = (1 - p) ** n, sum = term
  for (let x = 1; x <= k; x++) {
    term *= ((n - x + 1) / x) * (p / (1 - p))
    sum += term
  }
  return sum
}

describe('clopperPearson(k, n)', () => {
  // Newcombe 1998, Stat. Med. 17:857–872, table I, method 5: printed to four decimals
  it.each([[81, 263, 0.2527, 0.3676], [15, 148, 0.0578, 0.1617], [0, 20, 0, 0.1684], [1, 29, 0.0009, 0.1776]])('gives the printed limits for %i of %i', (k, n, low, high) => {
    const got = clopperPearson(k, n)
    expectClose(got.low, low, 0.00005)
    expectClose(got.high, high, 0.00005)
  })

  it('at 99 % is what R’s binom.test(3, 50) prints', () => {
    const got = clopperPearson(3, 50, 0.99)
    expectClose(got.low, 0.006872, 5e-7)
    expectClose(got.high, 0.202706, 5e-7)
  })

  it('is a closed form where nothing or everything is counted', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 500}), n => {
      expectClose(clopperPearson(0, n).high, 1 - 0.025 ** (1 / n), 1e-12)
      expectClose(clopperPearson(n, n).low, 0.025 ** (1 / n), 1e-12)
      expect(Object.is(clopperPearson(0, n).low, 0)).toBe(true)
      expect(clopperPearson(n, n).high).toBe(1)
    }))
  })

  it('leaves 2.5 % outside at either end, by adding up the terms', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 60}).chain(n => fc.tuple(fc.integer({min: 1, max: n}), fc.constant(n))), ([k, n]) => {
      const {low, high} = clopperPearson(k, n)
      expectClose(1 - atMost(k - 1, n, low), 0.025, 1e-10, {k, n})
      expectClose(binomialTail(k, n, low), 0.025, 1e-10, {k, n})
      if (k < n) expectClose(atMost(k, n, high), 0.025, 1e-10, {k, n})
    }), {numRuns: 60})
  })

  it('holds the share and mirrors', () => {
    fc.assert(fc.property(counts, ([k, n]) => {
      const {low, high} = clopperPearson(k, n), mirror = clopperPearson(n - k, n)
      expect(low).toBeLessThanOrEqual(k / n)
      expect(high).toBeGreaterThanOrEqual(k / n)
      expectClose(low, 1 - mirror.high, 1e-14)
    }), {numRuns: 60})
  })

  it('covers every true share 95 times in a hundred or more, by adding up all outcomes', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 60}), fc.double({min: 0.001, max: 0.999, noNaN: true}), (n, p) => {
      let covered = 0
      for (let k = 0; k <= n; k++) {
        const {low, high} = clopperPearson(k, n)
        if (low <= p && p <= high) covered += atMost(k, n, p) - (k > 0 ? atMost(k - 1, n, p) : 0)
      }
      expect(covered).toBeGreaterThanOrEqual(0.95 - 1e-9)
    }), {numRuns: 40})
  })

  it('gives the value of its example', () => {
    const {low, high} = clopperPearson(3, 50)
    expectClose(low, 0.0125, 0.00005)
    expectClose(high, 0.1655, 0.00005)
  })
  it.each([[1, 0], [-1, 4], [5, 4], [1.5, 4], [NaN, 4]])('refuses %f of %f', (k, n) => expect(() => clopperPearson(k, n)).toThrow(RangeError))
  it.each([0, 1, NaN])('refuses the level %f', level => expect(() => clopperPearson(1, 2, level)).toThrow(RangeError))
})
