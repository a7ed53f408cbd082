import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {varianceRatio} from '../../src/statistics/variance-ratio.ts'
import {variationRatio} from '../../src/statistics/variation-ratio.ts'
import {expectClose} from '../expect-close.ts'

const classes = fc.array(fc.record({cv: fc.double({min: 0.01, max: 0.3, noNaN: true}), freedom: fc.integer({min: 4, max: 40})}), {minLength: 1, maxLength: 4})

function ratio(...args: Parameters<typeof variationRatio>) {
  const got = variationRatio(...args)
  if (!got) throw new Error('no ratio')
  return got
}

describe('variationRatio(one, other)', () => {
  it('is Forkman’s F for one class each', () => {
    // Forkman 2009, Commun. Stat. Theory Methods 38:233 (from memory): F = [c₁²/(1 + c₁²(n₁ − 1)/n₁)] / [c₂²/(1 + c₂²(n₂ − 1)/n₂)]; the ratio is F bent back by (1 + κ₁²)/(1 + κ₂²)
    const f = (c: number, n: number) => c ** 2 / (1 + (c ** 2 * (n - 1)) / n)
    const one = f(0.08, 21), other = f(0.12, 26)
    expectClose(ratio([{cv: 0.08, freedom: 20}], [{cv: 0.12, freedom: 25}]).ratio, (one / (1 - one)) / (other / (1 - other)), 1e-12)
  })

  it('is the ratio of variances where the coefficients are small', () => {
    fc.assert(fc.property(fc.double({min: 1e-5, max: 1e-3, noNaN: true}), fc.double({min: 1e-5, max: 1e-3, noNaN: true}), fc.integer({min: 2, max: 40}), (one, other, freedom) => {
      const got = ratio([{cv: one, freedom}], [{cv: other, freedom: 9}]), plain = varianceRatio({sd: one, freedom}, {sd: other, freedom: 9})
      expectClose(got.ratio, plain?.ratio ?? NaN, 1e-5 * got.ratio)
      expectClose(got.interval.high, plain?.interval.high ?? NaN, 1e-5 * got.interval.high)
    }), {numRuns: 50})
  })

  it('turns over and holds its ratio', () => {
    fc.assert(fc.property(classes, classes, (one, other) => {
      const got = ratio(one, other), back = ratio(other, one)
      expectClose(got.ratio * back.ratio, 1, 1e-9)
      expectClose(got.interval.low * back.interval.high, 1, 1e-9)
      expect(got.interval.low).toBeLessThan(got.ratio)
      expect(got.interval.high).toBeGreaterThan(got.ratio)
    }), {numRuns: 60})
  })

  it.each([[0.1, 0.1, [5], [6], 0.95], [0.08, 0.12, [5, 9, 14], [5, 5, 5, 5], 0.95], [0.25, 0.15, [12], [8, 8], 0.95], [0.3, 0.3, [5, 5, 5, 5], [20], 0.935]])(
    'covers the true ratio of %f and %f in classes of %j and %j %f of the time', (first, second, sizes, others, expected) => {
      const chance = chanceOf(77), share = () => (chance.next() + 0.5) / 2 ** 32
      const flock = (cv: number, all: readonly number[]) => all.map((size, place) => Array.from({length: size}, () => {
        const mean = 2000 + 150 * place
        return mean + cv * mean * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())
      }))
      let held = 0, runs = 0
      for (let run = 0; run < 3000; run++) {
        const one = flock(first, sizes), other = flock(second, others)
        const got = variationRatio(pooledVariation(one).own, pooledVariation(other).own)
        runs += 1
        if (got && got.interval.low <= (first / second) ** 2 && (first / second) ** 2 <= got.interval.high) held += 1
      }
      // standard error 0.004
      expectClose(held / runs, expected, 0.0125)
    })

  it('gives the value of its example', () => expectClose(ratio([{cv: 0.08, freedom: 20}], [{cv: 0.12, freedom: 25}]).ratio, 0.4443, 0.00005))
  it('says nothing where there is no spread, or one beyond all reason', () => {
    expect(variationRatio([{cv: 0, freedom: 3}], [{cv: 0.1, freedom: 3}])).toBeNull()
    expect(variationRatio([{cv: 0.1, freedom: 3}], [{cv: 0, freedom: 3}])).toBeNull()
    expect(variationRatio([{cv: 3, freedom: 3}], [{cv: 0.1, freedom: 3}])).toBeNull()
  })
  it('refuses no classes and what is out of range', () => {
    expect(() => variationRatio([], [{cv: 0.1, freedom: 3}])).toThrow(RangeError)
    expect(() => variationRatio([{cv: -1, freedom: 3}], [{cv: 0.1, freedom: 3}])).toThrow(RangeError)
    expect(() => variationRatio([{cv: 0.1, freedom: 0}], [{cv: 0.1, freedom: 3}])).toThrow(RangeError)
    expect(() => variationRatio([{cv: 0.1, freedom: 3}], [{cv: 0.1, freedom: 3}], 0)).toThrow(RangeError)
  })
})
