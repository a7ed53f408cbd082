import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {truncatedBinomial} from '../../src/statistics/truncated-binomial.ts'
import {truncatedFit} from '../../src/statistics/truncated-fit.ts'
import {expectClose} from '../expect-close.ts'

const mating = fc.integer({min: 1, max: 6}).chain(chicks => fc.record({chicks: fc.constant(chicks), recessives: fc.integer({min: 1, max: chicks})}))

/** Every way the matings could have come out, with its sum and chance. */
function everyWay(sizes: readonly number[], share: number): {sum: number; chance: number}[] {
  const [first, ...rest] = sizes
  if (first === undefined) return [{sum: 0, chance: 1}]
  const others = everyWay(rest, share)
  return truncatedBinomial(first, share).flatMap((chance, count) => (count === 0 ? [] : others.map(other => ({sum: count + other.sum, chance: chance * other.chance}))))
}

describe('truncatedFit(matings, share)', () => {
  it('expects 48 recessives in 37 families of three', () => {
    // Emery & Rimoin 1990, Principles and Practice of Medical Genetics, table 8.1
    const families = [...Array<number>(27).fill(1), ...Array<number>(9).fill(2), 3].map(recessives => ({chicks: 3, recessives}))
    const fit = truncatedFit(families, 1 / 4)
    expect(fit).toMatchObject({matings: 37, chicks: 111, recessives: 48})
    expectClose(fit.expected, 48, 1e-10)
    expectClose(fit.p, 1, 1e-10)
  })

  it('gives one mating by hand', () => {
    const {expected, p} = truncatedFit([{chicks: 3, recessives: 2}], 1 / 4)
    expectClose(expected, 48 / 37, 1e-12)
    expectClose(p, 10 / 37, 1e-12)
  })

  it('is what every way to come out gives', () => {
    fc.assert(fc.property(fc.array(mating, {minLength: 1, maxLength: 4}), fc.constantFrom(1 / 4, 1 / 2, 1 / 16), (matings, share) => {
      const ways = everyWay(matings.map(({chicks}) => chicks), share)
      const chanceOf = (sum: number) => ways.reduce((all, way) => (way.sum === sum ? all + way.chance : all), 0)
      const seen = matings.reduce((sum, {recessives}) => sum + recessives, 0)
      let slow = 0
      for (const sum of new Set(ways.map(way => way.sum))) if (chanceOf(sum) <= chanceOf(seen) * (1 + 1e-9)) slow += chanceOf(sum)
      expectClose(truncatedFit(matings, share).p, slow, 1e-9, {matings, share})
    }), {numRuns: 60})
  })

  it('does not mind the order of the matings, nor one of a single chick, which could only be recessive', () => {
    fc.assert(fc.property(fc.array(mating, {minLength: 1, maxLength: 8}), matings => {
      const fit = truncatedFit(matings, 1 / 4), other = truncatedFit([{chicks: 1, recessives: 1}, ...[...matings].reverse()], 1 / 4)
      expectClose(other.p, fit.p, 1e-9)
      expectClose(other.expected, fit.expected + 1, 1e-9)
      expectClose(other.variance, fit.variance, 1e-9)
    }))
  })

  it('refuses matings that were not noticed by a recessive', () => {
    expect(() => truncatedFit([], 1 / 4)).toThrow(RangeError)
    expect(() => truncatedFit([{chicks: 3, recessives: 0}], 1 / 4)).toThrow(RangeError)
    expect(() => truncatedFit([{chicks: 3, recessives: 4}], 1 / 4)).toThrow(RangeError)
  })
})
