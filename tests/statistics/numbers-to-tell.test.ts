import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {countsToTell, differenceTold, timesToTell} from '../../src/statistics/numbers-to-tell.ts'
import {shareDifference} from '../../src/statistics/share-difference.ts'
import {chance} from '../findings/vigour-book.ts'

describe('countsToTell(one, other, wish)', () => {
  it('gives the numbers of the tables', () => {
    // 50 against 60 per cent, two-sided 5 %, power 80 %: 388 in each group, as tables without the continuity correction have it (from memory)
    expect(countsToTell(0.6, 0.5)).toBe(388)
    expect(countsToTell(0.5, 0.6)).toBe(388)
    // the same with power 90 %: 519
    expect(countsToTell(0.6, 0.5, {power: 0.9})).toBe(519)
  })

  it('tells as often as it promises in flocks drawn by chance', () => {
    const {uniform} = chance(11), n = countsToTell(0.8, 0.65)
    const drawn = (share: number) => Array.from({length: n}, () => uniform() < share).filter(Boolean).length
    const told = Array.from({length: 600}, () => shareDifference({k: drawn(0.8), n}, {k: drawn(0.65), n})).filter(({low, high}) => low > 0 || high < 0).length
    expect(told / 600).toBeGreaterThan(0.76)
    expect(told / 600).toBeLessThan(0.84)
  })

  it('is more the closer the shares and the surer one wants to be', () => {
    fc.assert(fc.property(fc.double({min: 0.05, max: 0.95, noNaN: true}), fc.double({min: 0.01, max: 0.2, noNaN: true}), (share, apart) => {
      const other = share > 0.5 ? share - apart : share + apart, nearer = share > 0.5 ? share - apart / 2 : share + apart / 2
      expect(countsToTell(share, nearer)).toBeGreaterThanOrEqual(countsToTell(share, other))
      expect(countsToTell(share, other, {power: 0.95})).toBeGreaterThanOrEqual(countsToTell(share, other))
    }))
  })

  it('refuses what is no share, and shares that are the same', () => {
    expect(() => countsToTell(1.2, 0.5)).toThrow(RangeError)
    expect(() => countsToTell(0.5, 0.5)).toThrow(RangeError)
    expect(() => countsToTell(0.5, 0.6, {power: 0.4})).toThrow(RangeError)
  })
})

describe('timesToTell(error, effect, wish)', () => {
  it('is 1 where the effect is 1.96 and 0.84 errors', () => {
    // z of 0.975 and of 0.8: 1.959964 and 0.841621 (NIST/SEMATECH 1.3.6.7.1)
    expect(timesToTell(1, 1.959964 + 0.841621)).toBeCloseTo(1, 5)
    expect(timesToTell(0.02, 0.03)).toBeCloseTo(3.4884, 3)
    expect(timesToTell(0.02, -0.03)).toBe(timesToTell(0.02, 0.03))
  })

  it('is four times as much for half the effect', () => {
    fc.assert(fc.property(fc.double({min: 0.001, max: 10, noNaN: true}), fc.double({min: 0.001, max: 10, noNaN: true}), (error, effect) => {
      expect(timesToTell(error, effect / 2) / timesToTell(error, effect)).toBeCloseTo(4, 9)
    }))
  })

  it('refuses an effect of nothing', () => {
    expect(() => timesToTell(1, 0)).toThrow(RangeError)
    expect(() => timesToTell(-1, 1)).toThrow(RangeError)
  })
})

describe('differenceTold(one, other, wish)', () => {
  it('is what as many birds of each tell', () => {
    expect(differenceTold(16, 16)).toBeCloseTo(0.9905, 4)
    // 2·(2.8/d)² birds in each group is the rule of thumb: 63 for half a standard deviation
    expect(differenceTold(63, 63)).toBeCloseTo(0.5, 2)
    expect(differenceTold(5, 40)).toBe(differenceTold(40, 5))
    expect(() => differenceTold(0, 5)).toThrow(RangeError)
  })
})
