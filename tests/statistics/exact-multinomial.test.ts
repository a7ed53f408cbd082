import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {exactMultinomial} from '../../src/statistics/exact-multinomial.ts'
import {expectClose} from '../expect-close.ts'
import {byEveryOutcome, multinomial} from './every-outcome.ts'

const shareOf = (ratio: readonly number[], place: number) => (ratio[place] ?? 0) / ratio.reduce((sum, part) => sum + part, 0)
const sizeOf = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0)
/** Less χ², so that a poor fit is a small number. */
const byChiSquare = (ratio: readonly number[]) => (counts: readonly number[]) =>
  -counts.reduce((sum, count, place) => sum + (count - sizeOf(counts) * shareOf(ratio, place)) ** 2 / (sizeOf(counts) * shareOf(ratio, place)), 0)
/** Less G/2. */
const byLikelihood = (ratio: readonly number[]) => (counts: readonly number[]) =>
  -counts.reduce((sum, count, place) => sum + (count === 0 ? 0 : count * Math.log(count / (sizeOf(counts) * shareOf(ratio, place)))), 0)

// Poisson of mean 0.2, the last class 3 and more
const POISSON = [1, 0.2, 0.02].map(part => part * Math.exp(-0.2))
POISSON.push(1 - sizeOf(POISSON))

describe('exactMultinomial(counts, ratio)', () => {
  // The first row: 157/2048, documented as 0.0767 in the manual of R's package EMT (from memory). The last: the exact likelihood-ratio P of 0.048 is published with
  // the data; all other figures computed exactly by independent code. The twin is held against the same table in all three orders.
  it.each([
    [[5, 2, 1], [1, 2, 1], 157 / 2048, 0.05957, 0.14209], [[6, 5, 2, 3], [9, 3, 3, 1], 0.074825, 0.086396, 0.17712], [[3, 3, 6], [1, 2, 1], 0.125036, 0.131079, 0.146185],
    [[12, 0], [3, 1], 0.045929, 0.086079, 0.034458], [[10, 1], [3, 1], 0.311724, 0.311724, 0.311724], [[8, 1, 3], [9, 3, 4], 0.736491, 0.678352, 0.638157],
    [[84, 11, 4, 1], POISSON, 0.019905, 0.018754, 0.047986],
  ])('of %j against %j is what every outcome comes to', (counts, ratio, probability, chiSquare, likelihood) => {
    expectClose(exactMultinomial(counts, ratio) ?? NaN, probability, 1e-6)
    expectClose(byEveryOutcome(counts, ratio, outcome => multinomial(outcome, ratio)), probability, 1e-6)
    expectClose(byEveryOutcome(counts, ratio, byChiSquare(ratio)), chiSquare, 1e-6)
    expectClose(byEveryOutcome(counts, ratio, byLikelihood(ratio)), likelihood, 1e-6)
  })

  const rows = fc.array(fc.tuple(fc.integer({min: 0, max: 7}), fc.constantFrom(1, 2, 3, 4, 9, 0.01)), {minLength: 1, maxLength: 4}).filter(all => all.some(([count]) => count > 0))

  it('is what going through every outcome gives, ties included', () => {
    fc.assert(fc.property(rows, all => {
      const counts = all.map(([count]) => count), ratio = all.map(([, part]) => part)
      const slow = byEveryOutcome(counts, ratio, outcome => multinomial(outcome, ratio))
      expectClose(exactMultinomial(counts, ratio) ?? NaN, slow, 1e-10 * slow, {counts, ratio})
    }), {numRuns: 150})
  })

  it('does not mind the order of the classes, nor classes that cannot be and are empty', () => {
    fc.assert(fc.property(rows, all => {
      const p = exactMultinomial(all.map(([count]) => count), all.map(([, part]) => part)) ?? NaN, back = [...all].reverse()
      expectClose(exactMultinomial([...back.map(([count]) => count), 0], [...back.map(([, part]) => part), 0]) ?? NaN, p, 1e-12)
    }))
  })

  it('is 1 for the most probable outcome, and never 0 for one that can be', () => {
    expect(exactMultinomial([9, 3, 3, 1], [9, 3, 3, 1])).toBeCloseTo(1, 12)
    expect(exactMultinomial([10, 10, 10, 10, 10, 10], [1, 1, 1, 1, 1, 1])).toBeCloseTo(1, 12)
    expect(exactMultinomial([0, 0, 0, 60], [9, 3, 3, 1])).toBeGreaterThan(0)
  })

  it('is 0 for one that cannot be', () => expect(exactMultinomial([5, 1], [1, 0])).toBe(0))
  it('works 60 chicks in 6 classes, however lopsided', () => {
    expectClose(exactMultinomial([20, 6, 6, 12, 6, 10], [10, 11, 12, 13, 14, 15]) ?? NaN, 0.002088532, 1e-9)
    expectClose((exactMultinomial([60, 0, 0, 0, 0, 0], [27, 9, 9, 9, 9, 1]) ?? NaN) / 4.298967e-18, 1, 1e-6)
  })
  it('says so when there is too much to go through', () => expect(exactMultinomial([20, 6, 6, 12, 6, 10], [10, 11, 12, 13, 14, 15], 1000)).toBeNull())
})
