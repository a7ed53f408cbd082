import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {meanOfBirds} from '../../src/findings/mean-of-birds.ts'
import {expectClose} from '../expect-close.ts'

describe('meanOfBirds(values)', () => {
  it('is worked by hand: 2, 4, 4, 4, 6 have mean 4, sd √2, and limits 2.776445 · √(2/5) off it', () => {
    // t of 4 degrees of freedom at 95 %: 2.776445 in the common printed tables
    const {n, mean, sd, interval} = meanOfBirds([2, 4, 4, 4, 6])
    expect([n, mean]).toEqual([5, 4])
    expectClose(sd ?? NaN, Math.SQRT2, 1e-12)
    expectClose((interval?.high ?? NaN) - 4, 2.776445 * Math.sqrt(0.4), 1e-6)
  })

  it('has no limits under five birds, no spread of one, and none of none', () => {
    expect(meanOfBirds([1, 2, 3, 4]).interval).toBeNull()
    expect(meanOfBirds([3])).toEqual({n: 1, mean: 3, sd: null, interval: null})
    expect(() => meanOfBirds([])).toThrow(RangeError)
  })

  it('law: the mean stands in the middle of its limits', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 100, max: 4000}), {minLength: 5, maxLength: 40}), values => {
      const {mean, interval} = meanOfBirds(values)
      expectClose(((interval?.low ?? NaN) + (interval?.high ?? NaN)) / 2, mean, 1e-6)
    }))
  })
})
