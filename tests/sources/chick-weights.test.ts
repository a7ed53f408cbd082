/**
 * Chicks weighed at 21 days on four diets: R dataset ChickWeight (Crowder & Hand 1990, Analysis of Repeated Measures, example 5.3),
 * grams. The data are published; the figures were recomputed from them by independent code, to six decimals.
 */
import {describe, expect, it} from 'vitest'
import {countWithin} from '../../src/statistics/count-within.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {expectClose} from '../expect-close.ts'

const DIETS = [
  [205, 215, 202, 157, 223, 157, 305, 98, 124, 175, 205, 96, 266, 142, 157, 117],
  [331, 167, 175, 74, 265, 251, 192, 233, 309, 150],
  [256, 305, 147, 341, 373, 220, 178, 290, 272, 321],
  [204, 281, 200, 196, 238, 205, 322, 237, 264],
] as const

describe('chicks of 21 days', () => {
  it.each([
    [DIETS[0], 16, 177.75, 58.702073, 33.025076, 6.25], [DIETS[1], 10, 214.7, 78.138126, 36.394097, 10], [DIETS[2], 10, 270.3, 71.622545, 26.497427, 30],
    [DIETS[3], 9, 238.555556, 43.347754, 18.170926, 22.222222], [DIETS.flat(), 45, 218.688889, 71.510273, 32.699546, 26.666667],
  ])('%j', (values, n, mean, sd, cv, within) => {
    const got = meanAndDeviation(values)
    expect(got.n).toBe(n)
    expectClose(got.mean, mean, 5e-7)
    expectClose(got.sd ?? NaN, sd, 5e-7)
    expectClose(pooledVariation([values]).cv * 100, cv, 5e-7)
    expectClose((countWithin(values, got.mean, 0.1) / n) * 100, within, 5e-7)
  })

  // One-way analysis of variance of the same data: F 4.65471 on 3 and 41 degrees of freedom (recomputed by independent code).
  it('pool to the mean square within diets', () => {
    const {sd, freedom, mean} = pooledVariation(DIETS)
    expect(freedom).toBe(41)
    const between = DIETS.reduce((sum, values) => sum + values.length * (meanAndDeviation(values).mean - mean) ** 2, 0)
    expectClose(between / 3 / sd ** 2, 4.65471, 5e-6)
  })
})
