import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {truncatedBinomial, truncatedMoments} from '../../src/statistics/truncated-binomial.ts'
import {expectClose} from '../expect-close.ts'
import {multinomial} from './every-outcome.ts'

describe('truncatedMoments(n, p)', () => {
  // The table of the a-priori method for ¼, as reprinted in handbooks of human genetics (from memory); three decimals
  it.each([[1, 1, 0], [2, 1.143, 0.122], [3, 1.297, 0.263], [4, 1.463, 0.42], [5, 1.639, 0.592], [6, 1.825, 0.776]])('of %i chicks expects %f recessives, variance %f', (n, mean, variance) => {
    const got = truncatedMoments(n, 1 / 4)
    expectClose(got.mean, mean, 5.1e-4)
    expectClose(got.variance, variance, 5.1e-4)
  })

  it('is mean and variance of the distribution', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 80}), fc.double({min: 1e-6, max: 1, noNaN: true}), (n, share) => {
      const {mean, variance} = truncatedMoments(n, share), chances = truncatedBinomial(n, share)
      const first = chances.reduce((sum, chance, count) => sum + chance * count, 0)
      expectClose(mean, first, 1e-10 * n)
      expectClose(variance, chances.reduce((sum, chance, count) => sum + chance * (count - first) ** 2, 0), 1e-8 * n)
    }))
  })

  it('expects more than n·p, and no less than one', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 500}), fc.double({min: 1e-9, max: 1, noNaN: true}), (n, share) => {
      expect(truncatedMoments(n, share).mean).toBeGreaterThanOrEqual(Math.max(n * share, 1 - 1e-12))
    }))
  })

  it.each([[0, 0.25], [1.5, 0.25], [3, 0], [3, 1.1], [3, NaN]])('refuses %f chicks at %f', (n, share) => {
    expect(() => truncatedMoments(n, share)).toThrow(RangeError)
    expect(() => truncatedBinomial(n, share)).toThrow(RangeError)
  })
})

describe('truncatedBinomial(n, p)', () => {
  it('gives families of three as printed', () => {
    // Emery & Rimoin 1990, Principles and Practice of Medical Genetics, table 8.1: of 37 noticed families 27 have one, 9 two, 1 three
    const printed = [0, 27 / 37, 9 / 37, 1 / 37]
    truncatedBinomial(3, 1 / 4).forEach((chance, count) => expectClose(chance, printed[count] ?? NaN, 1e-12))
  })

  it('is the binomial without its nought, made up to 1 again', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 60}), fc.double({min: 0.01, max: 0.99, noNaN: true}), (n, share) => {
      const plain = Array.from({length: n + 1}, (_, count) => multinomial([count, n - count], [share, 1 - share]))
      const some = plain.slice(1).reduce((sum, chance) => sum + chance, 0)
      truncatedBinomial(n, share).forEach((chance, count) => expectClose(chance, count === 0 ? 0 : (plain[count] ?? NaN) / some, 1e-11))
    }))
  })

  it('comes to 1', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 900}), fc.double({min: 1e-6, max: 1, noNaN: true}), (n, share) => {
      expectClose(truncatedBinomial(n, share).reduce((sum, chance) => sum + chance, 0), 1, 1e-10)
    }))
  })
})
