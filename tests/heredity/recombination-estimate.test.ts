import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {recombinationEstimate, type TwoLocusCounts} from '../../src/heredity/recombination-estimate.ts'
import {expectClose} from '../expect-close.ts'

const sharesOf = (theta: number) => [(2 + theta) / 4, (1 - theta) / 4, (1 - theta) / 4, theta / 4]
const logLikelihood = (counts: TwoLocusCounts, theta: number) =>
  counts.reduce((sum, count, place) => sum + (count === 0 ? 0 : count * Math.log(sharesOf(theta)[place] ?? NaN)), 0)
const someCounts = fc.tuple(fc.nat(300), fc.nat(120), fc.nat(120), fc.nat(120)).filter(counts => counts.some(count => count > 0))

describe('recombinationEstimate(counts)', () => {
  it('gives the estimate printed for 125, 18, 20, 34', () => {
    // Rao 1973, Linear Statistical Inference, 5g; Dempster, Laird & Rubin 1977, J. R. Stat. Soc. B 39:1–38
    const got = recombinationEstimate([125, 18, 20, 34])
    expect(got).toMatchObject({n: 197, phase: 'coupling'})
    expectClose(got.theta, 0.626821, 1e-6)
    expectClose(got.thetaError ?? NaN, 0.052612, 1e-6)
    expectClose(got.recombination, 0.208279, 1e-6)
  })

  it('gives Fisher’s for maize in repulsion', () => {
    // Fisher 1925, Statistical Methods for Research Workers, ch. 9: sugary and white base leaf, 1997, 906, 904, 32; θ 0.0357, SE 0.0058 (from memory)
    const got = recombinationEstimate([1997, 906, 904, 32])
    expect(got.phase).toBe('repulsion')
    expectClose(got.theta, 0.035712, 1e-6)
    expectClose(got.thetaError ?? NaN, 0.0058, 5e-5)
    expectClose(got.recombination, Math.sqrt(got.theta), 1e-15)
  })

  it('is the top of the likelihood, sought step by step', () => {
    fc.assert(fc.property(someCounts, counts => {
      const {theta} = recombinationEstimate(counts)
      const top = logLikelihood(counts, theta)
      for (let step = 1; step < 2000; step++) expect(logLikelihood(counts, step / 2000)).toBeLessThanOrEqual(top + 1e-9)
    }), {numRuns: 40})
  })

  it('comes back to the recombination the chicks were expected from, in either phase', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 49}), fc.constantFrom('coupling' as const, 'repulsion' as const), (percent, phase) => {
      const r = percent / 100, theta = phase === 'coupling' ? (1 - r) ** 2 : r ** 2
      const [both = 0, first = 0, second = 0, neither = 0] = sharesOf(theta).map(share => Math.round(share * 4e6))
      const got = recombinationEstimate([both, first, second, neither])
      expect(got.phase).toBe(phase)
      expectClose(got.recombination, r, 1e-4)
    }))
  })

  it('holds its estimate between limits that the likelihood sets', () => {
    fc.assert(fc.property(someCounts, fc.constantFrom('coupling' as const, 'repulsion' as const, undefined), (counts, stated) => {
      const {phase, recombination, interval, lod} = recombinationEstimate(counts, stated)
      const fall = (r: number) => logLikelihood(counts, phase === 'coupling' ? (1 - recombination) ** 2 : recombination ** 2) - logLikelihood(counts, phase === 'coupling' ? (1 - r) ** 2 : r ** 2)
      expect(interval.low).toBeLessThanOrEqual(recombination)
      expect(interval.high).toBeGreaterThanOrEqual(recombination)
      if (interval.low > 0) expectClose(fall(interval.low), 3.841459 / 2, 1e-4, {counts})
      if (interval.high < 1 / 2) expectClose(fall(interval.high), 3.841459 / 2, 1e-4, {counts})
      expect(lod).toBeGreaterThanOrEqual(0)
    }))
  })

  it('sees nothing in 9 : 3 : 3 : 1', () => {
    const got = recombinationEstimate([9, 3, 3, 1])
    expectClose(got.recombination, 1 / 2, 1e-12)
    expectClose(got.lod, 0, 1e-12)
  })

  it('keeps to a stated phase, and says ½ when the chicks speak for the other', () => {
    const got = recombinationEstimate([125, 18, 20, 34], 'repulsion')
    expect(got).toMatchObject({recombination: 1 / 2, error: null, lod: 0})
  })

  it('has no standard error at an end, but limits still', () => {
    const got = recombinationEstimate([60, 0, 0, 20])
    expect(got).toMatchObject({recombination: 0, error: null, thetaError: null})
    expect(got.interval.low).toBe(0)
    expect(got.interval.high).toBeGreaterThan(0.005)
    expect(recombinationEstimate([60, 25, 24, 0])).toMatchObject({phase: 'repulsion', recombination: 0, error: null})
  })

  it.each([[[0, 0, 0, 0]], [[1, -1, 0, 0]], [[1.5, 0, 0, 0]]])('refuses %j', counts => expect(() => recombinationEstimate(counts as unknown as TwoLocusCounts)).toThrow(RangeError))
})
