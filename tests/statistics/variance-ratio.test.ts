import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {fisherTail} from '../../src/statistics/fisher-f.ts'
import {varianceRatio} from '../../src/statistics/variance-ratio.ts'
import {expectClose} from '../expect-close.ts'

const spread = fc.record({sd: fc.double({min: 0.01, max: 1000, noNaN: true}), freedom: fc.integer({min: 1, max: 60})})

function ratio(...args: Parameters<typeof varianceRatio>) {
  const got = varianceRatio(...args)
  if (!got) throw new Error('no ratio')
  return got
}

describe('varianceRatio(one, other)', () => {
  it('of two batches of ceramic', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.9, JAHANMI2.DAT: F = 1.123037 on 239 and 239
    const got = ratio({sd: 65.54909, freedom: 239}, {sd: 61.85425, freedom: 239})
    expectClose(got.ratio, 1.123037, 0.000001)
    expectClose(got.p, 0.3704, 0.00005)
  })

  it('ends where the test just rejects', () => {
    fc.assert(fc.property(spread, spread, (one, other) => {
      const got = ratio(one, other)
      expectClose(fisherTail(got.ratio / got.interval.low, one.freedom, other.freedom), 0.025, 1e-9)
      expectClose(fisherTail(got.ratio / got.interval.high, one.freedom, other.freedom), 0.975, 1e-9)
    }), {numRuns: 60})
  })

  it('turns over, holds its ratio, and knows no unit', () => {
    fc.assert(fc.property(spread, spread, (one, other) => {
      const got = ratio(one, other), back = ratio(other, one), ounces = ratio({...one, sd: one.sd / 28.35}, {...other, sd: other.sd / 28.35})
      expectClose(back.interval.low * got.interval.high, 1, 1e-9)
      expectClose(back.p, got.p, 1e-9)
      expectClose(ounces.ratio, got.ratio, 1e-9 * got.ratio)
      expect(got.interval.low).toBeLessThan(got.ratio)
      expect(got.interval.high).toBeGreaterThan(got.ratio)
    }), {numRuns: 60})
  })

  it('says nothing where there is no spread', () => {
    expect(varianceRatio({sd: 0, freedom: 3}, {sd: 1, freedom: 3})).toBeNull()
    expect(varianceRatio({sd: 1, freedom: 3}, {sd: 0, freedom: 3})).toBeNull()
    expect(varianceRatio({sd: 0, freedom: 3}, {sd: 0, freedom: 3})).toBeNull()
  })
  it.each([[-1, 3], [NaN, 3], [1, 0], [1, 1.5]])('refuses an SD of %f on %f', (sd, freedom) => {
    expect(() => varianceRatio({sd, freedom}, {sd: 1, freedom: 2})).toThrow(RangeError)
  })
  it('refuses a level of 1', () => expect(() => varianceRatio({sd: 1, freedom: 1}, {sd: 1, freedom: 2}, 1)).toThrow(RangeError))
})
