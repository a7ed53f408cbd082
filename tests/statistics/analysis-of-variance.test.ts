import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {analysisOfVariance} from '../../src/statistics/analysis-of-variance.ts'
import {welchT} from './welch-t.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'

/** NIST StRD, one-way analysis of variance, data set SiRstv: resistivity of silicon wafers. */
const SIRSTV = [
  [196.3052, 196.124, 196.189, 196.2569, 196.3403], [196.3042, 196.3825, 196.1669, 196.3257, 196.0422], [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885], [196.2119, 196.1051, 196.185, 196.0052, 196.209],
]
/** R data set ChickWeight (Crowder & Hand 1990): grams at 21 days on four diets. */
const CHICKS = [
  [205, 215, 202, 157, 223, 157, 305, 98, 124, 175, 205, 96, 266, 142, 157, 117], [331, 167, 175, 74, 265, 251, 192, 233, 309, 150],
  [256, 305, 147, 341, 373, 220, 178, 290, 272, 321], [204, 281, 200, 196, 238, 205, 322, 237, 264],
]

function compared(groups: readonly (readonly number[])[]) {
  const got = analysisOfVariance(groups)
  if (got.kind !== 'compared') throw new Error(got.kind)
  return got
}

describe('analysisOfVariance(groups)', () => {
  it('has NIST’s certified values for SiRstv', () => {
    const {between, within, f, rSquared, sd} = compared(SIRSTV)
    expect(between.freedom).toBe(4)
    expect(within.freedom).toBe(20)
    for (const [got, certified] of [[between.squares, 5.11462616e-2], [within.squares, 2.1663656e-1], [f, 1.18046237440255], [rSquared, 1.90999039051129e-1], [sd, 1.04076068334656e-1]] as const) {
      expectClose(got, certified, 3e-9 * certified)
    }
  })

  it('has the F of chicks on four diets', () => {
    // R: anova(lm(weight ~ Diet, ChickWeight, Time == 21)) gives F 4.6547, P .006858
    const {f, p} = compared(CHICKS)
    expectClose(f, 4.65471, 0.00001)
    expectClose(p, 0.006858, 0.0000005)
  })

  const groups = fc.array(fc.array(fc.integer({min: 0, max: 4000}), {minLength: 1, maxLength: 12}), {minLength: 2, maxLength: 6})

  it('parts the whole: between and within make up the squares about the common mean; two equal groups give t²', () => {
    fc.assert(fc.property(groups, all => {
      const got = analysisOfVariance(all)
      if (got.kind !== 'compared') return
      const values = all.flat(), mean = values.reduce((sum, value) => sum + value, 0) / values.length
      const total = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
      expectClose(got.between.squares + got.within.squares, total, 1e-9 * total)
      expectClose(got.f, got.between.squares / got.between.freedom / got.sd ** 2, 1e-9 * Math.max(1, got.f))
    }))
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({min: 0, max: 99}), fc.integer({min: 0, max: 99})), {minLength: 2, maxLength: 10}), pairs => {
      const one = pairs.map(([first]) => first), other = pairs.map(([, second]) => second)
      const got = analysisOfVariance([one, other]), t = welchT(meanAndDeviation(one), meanAndDeviation(other))
      if (got.kind === 'compared' && t) expectClose(got.f, t.t ** 2, 1e-9 * Math.max(1, got.f))
    }))
  })

  it('does not mind the order, nor another zero and unit', () => {
    fc.assert(fc.property(groups, all => {
      const got = analysisOfVariance(all), moved = analysisOfVariance([...all].reverse().map(values => values.map(value => 3 * value + 7)))
      expect(moved.kind).toBe(got.kind)
      if (got.kind === 'compared' && moved.kind === 'compared') expectClose(moved.p, got.p, 1e-9)
    }))
  })

  it('gives the value of its example', () => {
    const {f, p} = compared([[1, 2, 3], [2, 3, 4], [6, 7, 8]])
    expectClose(f, 21, 1e-12)
    expectClose(p, 0.002, 0.00005)
  })
  it.each([[[]], [[[1, 2, 3]]], [[[1], [2], []]]])('has too few in %j', all => expect(analysisOfVariance(all).kind).toBe('few'))
  it.each([[[[1, 1], [2, 2]]], [[[0.1, 0.1, 0.1], [0.3, 0.3, 0.3]]], [[[0, 0], [0]]]])('has nothing to compare by in %j', all => expect(analysisOfVariance(all).kind).toBe('no-spread'))
  it('refuses what is not finite', () => expect(() => analysisOfVariance([[1, NaN]])).toThrow(RangeError))
})
