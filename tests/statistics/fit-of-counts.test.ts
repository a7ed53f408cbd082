import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chiSquareFit} from '../../src/statistics/chi-square-fit.ts'
import {exactMultinomial} from '../../src/statistics/exact-multinomial.ts'
import {EXACT_UP_TO, fitOfCounts, SMALLEST_EXPECTATION} from '../../src/statistics/fit-of-counts.ts'
import {expectClose} from '../expect-close.ts'

describe('fitOfCounts(counts, ratio)', () => {
  it('takes the exact test for few chicks', () => {
    // 157/2048 by counting
    const fit = fitOfCounts([5, 2, 1], [1, 2, 1])
    expect(fit.how).toBe('exact')
    expectClose(fit.p, 157 / 2048, 1e-12)
  })

  it('takes Pearson for many', () => {
    // Mendel 1866, two pairs
    const fit = fitOfCounts([315, 108, 101, 32], [9, 3, 3, 1])
    expect(fit).toMatchObject({how: 'pearson', rough: false, freedom: 3, n: 556})
    expectClose(fit.p, 0.925426, 1e-6)
  })

  it('takes the exact test up to 60 chicks and below an expectation of 5, and no further', () => {
    expect(fitOfCounts([30, 30], [1, 1]).how).toBe('exact')
    expect(fitOfCounts([31, 30], [1, 1]).how).toBe('pearson')
    expect(fitOfCounts([75, 5], [15, 1]).how).toBe('pearson')
    expect(fitOfCounts([75, 4], [15, 1]).how).toBe('exact')
    expect(fitOfCounts([40, 40, 0], [1, 1, 0]).how).toBe('pearson')
  })

  it('is one or the other to the last bit, by its own rule', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({min: 0, max: 60}), fc.integer({min: 1, max: 9})), {minLength: 2, maxLength: 4}), rows => {
      const counts = [...rows.map(([count]) => count), 1], ratio = [...rows.map(([, part]) => part), 1]
      const fit = fitOfCounts(counts, ratio)
      const few = fit.n <= EXACT_UP_TO || fit.expected.some(mean => mean < SMALLEST_EXPECTATION)
      // too many outcomes to count out, and Pearson stands in
      const exact = few ? exactMultinomial(counts, ratio) : null
      expect([fit.how, fit.rough]).toEqual([exact === null ? 'pearson' : 'exact', few && exact === null])
      expect(fit.p).toBe(exact ?? chiSquareFit(counts, ratio).p)
    }), {numRuns: 40})
  })

  it('says what cannot be', () => {
    expect(fitOfCounts([4, 4, 1], [1, 1, 0])).toMatchObject({how: 'impossible', p: 0, chiSquare: null, impossible: [2]})
  })

  it('says when Pearson only stands in, for want of counting out', () => {
    const fit = fitOfCounts([20, 10, 5, 5, 5, 5, 4, 6], [27, 9, 9, 9, 3, 3, 3, 1])
    expect(fit).toMatchObject({how: 'pearson', rough: true})
    expect(fit.p).toBe(chiSquareFit([20, 10, 5, 5, 5, 5, 4, 6], [27, 9, 9, 9, 3, 3, 3, 1]).p)
  })
})
