import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {familyJackknife} from '../../src/statistics/family-jackknife.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'
import '../seeded.ts'

const leftOut = (values: readonly number[]): number[] => values.map((_, place) => meanAndDeviation(values.filter((_each, other) => other !== place)).mean)

describe('familyJackknife(all, without)', () => {
  it('gives the value of its example', () => {
    // by hand: 1 to 5, mean 3, s²/n = 2.5/5 = 0.5; t of 4 degrees 2.7764 (Fisher & Yates, table III): 3 ± 1.9632
    const found = familyJackknife(3, [3.5, 3.25, 3, 2.75, 2.5])
    expectClose(found?.low ?? NaN, 1.0368, 5e-5)
    expectClose(found?.high ?? NaN, 4.9632, 5e-5)
  })

  it('is Student’s interval of a mean where every family is one', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: -50, max: 50}), {minLength: 5, maxLength: 12}), values => {
      const {n, mean, sd} = meanAndDeviation(values), found = familyJackknife(mean, leftOut(values))
      if (new Set(values).size === 1) expect(found).toBeNull()
      else expectClose(found?.high ?? NaN, mean + studentQuantile(0.95, n - 1) * (sd ?? NaN) / Math.sqrt(n), 1e-9)
    }))
  })

  it('says nothing under five families, nor where none makes a difference, and refuses what is no number', () => {
    expect(familyJackknife(1, [1, 2, 3, 4])).toBeNull()
    expect(familyJackknife(0.25, [0.25, 0.25, 0.25, 0.25, 0.25, 0.25])).toBeNull()
    expect(() => familyJackknife(NaN, [1, 2, 3, 4, 5])).toThrow(RangeError)
  })
})
