import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {midRanks, rankSum, waysToDeal} from '../../src/statistics/rank-sum.ts'
import {expectClose} from '../expect-close.ts'

const grades = fc.array(fc.integer({min: 1, max: 10}), {minLength: 1, maxLength: 7})

/** Every way to say which birds are of the first group. */
function byEveryDeal(one: readonly number[], other: readonly number[]): number {
  const all = [...one, ...other]
  const beaten = (group: readonly number[], rest: readonly number[]) =>
    group.reduce((sum, a) => sum + rest.reduce((part, b) => part + (a > b ? 1 : a === b ? 0.5 : 0), 0), 0)
  const middle = (one.length * other.length) / 2, seen = Math.abs(beaten(one, other) - middle)
  let total = 0, extreme = 0
  for (let subset = 0; subset < 2 ** all.length; subset++) {
    const inside = all.filter((_, place) => (subset >> place) & 1)
    if (inside.length !== one.length) continue
    total += 1
    if (Math.abs(beaten(inside, all.filter((_, place) => !((subset >> place) & 1))) - middle) >= seen - 1e-9) extreme += 1
  }
  return extreme / total
}

describe('rankSum(one, other)', () => {
  it('permeability of a membrane at term and earlier', () => {
    // Hollander & Wolfe 1973, Nonparametric Statistical Methods, p. 69, as in R's help of wilcox.test: W = 35, one-sided P = 0.1272; without ties the two-sided P is twice that
    const got = rankSum([0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46], [1.15, 0.88, 0.9, 0.74, 1.21])
    expect(got).toMatchObject({kind: 'compared', how: 'exact', u: 35, superiority: 0.7})
    if (got.kind === 'compared') expectClose(got.p, 2 * 0.1272, 0.0001)
  })

  it('is the share of every way to deal the grades, ties and all', () => {
    fc.assert(fc.property(grades, fc.array(fc.integer({min: 1, max: 10}), {minLength: 1, maxLength: 5}), (one, other) => {
      const got = rankSum(one, other)
      if (got.kind !== 'compared') return
      const beaten = one.reduce((sum, a) => sum + other.reduce((part, b) => part + (a > b ? 1 : a === b ? 0.5 : 0), 0), 0)
      expectClose(got.u, beaten, 1e-12)
      expectClose(got.p, byEveryDeal(one, other), 1e-9, {one, other})
    }), {numRuns: 60})
  })

  it('comes near the exact P by the normal curve, with many birds and ties', () => {
    // 70 birds go by the curve; 60 are counted out; the same shares of grades give nearly the same z, so the P of 60 lies between those of two curves
    const one = Array.from({length: 35}, (_, place) => 4 + (place % 5)), other = Array.from({length: 35}, (_, place) => 3 + (place % 6))
    const curve = rankSum(one, other), counted = rankSum(one.slice(0, 30), other.slice(0, 30))
    if (curve.kind !== 'compared' || counted.kind !== 'compared') throw new Error('not compared')
    expect([curve.how, counted.how]).toEqual(['asymptotic', 'exact'])
    expectClose(curve.superiority, counted.superiority, 0.02)
    expect(curve.p).toBeLessThan(counted.p)
    expect(counted.p / curve.p).toBeLessThan(2.5)
  })

  it('turns over, and asks for the order alone', () => {
    fc.assert(fc.property(grades, grades, (one, other) => {
      const got = rankSum(one, other), back = rankSum(other, one), bent = rankSum(one.map(grade => grade ** 3), other.map(grade => grade ** 3))
      expect(bent).toEqual(got)
      expect(back.kind).toBe(got.kind)
      if (got.kind === 'compared' && back.kind === 'compared') {
        expectClose(got.superiority + back.superiority, 1, 1e-12)
        expectClose(back.p, got.p, 1e-12)
        expect(got.p).toBeGreaterThan(0)
        expect(got.p).toBeLessThanOrEqual(1)
      }
    }))
  })

  it('gives the value of its example', () => {
    const got = rankSum([7, 8, 8, 9], [5, 6, 7, 7, 8])
    expect(got).toMatchObject({u: 17, superiority: 0.85})
    if (got.kind === 'compared') expectClose(got.p, 0.1111, 0.00005)
  })
  it('says why there is none', () => {
    expect(rankSum([], [1])).toEqual({kind: 'few'})
    expect(rankSum([3, 3], [3])).toEqual({kind: 'all-alike'})
  })
  it('refuses what is no grade', () => expect(() => rankSum([NaN], [1])).toThrow(RangeError))
})

describe('midRanks, waysToDeal', () => {
  it('share a place, and add up to n(n + 1)', () => {
    expect(midRanks([5, 7, 7])).toEqual({doubled: [2, 5, 5], ties: [1, 2]})
    fc.assert(fc.property(fc.array(fc.integer({min: 0, max: 6}), {maxLength: 20}), values => {
      const {doubled, ties} = midRanks(values), n = values.length
      expect(doubled.reduce((sum, rank) => sum + rank, 0)).toBe(n * (n + 1))
      expect(ties.reduce((sum, count) => sum + count, 0)).toBe(n)
    }))
  })

  it('count every choice once', () => {
    expect([...waysToDeal([1, 2, 3], 2)]).toEqual([0, 0, 0, 1, 1, 1, 0])
    // C(10, 4) = 210
    expect(waysToDeal([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 4).reduce((sum, count) => sum + count, 0)).toBe(210)
  })
})
