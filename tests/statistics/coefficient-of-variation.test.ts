import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile'
import fc from 'fast-check'
import {uniformFloat64} from 'pure-rand/distribution/uniformFloat64'
import {xoroshiro128plus} from 'pure-rand/generator/xoroshiro128plus'
import {describe, expect, it} from 'vitest'
import {coefficientOfVariationInterval, pooledVariationInterval} from '../../src/statistics/coefficient-of-variation.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {expectClose} from '../expect-close.ts'

/** Normal draws by Box & Muller 1958 (Ann. Math. Stat. 29:610), from a named generator and seed: the same in ten years. */
function normalDraws(seed: number): (mean: number, sd: number) => number {
  const generator = xoroshiro128plus(seed)
  return (mean, sd) => mean + sd * Math.sqrt(-2 * Math.log(1 - uniformFloat64(generator))) * Math.cos(2 * Math.PI * uniformFloat64(generator))
}

/** How often, of many drawn flocks, the interval holds the true CV. Classes have means of their own, as hatches do. */
function coverage(cv: number, sizes: readonly number[], runs: number, seed: number): number {
  const draw = normalDraws(seed)
  let held = 0
  for (let run = 0; run < runs; run++) {
    const flock = sizes.map((size, index) => {
      const mean = 2000 + 150 * index
      return Array.from({length: size}, () => draw(mean, cv * mean))
    })
    const interval = pooledVariationInterval(pooledVariation(flock).own)
    if (interval && interval.low <= cv && cv <= interval.high) held += 1
  }
  return held / runs
}

describe('pooledVariationInterval(classes)', () => {
  // 8000 flocks: the standard error of a coverage of 0.95 is 0.0024; 0.01 is four of them
  it.each([
    [0.1, [5]], [0.1, [30]], [0.25, [12]], [0.1, [5, 5, 5, 5]], [0.08, [5, 9, 14]], [0.2, [6, 6, 20]], [0.3, [5, 5, 5, 5, 5, 5]], [0.3, Array<number>(20).fill(5)],
  ])('covers a true CV of %f in classes of %j about 95 times in a hundred', (cv, sizes) => {
    // Pooling first, K² = Σν·K_c²/Σν in Vangel's formula, covered 0.933 of the six and 0.912 of the twenty classes at 30 %: each class must be bent by itself.
    expectClose(coverage(cv, sizes, 8000, 20_260_301), 0.95, 0.01, {cv, sizes})
  })

  it('does not mind the order of the classes, and narrows with every further class', () => {
    const classes = [{cv: 0.08, freedom: 9}, {cv: 0.1, freedom: 14}, {cv: 0.12, freedom: 4}]
    const ends = pooledVariationInterval(classes), back = pooledVariationInterval([...classes].reverse())
    const more = pooledVariationInterval([...classes, ...classes])
    if (!ends || !back || !more) throw new Error('no interval')
    expectClose(back.low, ends.low, 1e-15)
    expectClose(back.high, ends.high, 1e-15)
    expect(more.high - more.low).toBeLessThan(ends.high - ends.low)
  })

  it('gives the value of its example', () => {
    const interval = pooledVariationInterval([{cv: 0.08, freedom: 9}, {cv: 0.1, freedom: 14}])
    expectClose(interval?.low ?? NaN, 0.0719, 0.00005)
    expectClose(interval?.high ?? NaN, 0.1304, 0.00005)
  })

  it('refuses no classes', () => expect(() => pooledVariationInterval([])).toThrow(RangeError))
})

describe('coefficientOfVariationInterval(cv, freedom)', () => {
  it('is Vangel’s formula as he wrote it', () => {
    fc.assert(fc.property(fc.double({min: 0.001, max: 0.33, noNaN: true}), fc.integer({min: 4, max: 300}), (cv, freedom) => {
      const interval = coefficientOfVariationInterval(cv, freedom), n = freedom + 1
      const vangel = (u: number) => cv / Math.sqrt(((u + 2) / n - 1) * cv ** 2 + u / freedom)
      expectClose(interval?.low ?? NaN, vangel(chiSquareQuantile(0.975, freedom)), 1e-12, {cv, freedom})
      expectClose(interval?.high ?? NaN, vangel(chiSquareQuantile((1 - 0.95) / 2, freedom)), 1e-12, {cv, freedom})
    }))
  })

  it('holds the coefficient seen, and narrows with more birds', () => {
    fc.assert(fc.property(fc.double({min: 0.01, max: 0.3, noNaN: true}), fc.integer({min: 4, max: 200}), (cv, freedom) => {
      const few = coefficientOfVariationInterval(cv, freedom), many = coefficientOfVariationInterval(cv, freedom * 4)
      if (!few || !many) throw new Error(`no interval at ${cv}, ${freedom}`)
      expect(few.low).toBeLessThan(cv)
      expect(few.high).toBeGreaterThan(cv)
      expect(many.high - many.low).toBeLessThan(few.high - few.low)
    }))
  })

  it('says nothing of birds all alike: the scale was too coarse', () => expect(coefficientOfVariationInterval(0, 9)).toBeNull())
  it('says nothing where no upper limit exists', () => expect(coefficientOfVariationInterval(1.2, 4)).toBeNull())

  it('gives the value of its example', () => {
    const interval = coefficientOfVariationInterval(0.086, 26)
    expectClose(interval?.low ?? NaN, 0.0677, 0.0001)
    expectClose(interval?.high ?? NaN, 0.1181, 0.0001)
  })

  it.each([[-0.1, 5], [NaN, 5], [0.1, 0], [0.1, 2.5]])('refuses a CV of %f on %f degrees of freedom', (cv, freedom) => {
    expect(() => coefficientOfVariationInterval(cv, freedom)).toThrow(RangeError)
  })
  it.each([0, 1, NaN])('refuses the level %f', level => expect(() => coefficientOfVariationInterval(0.1, 9, level)).toThrow(RangeError))
})
