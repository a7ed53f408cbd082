import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Alleles} from '../../src/heredity/locus.ts'
import {hasLethal, hatchingChance, lookLikelihood} from '../../src/heredity/look-likelihood.ts'
import {expectClose} from '../expect-close.ts'
import {KINDS} from './random-flock.ts'

const look = (kind: string) => {
  const [first] = KINDS[kind]?.looks ?? []
  if (!first) throw new Error(kind)
  return first
}
const even = (states: number, wrong: number) => Array.from({length: states}, (_, state) => Array.from({length: states}, (_other, scored) => (scored === state ? 1 - wrong : wrong / (states - 1))))
const traits = (kind: string, wrong: number) => ({traits: [{look: look(kind), misscoring: even(look(kind).states.length, wrong)}]})
const CARRIER: Alleles = [0, 1]

describe('lookLikelihood(flock, reading, genotype, sex, slack)', () => {
  it('is the chance that the look is scored so, each scoring of one and the same look', () => {
    // worked by hand: of carriers four in five show five toes; scored 5, 5, 4 with 1 in 10 wrong
    expectClose(lookLikelihood(traits('extra toes of four in five', 0.1), {trait: 0, scored: [0, 0, 1]}, [CARRIER], 'male', 0), 0.8 * 0.9 * 0.9 * 0.1 + 0.2 * 0.1 * 0.1 * 0.9, 1e-15)
  })

  it('sums to 1 over everything that may be scored, whatever goes wrong', () => {
    fc.assert(fc.property(fc.constantFrom(...Object.keys(KINDS).filter(kind => KINDS[kind]?.loci.length === 1)), fc.double({min: 0, max: 0.4, noNaN: true}), fc.double({min: 0, max: 1, noNaN: true}), (kind, wrong, slack) => {
      const sum = look(kind).states.reduce((all, _, state) => all + lookLikelihood(traits(kind, wrong), {trait: 0, scored: [state]}, [CARRIER], 'female', slack), 0)
      expectClose(sum, 1, 1e-12, kind)
    }), {seed: 5, numRuns: 60})
  })

  it('speaks for no state where no rule says anything, and against what never hatches', () => {
    // a cock, of a trait seen in hens only
    expect(lookLikelihood(traits('a dominant seen in hens', 0), {trait: 0, scored: [0]}, [CARRIER], 'male', 0)).toBe(0.5)
    expect(lookLikelihood(traits('a lethal double dominant', 0), {trait: 0, scored: [0]}, [[0, 0]], 'male', 0)).toBe(0)
  })

  it('throws where there is no such trait', () => {
    expect(() => lookLikelihood({traits: []}, {trait: 0, scored: []}, [CARRIER], 'male', 0)).toThrow(RangeError)
  })
})

describe('hatchingChance(flock, genotype, sex)', () => {
  it('is what the lethal rules leave, each trait by itself', () => {
    const half = {...look('a lethal double dominant'), rules: look('a lethal double dominant').rules.map(rule => (rule.is === 'lethal' ? {...rule, penetrance: 0.5} : rule))}
    const both = {traits: [{look: half, misscoring: even(2, 0)}, {look: half, misscoring: even(2, 0)}]}
    const genotypes: readonly Alleles[] = [[0, 0], [0, 1], [1, 1]]
    expect(genotypes.map(alleles => hatchingChance(both, [alleles], 'male'))).toEqual([0.25, 1, 1])
    expect(hasLethal(half)).toBe(true)
    expect(hasLethal(look('walnut'))).toBe(false)
  })
})
