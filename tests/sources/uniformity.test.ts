/** Evenness by counting and by the normal curve. */
import {uniformFloat64} from 'pure-rand/distribution/uniformFloat64'
import {xoroshiro128plus} from 'pure-rand/generator/xoroshiro128plus'
import {describe, expect, it} from 'vitest'
import {coefficientOfVariationInterval} from '../../src/statistics/coefficient-of-variation.ts'
import {countWithin} from '../../src/statistics/count-within.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {expectClose} from '../expect-close.ts'

describe('countWithin', () => {
  // A university poultry course: 115 birds of mean 1050 g, limits 945 and 1155 g, 95 birds inside, "about 83 %". The birds' own weights are not printed; these are made to it.
  it('finds 95 of 115 birds between 945 and 1155 g', () => {
    const inside = Array.from({length: 95}, (_, index) => 945 + (index * 210) / 94)
    const outside = Array.from({length: 20}, (_, index) => (index % 2 === 0 ? 900 : 1200))
    expect(countWithin([...inside, ...outside], 1050, 0.1)).toBe(95)
    expectClose((95 / 115) * 100, 82.61, 0.005)
  })

  // A management manual prints 1.188 to 1.452 kg as the limits of a tenth about 1.320 kg.
  it('takes the limits of a tenth as printed', () => expect(countWithin([1187.9, 1188, 1452, 1452.1], 1320, 0.1)).toBe(2))

  // Share within a tenth of the mean under a normal curve, 2Φ(0.1/CV) − 1, worked from the curve. A table that goes round in guides
  // has 58.2 at a CV of 12 % and 52.0 at 14 %; the curve gives 59.5 and 52.5.
  it.each([[5, 95.45], [8, 78.87], [10, 68.269], [12, 59.534], [14, 52.495], [20, 38.292]])('finds the share of a normal flock of CV %i %%', (cv, share) => {
    expectClose(normalQuantile(share / 100), 10 / cv, 5e-5 * 10)
    // 40,000 birds drawn: the standard error of a share is 0.25 points at most, the tolerance four of them
    const generator = xoroshiro128plus(7)
    const flock = Array.from({length: 40_000}, () =>
      2000 * (1 + (cv / 100) * Math.sqrt(-2 * Math.log(1 - uniformFloat64(generator))) * Math.cos(2 * Math.PI * uniformFloat64(generator))))
    expectClose((countWithin(flock, meanAndDeviation(flock).mean, 0.1) / flock.length) * 100, share, 1, {cv})
  })
})

describe('coefficientOfVariationInterval', () => {
  // K. Wright's R function confint.cv after Vangel 1996, eq. 16, run and printed by a user of the Bioequivalence and Bioavailability Forum, 2018-03-21, post 18576:
  // 3.8 3.9 3.9 3.8 4.1 4.0 3.4 3.6 3.8 3.7 give 0.03617573 to 0.09632067, K = 0.05263158.
  it('gives the limits printed for ten values', () => {
    const {mean, sd} = meanAndDeviation([3.8, 3.9, 3.9, 3.8, 4.1, 4, 3.4, 3.6, 3.8, 3.7])
    const cv = (sd ?? NaN) / mean
    expectClose(cv, 0.05263158, 5e-9)
    const interval = coefficientOfVariationInterval(cv, 9)
    expectClose(interval?.low ?? NaN, 0.03617573, 5e-9)
    expectClose(interval?.high ?? NaN, 0.09632067, 5e-9)
  })
})
