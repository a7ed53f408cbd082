import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Ordered} from '../../src/statistics/kendall-orders.ts'
import {kendallTau} from '../../src/statistics/kendall-tau.ts'
import {expectClose} from '../expect-close.ts'
import {ordersOf} from './every-order.ts'

const together = (one: readonly number[], other: readonly number[]): Ordered[] => one.map((mark, place) => [mark, other[place] ?? NaN])
const birds = (maxLength: number) => fc.array(fc.tuple(fc.integer({min: 1, max: 4}), fc.integer({min: 1, max: 4})), {maxLength})

const near = (p: number | null): number | null => (p === null ? null : expect.closeTo(p, 9) as number)

/** C − D of every way to deal the second's marks, class by class. */
function byEveryDeal(classes: readonly (readonly Ordered[])[]): number {
  const score = (of: readonly Ordered[]): number => of.reduce((sum, [one, other], place) => sum + of.slice(place + 1).reduce((all, [a, b]) => all + Math.sign((one - a) * (other - b)), 0), 0)
  const seen = classes.reduce((sum, of) => sum + score(of), 0)
  const sums = classes.reduce<number[]>((before, of) => {
    const own = ordersOf(of.map(([, other]) => other)).map(order => score(of.map(([one], place) => [one, order[place] ?? NaN])))
    return before.flatMap(sum => own.map(more => sum + more))
  }, [0])
  return sums.filter(sum => Math.abs(sum) >= Math.abs(seen)).length / sums.length
}

describe('kendallTau(classes)', () => {
  it('is the published one of nine lots of tuna, with its exact P', () => {
    // Hollander & Wolfe 1973, the data of canned tuna; tau 4/9 and the exact P of 0.119 printed by C. Sutton, George Mason University, mason.gmu.edu/~csutton/tuna2.html
    const found = kendallTau([together([44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1], [2.6, 3.1, 2.5, 5, 3.6, 4, 5.2, 2.8, 3.8])])
    expect(found).toMatchObject({concordant: 26, discordant: 10})
    expectClose(found.tau ?? NaN, 4 / 9, 1e-12)
    expectClose(found.p ?? NaN, 0.1194, 5e-5)
  })

  it('is the printed tau-b where marks are shared', () => {
    // the worked example of the manual of SciPy's kendalltau: -0.4714045 (from memory), and by hand: C 2, D 6, one pair level in the first alone, one in both; (2 − 6)/√(8 · 9)
    const found = kendallTau([together([12, 2, 1, 12, 2], [1, 4, 7, 1, 0])])
    expectClose(found.tau ?? NaN, -0.47140452079103173, 1e-12)
  })

  it('is every way to deal the marks within the classes', () => {
    fc.assert(fc.property(birds(5), birds(4), birds(3), (...classes) => {
      const found = kendallTau(classes)
      if (found.p !== null) expectClose(found.p, byEveryDeal(classes.filter(({length}) => length > 1)), 1e-9)
    }), {numRuns: 60})
  })

  it('counts no pair across classes, whatever the marks of one are shifted by', () => {
    fc.assert(fc.property(birds(6), birds(6), (a, b) => {
      const found = kendallTau([a, b])
      expect(kendallTau([b.map(([one, other]): Ordered => [one + 10, other - 3]), a])).toEqual({...found, p: near(found.p), leastP: near(found.leastP)})
      expect(found.concordant + found.discordant + found.tiedOne + found.tiedOther + found.tiedBoth).toBe(found.pairs)
    }), {numRuns: 60})
  })

  it('turns its sign and nothing else when one of the two is turned round, and takes either first', () => {
    fc.assert(fc.property(birds(6), birds(4), (a, b) => {
      const found = kendallTau([a, b]), turned = kendallTau([a, b].map(of => of.map(([one, other]): Ordered => [one, -other]))), swapped = kendallTau([a, b].map(of => of.map(([one, other]): Ordered => [other, one])))
      expect(turned).toMatchObject({concordant: found.discordant, discordant: found.concordant, tiedOne: found.tiedOne, tiedOther: found.tiedOther})
      expect(swapped).toMatchObject({concordant: found.concordant, tiedOne: found.tiedOther, tiedOther: found.tiedOne})
      if (found.tau === null) expect([turned.tau, turned.p, swapped.tau]).toEqual([null, null, null])
      else {
        expectClose(turned.tau ?? NaN, -found.tau, 1e-12)
        expectClose(swapped.tau ?? NaN, found.tau, 1e-12)
        expectClose(swapped.p ?? NaN, found.p ?? NaN, 1e-9)
      }
    }), {numRuns: 60})
  })

  it('says nothing of no pair, nor where one put all level', () => {
    expect(kendallTau([])).toMatchObject({pairs: 0, tau: null, p: null})
    expect(kendallTau([[[1, 2]], [[3, 4]]])).toMatchObject({pairs: 0, classes: 0, tau: null, p: null})
    expect(kendallTau([[[1, 2], [2, 2]]])).toMatchObject({tiedOther: 1, tau: null, p: null})
    expect(() => kendallTau([[[NaN, 1]]])).toThrow(RangeError)
  })

  it('says how little chance could have been left by full agreement', () => {
    // three in one class: 2 of the 6 orders are as far as any; two classes of two: 2 of 4
    expectClose(kendallTau([[[1, 2], [2, 1], [3, 3]]]).leastP ?? NaN, 1 / 3, 1e-12)
    expectClose(kendallTau([[[1, 2], [2, 1]], [[1, 1], [2, 2]]]).leastP ?? NaN, 1 / 2, 1e-12)
    fc.assert(fc.property(birds(5), birds(4), (a, b) => {
      const {p, leastP} = kendallTau([a, b])
      if (p !== null && leastP !== null) expect(leastP).toBeLessThanOrEqual(p + 1e-12)
    }), {numRuns: 60})
  })

  it('draws where there are too many orders, near the exact chance, and says how often', () => {
    const of = (n: number, swaps: number): Ordered[] => Array.from({length: n}, (_, place): Ordered => [place, place < swaps ? swaps - 1 - place : place])
    expect(kendallTau([of(12, 10)])).toMatchObject({how: 'exact', draws: null})
    const found = kendallTau([of(15, 12)])
    expect(found).toMatchObject({how: 'drawn', draws: 1999})
    // by the normal curve: C − D = 39 − 66, σ² = 15 · 14 · 35/18, z = 26/20.21, P 0.198
    expectClose(found.p ?? NaN, 0.198, 0.02)
    expect(kendallTau([of(15, 12)])).toEqual(found)
  })

  it('says so too of many classes, in little time', () => {
    const class15 = (): Ordered[] => Array.from({length: 15}, (_, place): Ordered => [place, (place * 7) % 15])
    expect(kendallTau(Array.from({length: 200}, class15))).toMatchObject({how: 'drawn', draws: 499, classes: 200, birds: 3000})
  }, 5000)
})
