import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {welchT} from './welch-t.ts'
import {expectClose} from '../expect-close.ts'

function welch(...args: Parameters<typeof welchT>) {
  const got = welchT(...args)
  if (!got) throw new Error('no t')
  return got
}
const values = fc.array(fc.integer({min: 0, max: 400}), {minLength: 2, maxLength: 12})

describe('welchT(one, other)', () => {
  it('of Student’s sleep data', () => {
    // Student 1908, Biometrika 6:1; R: t.test(extra ~ group, sleep) prints t = -1.8608, df = 17.776, p-value = 0.07939, interval -3.3654832 0.2054832
    const one = meanAndDeviation([0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2]), other = meanAndDeviation([1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4])
    const got = welch(one, other)
    expectClose(got.t, -1.860813467, 1e-9)
    expectClose(got.freedom, 17.776473516, 1e-8)
    expectClose(got.p, 0.07939414, 1e-8)
    expectClose(got.interval.low, -3.365483, 1e-6)
    expectClose(got.interval.high, 0.205483, 1e-6)
  })

  it('of cars by country, from their means', () => {
    // NIST/SEMATECH e-Handbook, 1.3.5.3, AUTO83B.DAT: t −12.94627, 136.8750 degrees of freedom
    const got = welch({n: 249, mean: 20.14458, sd: 6.4147}, {n: 79, mean: 30.48101, sd: 6.10771})
    expectClose(got.t, -12.94627, 0.00001)
    expectClose(got.freedom, 136.875, 0.0001)
  })

  it('of chicks on two diets', () => {
    // R data set ChickWeight, day 21, diet 1 against diet 3; recomputed by independent code
    const one = meanAndDeviation([205, 215, 202, 157, 223, 157, 305, 98, 124, 175, 205, 96, 266, 142, 157, 117]), other = meanAndDeviation([256, 305, 147, 341, 373, 220, 178, 290, 272, 321])
    const got = welch(one, other)
    expectClose(got.t, -3.429307613, 1e-9)
    expectClose(got.freedom, 16.408244793, 1e-8)
    expectClose(got.p, 0.003336964, 1e-9)
  })

  it('turns over, holds its difference, has degrees of freedom between n − 1 and n₁ + n₂ − 2, and its interval holds nought when P is above 5 %', () => {
    fc.assert(fc.property(values, values, (first, second) => {
      const one = meanAndDeviation(first), other = meanAndDeviation(second), got = welchT(one, other)
      if (!got) return
      const back = welch(other, one)
      expectClose(back.t, -got.t, 1e-9 * Math.max(1, Math.abs(got.t)))
      expectClose(back.interval.low, -got.interval.high, 1e-7)
      expect(got.freedom).toBeGreaterThanOrEqual(Math.min(one.n, other.n) - 1 - 1e-9)
      expect(got.freedom).toBeLessThanOrEqual(one.n + other.n - 2 + 1e-9)
      if (Math.abs(got.p - 0.05) > 1e-9) expect(got.interval.low < 0 && got.interval.high > 0).toBe(got.p > 0.05)
    }))
  })

  it('says nothing of a single bird, nor where nobody strays', () => {
    expect(welchT({n: 1, mean: 3, sd: null}, {n: 3, mean: 2, sd: 1})).toBeNull()
    expect(welchT({n: 2, mean: 3, sd: 0}, {n: 3, mean: 2, sd: 0})).toBeNull()
  })
  it('refuses a level of 0', () => expect(() => welchT({n: 2, mean: 3, sd: 1}, {n: 3, mean: 2, sd: 1}, 0)).toThrow(RangeError))
})
