import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {freedomOfTwo} from '../../src/statistics/freedom-of-two.ts'
import {welchT} from './welch-t.ts'
import {expectClose} from '../expect-close.ts'

const spread = fc.record({share: fc.double({min: 0, max: 1, noNaN: true}), effective: fc.double({min: 1, max: 200, noNaN: true}), families: fc.integer({min: 2, max: 30})})

describe('freedomOfTwo(one, other)', () => {
  it('is Welch’s, whose printed 17.776 of Student’s sleepers comes of the same formula', () => {
    fc.assert(fc.property(spread, spread, (one, other) => {
      const mean = ({share, effective, families}: typeof one) => ({n: families, mean: share, sd: Math.sqrt(((share * (1 - share)) / effective) * families)})
      const welch = welchT(mean(one), mean(other))
      if (welch) expectClose(freedomOfTwo(one, other), welch.freedom, 1e-6 * welch.freedom)
    }))
  })

  it('lies between the smaller group’s and both groups’, and does not mind their order', () => {
    fc.assert(fc.property(spread, spread, (one, other) => {
      const got = freedomOfTwo(one, other)
      expect(got).toBeGreaterThanOrEqual(Math.min(one.families, other.families) - 1 - 1e-9)
      expect(got).toBeLessThanOrEqual(one.families + other.families - 2 + 1e-9)
      expectClose(freedomOfTwo(other, one), got, 1e-9 * got)
    }))
  })

  it('is that of both where neither shows any spread, and of one alone where only it does', () => {
    expect(freedomOfTwo({share: 1, effective: 9, families: 5}, {share: 0, effective: 9, families: 6})).toBe(9)
    expect(freedomOfTwo({share: 0.5, effective: 9, families: 5}, {share: 1, effective: 9, families: 6})).toBe(4)
  })
  it('gives the value of its example', () => expectClose(freedomOfTwo({share: 0.8, effective: 20, families: 5}, {share: 0.8, effective: 20, families: 5}), 8, 1e-12))
  it('refuses a single family and no birds', () => {
    expect(() => freedomOfTwo({share: 0.5, effective: 9, families: 1}, {share: 0.5, effective: 9, families: 5})).toThrow(RangeError)
    expect(() => freedomOfTwo({share: 0.5, effective: 0, families: 5}, {share: 0.5, effective: 9, families: 5})).toThrow(RangeError)
  })
})
