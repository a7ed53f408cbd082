import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {expectClose} from '../expect-close.ts'

const oneClass = fc.array(fc.integer({min: 500, max: 4000}), {minLength: 2, maxLength: 30})
const classes = fc.array(oneClass, {minLength: 1, maxLength: 8})

describe('pooledVariation(classes)', () => {
  it('is the plain figure for one class', () => {
    fc.assert(fc.property(oneClass, values => {
      const {mean, sd, n} = meanAndDeviation(values), pooled = pooledVariation([values])
      expectClose(pooled.mean, mean, 0)
      expectClose(pooled.sd, sd ?? NaN, 1e-9)
      expectClose(pooled.cv, (sd ?? NaN) / mean, 1e-12)
      expect(pooled.own).toEqual([{n, mean, sd, cv: pooled.own[0]?.cv, freedom: n - 1}])
      expect(pooled).toMatchObject({n, classes: 1, freedom: n - 1})
    }))
  })

  it('is what is left within classes in an analysis of variance: total less between', () => {
    // another route: Σν·s² = Σ(x − mean)² − Σ n_c (m_c − mean)², over all birds
    fc.assert(fc.property(classes, all => {
      const {mean, sd, freedom} = pooledVariation(all)
      const total = all.flat().reduce((sum, value) => sum + (value - mean) ** 2, 0)
      const between = all.reduce((sum, values) => sum + values.length * (meanAndDeviation(values).mean - mean) ** 2, 0)
      expectClose(sd ** 2 * freedom, total - between, 1e-9 * Math.max(1, total))
    }))
  })

  it('is the root mean square, by degrees of freedom, of the classes’ own coefficients', () => {
    fc.assert(fc.property(classes, all => {
      // a slow twin: every class written down as often as it has degrees of freedom
      const each = all.flatMap(values => values.slice(1).map(() => ((meanAndDeviation(values).sd ?? NaN) / meanAndDeviation(values).mean) ** 2))
      expectClose(pooledVariation(all).cv, Math.sqrt(each.reduce((sum, square) => sum + square, 0) / each.length), 1e-12)
    }))
  })

  it('does not see a difference between classes of equal evenness', () => {
    // the same birds fed twice as well: CV stays, though the birds thrown together look wildly uneven
    fc.assert(fc.property(oneClass, values => {
      expectClose(pooledVariation([values, values.map(value => value * 2)]).cv, pooledVariation([values]).cv, 1e-12)
    }))
  })

  it('gives the value of its example', () => {
    const {n, mean, sd, cv} = pooledVariation([[9, 10, 11], [18, 20, 22]])
    expect(n).toBe(6)
    expect(mean).toBe(15)
    expectClose(sd, 1.5811, 0.00005)
    expectClose(cv, 0.1, 1e-15)
  })

  it.each([[[]], [[[1]]], [[[1, 2], [3]]], [[[0, 0]]], [[[-1, -3]]]])('refuses %j', all => {
    expect(() => pooledVariation(all)).toThrow(RangeError)
  })
})
