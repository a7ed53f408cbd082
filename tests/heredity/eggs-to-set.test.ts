import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {eggsToSet, type HatchStage} from '../../src/heredity/eggs-to-set.ts'
import {chicksForWanted} from '../../src/heredity/hatch-size.ts'
import {binomialTail} from '../../src/statistics/binomial-tail.ts'
import {expectClose} from '../expect-close.ts'

/** The twin: midpoint sums over the shares themselves, whose product is the chance of an egg. Substituting b = sin² t takes the beta curve's spikes at 0 and 1 away. */
function byQuadrature(wanted: number, chance: number, stages: readonly HatchStage[], eggs: number, steps: number): number {
  const [stage, ...rest] = stages
  if (!stage) return binomialTail(wanted, eggs, chance)
  const alpha = stage.through + 1 / 2, beta = stage.of - stage.through + 1 / 2
  let sum = 0, weights = 0
  for (let step = 0; step < steps; step++) {
    const angle = ((step + 1 / 2) / steps) * (Math.PI / 2)
    const weight = Math.sin(angle) ** (2 * alpha - 1) * Math.cos(angle) ** (2 * beta - 1)
    weights += weight
    if (weight > 0) sum += weight * byQuadrature(wanted, chance * Math.sin(angle) ** 2, rest, eggs, steps)
  }
  return sum / weights
}

const stage = fc.integer({min: 1, max: 30}).chain(of => fc.record({through: fc.nat(of), of: fc.constant(of)}))

describe('eggsToSet(k, p, a, stages)', () => {
  it('is Sedcole’s number when nothing is lost and that is well known', () => {
    // Sedcole 1977, Crop Sci. 17:667–668: 23 for 3 of chance ¼
    expect(eggsToSet(3, 1 / 4, 0.95, [])).toEqual({chicks: 23, eggs: 23, eggsAtMean: 23, meanShare: 1})
    expect(eggsToSet(3, 1 / 4, 0.95, [{through: 1e9, of: 1e9}])).toMatchObject({chicks: 23, eggs: 23})
  })

  it('needs more than the mean says, and the more the fewer eggs were counted', () => {
    const [few, some, many] = [1, 4, 100].map(times => eggsToSet(3, 1 / 4, 0.95, [{through: 8 * times, of: 10 * times}, {through: 7 * times, of: 8 * times}]))
    const beyond = (size: typeof few) => (size?.eggs ?? NaN) / (size?.eggsAtMean ?? NaN)
    expect(beyond(few)).toBeGreaterThan(beyond(some))
    expect(beyond(some)).toBeGreaterThan(1)
    expect(beyond(many)).toBeLessThan(1.02)
  })

  it('is the first number that is assured, and takes the mean as the product of the stages', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 4}), fc.array(stage.filter(({through, of}) => through > of / 2), {maxLength: 3}), (k, stages) => {
      const size = eggsToSet(k, 1 / 2, 0.9, stages), share = stages.reduce((product, {through, of}) => (product * (through + 1 / 2)) / (of + 1), 1)
      expectClose(size?.meanShare ?? NaN, share, 1e-12)
      expect(size?.eggsAtMean).toBe(chicksForWanted(k, share / 2, 0.9))
    }), {numRuns: 25})
  })

  it('is the first number that the integral over the shares assures, for one stage and for two', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 4}), fc.constantFrom(1, 1 / 2, 3 / 16), fc.array(stage.filter(({through, of}) => through > of / 2), {minLength: 1, maxLength: 2}), (k, chance, stages) => {
      const eggs = eggsToSet(k, chance, 0.8, stages)?.eggs
      if (eggs === null || eggs === undefined || eggs > 300) return
      expect(byQuadrature(k, chance, stages, eggs, 200)).toBeGreaterThanOrEqual(0.8 - 1e-6)
      expect(byQuadrature(k, chance, stages, eggs - 1, 200)).toBeLessThan(0.8 + 1e-6)
    }), {numRuns: 25})
  })

  it('is the binomial without a stage, asks more for more, and does not mind the order of the stages', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 6}), fc.integer({min: 20, max: 100}), stage.filter(({through, of}) => through > of / 2), stage.filter(({through, of}) => through > of / 2), (k, percent, one, other) => {
      expect(eggsToSet(k, percent / 100, 0.9, [])?.eggs).toBe(chicksForWanted(k, percent / 100, 0.9))
      const [there, back, more] = [eggsToSet(k, percent / 100, 0.8, [one, other]), eggsToSet(k, percent / 100, 0.8, [other, one]), eggsToSet(k + 1, percent / 100, 0.8, [one, other])]
      expect(back?.eggs).toBe(there?.eggs)
      expect(more?.eggs ?? Infinity).toBeGreaterThanOrEqual(there?.eggs ?? Infinity)
    }), {numRuns: 25})
  })

  // Laplace's rule of succession: nothing known beforehand but an even curve, n eggs, at least one through: n/(n + 1), so n ≥ a/(1 − a)
  it.each([[0.5, 1], [0.75, 3], [0.9, 9], [0.95, 19], [0.99, 99]])('is Laplace’s number for one of n on an even curve at %f: %i', (assurance, eggs) => {
    expect(eggsToSet(1, 1, assurance, [{through: 0, of: 0, before: {through: 1, lost: 1}}])?.eggs).toBe(eggs)
  })

  it('cannot tell without a count, and never guesses', () => {
    expect(eggsToSet(3, 1 / 4, 0.95, [null])).toBeNull()
    expect(eggsToSet(3, 1 / 4, 0.95, [{through: 37, of: 48}, {through: 0, of: 0}])).toBeNull()
  })

  it('says when it would be more than anyone hatches', () => {
    expect(eggsToSet(3, 1 / 64, 0.99, [{through: 0, of: 4}])).toMatchObject({chicks: 535, eggs: null})
  })

  it('gives the value of its example', () => expect(eggsToSet(3, 1 / 4, 0.95, [{through: 37, of: 48}])).toMatchObject({chicks: 23, eggs: 32, eggsAtMean: 31}))

  it.each([[{through: 5, of: 4}], [{through: -1, of: 4}], [{through: 1.5, of: 4}], [{through: 1, of: 4, before: {through: 0, lost: 1}}]])('refuses %j', wrong => {
    expect(() => eggsToSet(1, 0.5, 0.95, [wrong])).toThrow(RangeError)
  })
})
