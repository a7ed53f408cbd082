import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {livabilityDifference} from '../../src/statistics/livability-difference.ts'
import {livabilityOfFamilies} from '../../src/statistics/livability-of-families.ts'
import type {Watched} from '../../src/statistics/livability.ts'
import {shareDifference} from '../../src/statistics/share-difference.ts'
import {expectClose} from '../expect-close.ts'

const bird = fc.record({age: fc.integer({min: 1, max: 80}), died: fc.boolean()})
const flock = fc.array(fc.array(bird, {minLength: 1, maxLength: 5}), {minLength: 1, maxLength: 9})
const plainly = (alive: number, n: number): Watched[] => Array.from({length: n}, (_, place) => (place < alive ? {age: 60, died: false} : {age: 20, died: true}))

function lived(families: readonly (readonly Watched[])[]) {
  const got = livabilityOfFamilies(families, 56)
  if (!got) throw new Error('nothing is known')
  return got
}

describe('livabilityDifference(one, other)', () => {
  it('is Newcombe’s of two shares where no bird left and families are few', () => {
    const got = livabilityDifference(lived([plainly(56, 70)]), lived([plainly(48, 80)])), his = shareDifference({k: 56, n: 70}, {k: 48, n: 80})
    expectClose(got.low, 0.0524, 5e-5) // Newcombe 1998, Stat. Med. 17:873–890, Table II, (a), method 10
    expectClose(got.high, his.high, 1e-9)
  })
  it('lies between its limits and −1 and 1, and turns round with the groups', () => {
    fc.assert(fc.property(flock, flock, (a, b) => {
      const one = livabilityOfFamilies(a, 56), other = livabilityOfFamilies(b, 56)
      if (!one || !other) return
      const got = livabilityDifference(one, other), back = livabilityDifference(other, one)
      expectClose(got.difference, one.share - other.share, 1e-12)
      expectClose(got.low, -back.high, 1e-9)
      expect(got.low).toBeGreaterThanOrEqual(-1)
      expect(got.low).toBeLessThanOrEqual(got.difference + 1e-12)
      expect(got.high).toBeGreaterThanOrEqual(got.difference - 1e-12)
    }))
  })
  it('is narrower by families than each group’s own limits joined, since both seldom err alike', () => {
    const families = Array.from({length: 6}, (_, place) => plainly(4 + (place % 3), 7)), one = lived(families)
    const got = livabilityDifference(one, one)
    expect(got.high - got.low).toBeLessThan(2 * Math.hypot(one.share - one.low, one.high - one.share))
  })
})
