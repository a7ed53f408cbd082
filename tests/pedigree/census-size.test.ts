import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {builtUp, effectiveSize, effectiveSizeOverYears, rateAtRandom, rateOfEvenFamilies} from '../../src/pedigree/census-size.ts'
import {expectClose} from '../expect-close.ts'

describe('breeders counted', () => {
  it.each([
    // source: Wright 1931, Genetics 16:97 (formula, as printed in FAO texts); values by hand
    [1, 1, 2, 25], [1, 4, 3.2, 15.625], [1, 10, 3.6364, 13.75], [2, 8, 6.4, 7.8125], [2, 20, 7.2727, 6.875], [3, 12, 9.6, 5.2083],
    [4, 16, 12.8, 3.9063], [5, 25, 16.6667, 3], [10, 100, 36.3636, 1.375], [25, 25, 50, 1], [25, 250, 90.9091, 0.55],
  ])('%d cocks and %d hens', (males, females, size, percent) => {
    expectClose(effectiveSize(males, females), size, 0.00005)
    expectClose(100 * rateAtRandom(males, females), percent, 0.00005)
  })

  it.each([[4, 16, 2.5391], [5, 25, 2], [50, 250, 0.2]])('%d cocks with a son each, %d hens with a daughter each', (males, females, percent) => {
    // source: Gowe, Robertson & Latter 1959, Poult. Sci. 38:462 (formula from memory); values by hand
    expectClose(100 * rateOfEvenFamilies(males, females), percent, 0.00005)
  })

  it.each([[[10, 100, 50], 23.0769], [[20, 100, 800, 20, 500], 44.1501]])('years of %j', (sizes, expected) => {
    // harmonic mean, computed exactly
    expectClose(effectiveSizeOverYears(sizes), expected, 0.00005)
  })

  it.each([[0.01, 10, 0.095618], [0.01, 20, 0.182093], [0.05, 5, 0.226219]])('a rate of %d over %d generations', (rate, generations, expected) => {
    // computed exactly; formula Falconer & Mackay 1996, ch. 4
    expectClose(builtUp(rate, generations), expected, 5e-7)
  })
})

describe('laws', () => {
  const count = fc.integer({min: 1, max: 500})

  it('ΔF is 1/(2 Ne); even families spare, and one more bird of either sex never harms', () => {
    fc.assert(fc.property(count, count, (males, females) => {
      expectClose(rateAtRandom(males, females), 1 / (2 * effectiveSize(males, females)), 1e-15)
      expect(effectiveSize(males, females)).toBeLessThanOrEqual(males + females)
      expect(rateOfEvenFamilies(males, females)).toBeLessThanOrEqual(rateAtRandom(males, females) + 1e-15)
      for (const rate of [rateAtRandom, rateOfEvenFamilies]) {
        expect(rate(males + 1, females)).toBeLessThan(rate(males, females))
        expect(rate(males, females + 1)).toBeLessThan(rate(males, females))
        expect(rate(females, males)).toBe(rate(males, females))
      }
    }))
  })

  it('a harmonic mean lies between the poorest year and the plain mean', () => {
    fc.assert(fc.property(fc.array(count, {minLength: 1}), sizes => {
      const mean = effectiveSizeOverYears(sizes)
      expect(mean).toBeGreaterThanOrEqual(Math.min(...sizes) - 1e-9)
      expect(mean).toBeLessThanOrEqual(sizes.reduce((sum, size) => sum + size, 0) / sizes.length + 1e-9)
    }))
  })

  it('F built up in two spells is F built up in one', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 1, noNaN: true}), fc.nat(30), fc.nat(30), (rate, first, second) => {
      expectClose(builtUp(rate, second, builtUp(rate, first)), builtUp(rate, first + second), 1e-12)
    }))
    expect(builtUp(0.2, 0, 0.3)).toBeCloseTo(0.3, 15)
  })

  it.each<[string, () => unknown]>([
    ['no cock', () => effectiveSize(0, 4)], ['no hen', () => rateAtRandom(1, 0)], ['a count that is none', () => rateOfEvenFamilies(NaN, 4)],
    ['no year', () => effectiveSizeOverYears([])], ['a year without breeders', () => effectiveSizeOverYears([10, 0])],
    ['a rate above 1', () => builtUp(1.1, 2)], ['generations below 0', () => builtUp(0.1, -1)], ['F above 1', () => builtUp(0.1, 1, 2)],
  ])('%s', (_, make) => expect(make).toThrow(RangeError))
})
