import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'

const weights = fc.array(fc.integer({min: 1, max: 9999}), {minLength: 2, maxLength: 60})

/** The same in whole numbers of any size, no rounding until the last line: n·Σx² − (Σx)² = n(n − 1)·s². */
function exactly(values: readonly number[]): {mean: number; sd: number} {
  const n = BigInt(values.length)
  const sum = values.reduce((all, value) => all + BigInt(value), 0n)
  const squares = values.reduce((all, value) => all + BigInt(value) ** 2n, 0n)
  return {mean: Number(sum) / Number(n), sd: Math.sqrt(Number(n * squares - sum ** 2n) / Number(n * (n - 1n)))}
}

describe('meanAndDeviation(values)', () => {
  it('agrees with sums in whole numbers', () => {
    fc.assert(fc.property(weights, values => {
      const got = meanAndDeviation(values), twin = exactly(values)
      expectClose(got.mean, twin.mean, 1e-12 * twin.mean, values)
      expectClose(got.sd ?? NaN, twin.sd, 1e-9 * Math.max(1, twin.sd), values)
    }))
  })

  it('moves with the scale: adding shifts the mean alone, multiplying stretches both', () => {
    fc.assert(fc.property(weights, fc.integer({min: -5000, max: 5000}), fc.integer({min: 1, max: 50}), (values, shift, stretch) => {
      const {mean, sd} = meanAndDeviation(values)
      const shifted = meanAndDeviation(values.map(value => value + shift)), stretched = meanAndDeviation(values.map(value => value * stretch))
      expectClose(shifted.mean, mean + shift, 1e-9)
      expectClose(shifted.sd ?? NaN, sd ?? NaN, 1e-9)
      expectClose(stretched.mean, mean * stretch, 1e-9 * stretch * mean)
      expectClose(stretched.sd ?? NaN, (sd ?? NaN) * stretch, 1e-8 * stretch)
    }))
  })

  it('does not mind the order, nor change the list it is given', () => {
    fc.assert(fc.property(weights, values => {
      const frozen = Object.freeze([...values])
      const {mean, sd} = meanAndDeviation(frozen), back = meanAndDeviation([...values].reverse())
      expectClose(back.mean, mean, 1e-11 * mean)
      expectClose(back.sd ?? NaN, sd ?? NaN, 1e-9)
    }))
  })

  it('gives one value a mean and no spread', () => expect(meanAndDeviation([2360])).toEqual({n: 1, mean: 2360, sd: null}))
  it('gives equal values a spread of 0', () => expect(meanAndDeviation([0.1, 0.1, 0.1]).sd).toBe(0))

  it('gives the value of its example', () => {
    const {mean, sd} = meanAndDeviation([205, 215, 202])
    expectClose(mean, 207.33, 0.005)
    expectClose(sd ?? NaN, 6.81, 0.005)
  })

  it.each([[[]], [[1, NaN]], [[Infinity, 1]]])('refuses %j', values => {
    expect(() => meanAndDeviation(values)).toThrow(RangeError)
  })
})
