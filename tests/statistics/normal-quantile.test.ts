import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {expectClose} from '../expect-close.ts'

/** Area under the normal curve from 0 to z by Simpson's rule: the slow twin, going the other way. */
function areaUpTo(z: number, strips = 2000): number {
  const height = (x: number) => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI)
  const width = z / strips
  let sum = height(0) + height(z)
  for (let strip = 1; strip < strips; strip++) sum += height(strip * width) * (strip % 2 === 1 ? 4 : 2)
  return (sum * width) / 3
}

describe('normalQuantile(level)', () => {
  it('holds the stated share of the curve between −z and z', () => {
    fc.assert(fc.property(fc.double({min: 0.01, max: 0.9999, noNaN: true}), level => {
      expectClose(2 * areaUpTo(normalQuantile(level)), level, 1e-11, {level})
    }), {numRuns: 50})
  })

  it('is the z that intervals use when no other is given', () => expectClose(normalQuantile(0.95), 1.959963984540054, 1e-15))

  it.each([0, 1, -0.1, 1.1, NaN])('refuses the level %f', level => {
    expect(() => normalQuantile(level)).toThrow(RangeError)
  })
})
