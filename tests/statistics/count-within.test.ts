import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {countWithin} from '../../src/statistics/count-within.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'

describe('countWithin(values, middle, part)', () => {
  it('counts a bird exactly on a limit as inside, whatever rounding does to the limit', () => {
    // 0.1 · 1.1 and its like are no exact doubles; in whole tenths of a gram the comparison is exact
    fc.assert(fc.property(fc.integer({min: 1, max: 100_000}), middle => {
      const values = [middle * 9, middle * 11, middle * 9 - 1, middle * 11 + 1].map(tenths => tenths / 10)
      expect(countWithin(values, middle, 0.1), `${middle}`).toBe(2)
    }))
  })

  it('agrees with counting in whole numbers', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 1, max: 4000}), {minLength: 1, maxLength: 40}), values => {
      const sum = values.reduce((all, value) => all + value, 0), n = values.length
      // |x − Σ/n| ≤ Σ/10n, multiplied by 10n
      const twin = values.filter(value => Math.abs(10 * n * value - 10 * sum) <= sum).length
      expect(countWithin(values, meanAndDeviation(values).mean, 0.1)).toBe(twin)
    }))
  })

  it('gives the value of its example', () => expect(countWithin([945, 1050, 1155, 1156], 1050, 0.1)).toBe(3))
  it('counts nobody among nobody', () => expect(countWithin([], 1050, 0.1)).toBe(0))

  it.each([[0, 0.1], [-1, 0.1], [NaN, 0.1], [1, -0.1], [1, NaN]])('refuses a middle of %f and a part of %f', (middle, part) => {
    expect(() => countWithin([1], middle, part)).toThrow(RangeError)
  })
})
