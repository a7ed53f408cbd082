import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {median} from '../../src/statistics/median.ts'
import {expectClose} from '../expect-close.ts'

describe('median(values)', () => {
  it('is 299.85 of Michelson’s hundred measurements of the speed of light', () => {
    // NIST/SEMATECH e-Handbook, 1.4.2.4 and the data set Michelso: 299.85 is the middle of a hundred (as thousands of km/s). First twenty here, their middle by hand
    const first = [299.85, 299.74, 299.9, 300.07, 299.93, 299.85, 299.95, 299.98, 299.98, 299.88, 300, 299.98, 299.93, 299.65, 299.76, 299.81, 300, 300, 299.96, 299.96]
    expectClose(median(first), 299.94, 0.0101)
  })

  it('leaves as many below as above, and does not mind the order', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: -50, max: 50}), {minLength: 1, maxLength: 30}), values => {
      const middle = median(values)
      const below = values.filter(value => value < middle).length, above = values.filter(value => value > middle).length
      expect(below).toBeLessThanOrEqual(values.length / 2)
      expect(above).toBeLessThanOrEqual(values.length / 2)
      expect(median([...values].reverse())).toBe(middle)
    }))
  })

  it('is where the sum of distances is least', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: -50, max: 50}), {minLength: 1, maxLength: 20}), fc.integer({min: -60, max: 60}), (values, elsewhere) => {
      const far = (from: number) => values.reduce((sum, value) => sum + Math.abs(value - from), 0)
      expect(far(median(values))).toBeLessThanOrEqual(far(elsewhere))
    }))
  })

  it('gives the value of its example, and leaves the values as they are', () => expect(median(Object.freeze([7, 2, 4, 9]))).toBe(5.5))
  it('holds the largest numbers', () => expect(median([Number.MAX_VALUE, Number.MAX_VALUE])).toBe(Number.MAX_VALUE))
  it.each([[[]], [[1, NaN]], [[Infinity]]])('refuses %j', values => expect(() => median(values)).toThrow(RangeError))
})
