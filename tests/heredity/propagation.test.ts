import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {LIMITS, propagate} from '../../src/heredity/propagation.ts'
import {someTables, summed} from './summed.ts'

describe('propagate(sizes, factors)', () => {
  it('agrees with summing everything: apart or joined, with impossible entries, constants and variables in no table', () => {
    fc.assert(fc.property(someTables, ({sizes, factors}) => {
      const twin = summed(sizes, factors), found = propagate(sizes, factors)
      if (twin.total === 0) {
        expect(found.logSum).toBe(-Infinity)
        return
      }
      const untold = sizes.reduce((product, size, variable) => product * (factors.some(({of}) => of.includes(variable)) ? 1 : size), 1)
      expect(found.logSum).toBeCloseTo(Math.log(twin.total / untold), 9)
      expect(found).toMatchObject({exact: true, change: 0})
      sizes.forEach((_, variable) => {
        expect(found.isExact(variable)).toBe(true)
        found.marginal(variable).forEach((share, value) => { expect(share).toBeCloseTo(twin.marginals[variable]![value]!, 10) })
      })
      factors.forEach(({of}, factor) => {
        if (of.length > 0) found.joint(factor).forEach((share, entry) => { expect(share).toBeCloseTo(twin.joints[factor]![entry]!, 10) })
      })
    }), {seed: 5, numRuns: 150})
  })

  it('works a component loosely only where that one is too wide', () => {
    const alike = Float64Array.of(0.7, 0.3, 0.3, 0.7), lean = Float64Array.of(0.6, 0.4)
    // a ring of five, and a pair apart from it
    const factors = [...[0, 1, 2, 3, 4].map(at => ({of: [at, (at + 1) % 5], table: alike})), {of: [0], table: lean}, {of: [5, 6], table: alike}, {of: [5], table: lean}]
    const sizes = Array.from({length: 7}, () => 2), found = propagate(sizes, factors, {...LIMITS, exactCluster: 4, looseCluster: 4}), twin = summed(sizes, factors)
    expect([0, 1, 2, 3, 4, 5, 6].map(variable => found.isExact(variable))).toEqual([false, false, false, false, false, true, true])
    expect([found.exact, found.tooWideFrom]).toEqual([false, 5])
    // told so beforehand it is not tried again, wide or not; smaller components are
    const told = propagate(sizes, factors, {...LIMITS, looseCluster: 4, tooWideFrom: 5})
    expect([told.isExact(0), told.isExact(6), propagate(sizes, factors).tooWideFrom]).toEqual([false, true, Infinity])
    expect(found.marginal(6)[0]).toBeCloseTo(twin.marginals[6]![0]!, 12)
    expect(Math.abs(found.marginal(2)[0]! - twin.marginals[2]![0]!)).toBeLessThan(0.01)
  })

  it('will not take a table that does not fit its variables, nor give the joint of a table that is not there', () => {
    expect(() => propagate([2, 3], [{of: [0, 1], table: new Float64Array(5)}])).toThrow(RangeError)
    expect(() => propagate([2], [{of: [0], table: Float64Array.of(1, 1)}]).joint(1)).toThrow(RangeError)
  })
})
