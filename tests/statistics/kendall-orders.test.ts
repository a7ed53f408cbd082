import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {permutedScores, remaindersOf, type Ordered} from '../../src/statistics/kendall-orders.ts'
import {expectClose} from '../expect-close.ts'
import {ordersOf} from './every-order.ts'

const birds = fc.array(fc.tuple(fc.integer({min: 1, max: 4}), fc.integer({min: 1, max: 5})), {minLength: 1, maxLength: 6})
const distinct = (n: number): Ordered[] => Array.from({length: n}, (_, place): Ordered => [place, place])

describe('permutedScores(birds)', () => {
  it('counts the orders of four as printed', () => {
    // Kendall 1938, Biometrika 30:81–93, table of the frequency of S for n = 4: 1, 3, 5, 6, 5, 3, 1 of 24 at −6, −4 … 6 (from memory; the numbers of inversions, known since Rodrigues 1839)
    const found = [...permutedScores(distinct(4)) ?? []].sort(([a], [b]) => a - b)
    expect(found.map(([score]) => score)).toEqual([-6, -4, -2, 0, 2, 4, 6])
    expect(found.map(([, chance]) => Math.round(24 * chance))).toEqual([1, 3, 5, 6, 5, 3, 1])
  })

  it('is every order laid out', () => {
    fc.assert(fc.property(birds, all => {
      const counts = new Map<number, number>(), orders = ordersOf(all.map(([, other]) => other))
      for (const order of orders) {
        const score = all.reduce((sum, [one], place) => sum + all.slice(place + 1).reduce((inner, [next], later) => inner + Math.sign(one - next) * Math.sign((order[place] ?? 0) - (order[place + 1 + later] ?? 0)), 0), 0)
        counts.set(score, (counts.get(score) ?? 0) + 1)
      }
      const found = permutedScores(all)
      expect([...found?.keys() ?? []].sort()).toEqual([...counts.keys()].sort())
      for (const [score, chance] of found ?? []) expectClose(chance, (counts.get(score) ?? 0) / orders.length, 1e-12)
    }), {numRuns: 60})
  })

  it('goes through classes alike once', () => {
    expect(permutedScores(distinct(6))).toBe(permutedScores(distinct(6).map(([one, other]): Ordered => [10 + one, 3 * other])))
    expect(permutedScores([[1, 1], [2, 1], [3, 2]])).not.toBe(permutedScores([[1, 1], [1, 2], [3, 3]]))
  })

  it('goes through many birds of few marks, and not through many of as many', () => {
    expect(permutedScores(Array.from({length: 40}, (_, place): Ordered => [place % 5, place % 3]))).not.toBeNull()
    expect(permutedScores(distinct(15))).toBeNull()
    expect([remaindersOf(distinct(3)), remaindersOf([[1, 4], [2, 4]])]).toEqual([8, 3])
  })
})
