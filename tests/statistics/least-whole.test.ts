import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {clopperPearson} from '../../src/statistics/clopper-pearson.ts'
import {leastWhole} from '../../src/statistics/least-whole.ts'
import '../seeded.ts'

describe('leastWhole(from, most, holds)', () => {
  it('is what counting one by one finds', () => {
    fc.assert(fc.property(fc.integer({min: -20, max: 20}), fc.nat(300), fc.integer({min: -30, max: 400}), (from, more, mark) => {
      const most = from + more
      let slow: number | null = null
      for (let n = from; n <= most && slow === null; n++) if (n >= mark) slow = n
      expect(leastWhole(from, most, n => n >= mark)).toBe(slow)
    }))
  })

  it('asks seldom', () => {
    let asked = 0
    expect(leastWhole(0, 1_000_000, n => (asked += 1) > 0 && n >= 700_001)).toBe(700_001)
    expect(asked).toBeLessThan(45)
  })

  it('finds the chicks that are still wanting by Clopper and Pearson', () => {
    // the lower limit of k of k is 0.025^(1/k): by hand it reaches ½ at k = 6 (0.5407) and not at 5 (0.4782)
    expect(leastWhole(1, 100, k => clopperPearson(k, k).low >= 0.5)).toBe(6)
  })

  it('throws where there is nothing between', () => {
    expect(() => leastWhole(2, 1, () => true)).toThrow(RangeError)
    expect(() => leastWhole(0.5, 2, () => true)).toThrow(RangeError)
  })
})
