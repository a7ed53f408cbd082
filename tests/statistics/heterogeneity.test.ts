import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {heterogeneityOf} from '../../src/statistics/heterogeneity.ts'
import {expectClose} from '../expect-close.ts'

// Mendel 1866, seven pairs
const MENDEL = [[5474, 1850], [6022, 2001], [705, 224], [882, 299], [428, 152], [651, 207], [787, 277]]

describe('heterogeneityOf(matings, ratio)', () => {
  it('gives Fisher’s sum for Mendel’s seven pairs', () => {
    // Fisher 1936, Ann. Sci. 1:115–137: 2.1389 with 7 degrees of freedom; pooled 14949 : 5010 recomputed by independent code
    const {total, pooled, heterogeneity} = heterogeneityOf(MENDEL, [3, 1])
    expectClose(total?.chiSquare ?? NaN, 2.138868, 1e-6)
    expectClose(total?.p ?? NaN, 0.951756, 1e-6)
    expect(total?.freedom).toBe(7)
    expectClose(pooled.chiSquare ?? NaN, 0.109575, 1e-6)
    expect(pooled.how).toBe('pearson')
    expectClose(heterogeneity?.chiSquare ?? NaN, 2.138868 - 0.109575, 2e-6)
    expect(heterogeneity?.freedom).toBe(6)
  })

  const matings = fc.integer({min: 2, max: 4}).chain(classes =>
    fc.record({
      ratio: fc.array(fc.integer({min: 1, max: 9}), {minLength: classes, maxLength: classes}),
      counts: fc.array(fc.array(fc.integer({min: 1, max: 90}), {minLength: classes, maxLength: classes}), {minLength: 1, maxLength: 5}),
    }))

  it('is what the matings’ own means stray from the common one, weighed by their size', () => {
    // another way: Σ_mating Σ_class n_m·(share seen in the mating − share seen in all)² / share expected
    fc.assert(fc.property(matings, ({ratio, counts}) => {
      const whole = ratio.reduce((sum, part) => sum + part, 0), size = (row: readonly number[]) => row.reduce((sum, count) => sum + count, 0)
      const all = ratio.map((_, place) => counts.reduce((sum, row) => sum + (row[place] ?? 0), 0)), n = size(all)
      const strayed = counts.reduce((sum, row) => sum + row.reduce((inner, count, place) =>
        inner + (size(row) * (count / size(row) - (all[place] ?? 0) / n) ** 2 * whole) / (ratio[place] ?? NaN), 0), 0)
      const {heterogeneity} = heterogeneityOf(counts, ratio)
      expectClose(heterogeneity?.chiSquare ?? NaN, strayed, 1e-8 * (1 + strayed) * 10)
      expect(heterogeneity?.freedom).toBe((counts.length - 1) * (ratio.length - 1))
    }), {numRuns: 60})
  })

  it('is nothing for one mating, and for matings all alike', () => {
    expect(heterogeneityOf([[10, 9]], [3, 1]).heterogeneity).toEqual({chiSquare: 0, freedom: 0, p: 1})
    expectClose(heterogeneityOf([[10, 9], [10, 9], [10, 9]], [3, 1]).heterogeneity?.chiSquare ?? NaN, 0, 1e-12)
  })

  it('finds two that stray to either side and hide in the sum', () => {
    const {pooled, heterogeneity} = heterogeneityOf([[80, 0], [40, 40]], [3, 1])
    expectClose(pooled.p, 1, 1e-12)
    expect(heterogeneity?.p).toBeLessThan(1e-9)
  })

  it('says nothing of chi-squares where a mating cannot be', () => {
    const {total, heterogeneity, pooled} = heterogeneityOf([[5, 0], [4, 1]], [1, 0])
    expect([total, heterogeneity, pooled.how]).toEqual([null, null, 'impossible'])
  })

  it('tells the smallest expectation', () => expect(heterogeneityOf([[8, 0, 0], [40, 40, 0]], [3, 1, 0]).smallestExpectation).toBe(2))
  it('gives the value of its example', () => {
    const {heterogeneity} = heterogeneityOf([[5474, 1850], [6022, 2001]], [3, 1])
    expectClose(heterogeneity?.chiSquare ?? NaN, 0.2073, 5e-5)
    expectClose(heterogeneity?.p ?? NaN, 0.6489, 5e-5)
  })

  it('refuses no matings', () => expect(() => heterogeneityOf([], [3, 1])).toThrow(RangeError))
  it('refuses a mating without a chick', () => expect(() => heterogeneityOf([[3, 1], [0, 0]], [3, 1])).toThrow(RangeError))
})
