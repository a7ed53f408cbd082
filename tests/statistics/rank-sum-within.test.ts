import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {groupsOfBoth, rankSumWithin, type Graded} from '../../src/statistics/rank-sum-within.ts'
import {expectClose} from '../expect-close.ts'

const of = (males: readonly number[], females: readonly number[] = []): Graded[] => [...males.map(grade => ({group: 'male', grade})), ...females.map(grade => ({group: 'female', grade}))]
const grades = (maxLength: number) => fc.array(fc.integer({min: 1, max: 6}), {maxLength})

/** T of every way to say which birds of each sex are of the first step. */
function byEveryDeal(groups: ReturnType<typeof groupsOfBoth>): number {
  const rank = (all: readonly number[], value: number): number => all.filter(other => other < value).length + (all.filter(other => other === value).length + 1) / 2
  const parts = groups.map(({one, other}) => {
    const all = [...one, ...other], t = (own: readonly number[]): number => own.reduce((sum, value) => sum + rank(all, value), 0) / (all.length + 1) - one.length / 2
    const ways = Array.from({length: 2 ** all.length}, (_, subset) => all.filter((_, place) => (subset >> place) & 1)).filter(own => own.length === one.length).map(t)
    return {seen: t(one), ways}
  })
  const seen = Math.abs(parts.reduce((sum, part) => sum + part.seen, 0))
  const sums = parts.reduce<number[]>((before, {ways}) => before.flatMap(sum => ways.map(more => sum + more)), [0])
  return sums.filter(sum => Math.abs(sum) >= seen - 1e-9).length / sums.length
}

describe('rankSumWithin(one, other)', () => {
  it('is worked by hand of two cocks against one and a hen against two', () => {
    // cocks 8, 9 against 7: R = 5 of n = 3; a hen 4 against 3, 5: R = 2 of 3. T = 5/4 + 2/4 = 7/4, its mean (2 + 1)/2; of the 3 · 3 ways to deal six lie as far off
    const found = rankSumWithin(of([8, 9], [4]), of([7], [3, 5]))
    expect(found).toMatchObject({kind: 'compared', how: 'exact', u: 3, superiority: 0.75})
    expectClose(found.kind === 'compared' ? found.p : NaN, 6 / 9, 1e-12)
  })

  it('is every way to deal the grades inside the sexes', () => {
    fc.assert(fc.property(grades(5), grades(4), grades(4), grades(4), (a, b, c, d) => {
      const one = of(a, b), other = of(c, d), found = rankSumWithin(one, other)
      if (found.kind === 'compared') expectClose(found.p, byEveryDeal(groupsOfBoth(one, other)), 1e-9)
    }), {numRuns: 50})
  })

  it('is the rank test of one sex, exact and by the curve', () => {
    fc.assert(fc.property(grades(40), grades(40), (one, other) => {
      const [within, plain] = [rankSumWithin(of(one), of(other)), rankSum(one, other)]
      expect(within.kind).toBe(plain.kind)
      if (within.kind !== 'compared' || plain.kind !== 'compared') return
      expect([within.how, within.u]).toEqual([plain.how, plain.u])
      expectClose(within.superiority, plain.superiority, 1e-12)
      expectClose(within.p, plain.p, 1e-9)
    }), {numRuns: 60})
  })

  it('does not change when all cocks are graded higher, nor when a sex of one step only is added', () => {
    fc.assert(fc.property(grades(6), grades(6), grades(6), grades(6), (a, b, c, d) => {
      const found = rankSumWithin(of(a, b), of(c, d))
      expect(rankSumWithin(of(a.map(grade => grade + 10), b), of(c.map(grade => grade + 10), d))).toEqual(found)
      expect(rankSumWithin([...of(a, b), {group: 'unknown', grade: 9}], of(c, d))).toEqual(found)
    }), {numRuns: 50})
  })

  it('finds nothing where only the share of cocks changes, and the pooled test does', () => {
    // cocks graded 6 to 8, hens 3 to 5, in both steps; half cocks, then a fifth
    const cocks = (n: number) => Array.from({length: n}, (_, place) => 6 + (place % 3)), hens = (n: number) => Array.from({length: n}, (_, place) => 3 + (place % 3))
    const one = of(cocks(24), hens(24)), other = of(cocks(9), hens(39)), within = rankSumWithin(one, other), pooled = rankSum(one.map(({grade}) => grade), other.map(({grade}) => grade))
    expect(within).toMatchObject({kind: 'compared', how: 'asymptotic', u: 24 * 9 / 2 + 24 * 39 / 2})
    expectClose(within.kind === 'compared' ? within.superiority : NaN, 0.5, 1e-12)
    expectClose(within.kind === 'compared' ? within.p : NaN, 1, 1e-9)
    expect(pooled.kind === 'compared' ? pooled.p : 1).toBeLessThan(0.01)
  })

  it('says why there is none, and refuses what is no grade', () => {
    expect(rankSumWithin(of([1]), of([], [1]))).toEqual({kind: 'few'})
    expect(rankSumWithin(of([2, 2], [1]), of([2], [1]))).toEqual({kind: 'all-alike'})
    expect(() => rankSumWithin(of([NaN]), of([1]))).toThrow(RangeError)
    expectClose((r => (r.kind === 'compared' ? r.p : NaN))(rankSumWithin(of([8], [5]), of([7], [4]))), 0.5, 1e-12)
  })
})
