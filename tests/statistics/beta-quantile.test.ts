import betainc from '@stdlib/math-base-special-betainc'
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {betaQuantile} from '../../src/statistics/beta-quantile.ts'
import {expectClose} from '../expect-close.ts'

const shape = fc.double({min: 0.2, max: 200, noNaN: true}), share = fc.double({min: 1e-6, max: 1 - 1e-6, noNaN: true})

describe('betaQuantile(probability, a, b)', () => {
  it('is where it can be worked by hand: x = p^(1/a) for b = 1, the middle of an even curve, 1 − (1 − p)^(1/b) for a = 1', () => {
    fc.assert(fc.property(share, shape, (p, a) => {
      expectClose(betaQuantile(p, a, 1), p ** (1 / a), 1e-9, {p, a})
      expectClose(betaQuantile(p, 1, a), -Math.expm1(Math.log1p(-p) / a), 1e-9, {p, a})
      expectClose(betaQuantile(0.5, a, a), 0.5, 1e-9, {a})
    }))
  })

  it('undoes the incomplete beta function, and mirrors', () => {
    fc.assert(fc.property(share, shape, shape, (p, a, b) => {
      const x = betaQuantile(p, a, b)
      expect(x).toBeGreaterThanOrEqual(0)
      expect(x).toBeLessThanOrEqual(1)
      if (x > 1e-300 && x < 1 - 1e-10) expectClose(betainc(x, a, b, true, false), p, 1e-9, {p, a, b})
      expectClose(x, 1 - betaQuantile(1 - p, b, a), 1e-9, {p, a, b})
    }), {numRuns: 60})
  })

  it('is 0 and 1 at the ends', () => {
    expect(betaQuantile(0, 2, 3)).toBe(0)
    expect(betaQuantile(1, 2, 3)).toBe(1)
  })
  it('gives the value of its example', () => expectClose(betaQuantile(0.025, 3, 48), 0.0125, 0.00005))
  it.each([[-0.1, 1, 1], [1.1, 1, 1], [NaN, 1, 1], [0.5, 0, 1], [0.5, 1, NaN]])('refuses %f of %f and %f', (p, a, b) => {
    expect(() => betaQuantile(p, a, b)).toThrow(RangeError)
  })
})
