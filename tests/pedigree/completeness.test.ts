import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {completeness} from '../../src/pedigree/completeness.ts'
import type {Animal, Pedigree} from '../../src/pedigree/pedigree.ts'
import {anyPedigree, written} from './pedigrees.ts'

const founder: Animal = {sex: 'unknown', base: null, matings: []}
const of = (sire: number | null, dam: number | null, more: Partial<Animal> = {}): Animal => ({...founder, matings: [{sire, dam, chance: 1}], ...more})
const last = (animals: readonly Animal[]) => completeness({animals, bases: [], kin: []}).at(-1)

describe('completeness(pedigree)', () => {
  it('two known parents and nothing above are one generation, four known grandparents two', () => {
    // source: Gutiérrez et al. 2008, Genet. Sel. Evol. 40:359, by its definition
    const {pedigree, of: at} = written('1 - -\n2 - -\n3 - -\n4 - -\n5 1 2\n6 3 4\n7 5 6\n8 7 1\n9 7 -')
    const known = completeness(pedigree)
    expect(known[at('1')]).toEqual({equivalent: 0, full: 0})
    expect(known[at('5')]).toEqual({equivalent: 1, full: 1})
    expect(known[at('7')]).toEqual({equivalent: 2, full: 2})
    expect(known[at('8')]).toEqual({equivalent: 2, full: 1})
    expect(known[at('9')]).toEqual({equivalent: 1.5, full: 0})
  })

  it('candidate parents count by their chances, and the least known of them bounds the full generations', () => {
    const animals = [founder, founder, of(0, 1), {...founder, matings: [{sire: 0, dam: 1, chance: 0.25}, {sire: 2, dam: 1, chance: 0.75}]}]
    expect(last(animals)).toEqual({equivalent: 0.5 * (1 + 0.75) + 0.5, full: 1})
    expect(last([...animals, of(3, 2)])).toEqual({equivalent: 0.5 * (1 + 1.375) + 0.5 * 2, full: 2})
  })

  it('what chances want to 1 adds nothing', () => {
    expect(last([founder, founder, {...founder, matings: [{sire: 0, dam: 1, chance: 0.6}]}])).toEqual({equivalent: 0.6, full: 0})
    expect(last([founder, founder, {...founder, matings: [{sire: 0, dam: 1, chance: 0.6}, {sire: 0, dam: null, chance: 0.4}]}])).toEqual({equivalent: 0.8, full: 0})
  })

  it('a stand-in dam is as well known as the hens she may be', () => {
    const hens = [founder, founder, of(0, 1)]
    const standIn = {...founder, oneOf: [{animal: 1, chance: 0.5}, {animal: 2, chance: 0.5}]}
    const chick = {...founder, damStandIn: 3, matings: [{sire: 0, dam: 1, chance: 0.5}, {sire: 0, dam: 2, chance: 0.5}]}
    expect(last([...hens, standIn])).toEqual({equivalent: 0.5, full: 0})
    expect(last([...hens, standIn, chick])).toEqual({equivalent: 0.5 + 0.5 * 1.5, full: 1})
    // she may also be none of them
    expect(last([...hens, {...founder, oneOf: [{animal: 2, chance: 0.5}]}, chick])).toEqual({equivalent: 0.5 + 0.5 * 0.5 * 2, full: 0})
    // nothing is known of her
    expect(last([...hens, founder, of(0, null, {damStandIn: 3})])).toEqual({equivalent: 0.5, full: 0})
  })

  it('equals the sum of (½)^g over known ancestors g generations back, each candidate by its chance', () => {
    const listed = ({animals}: Pedigree, index: number): number => {
      const animal = animals[index]
      if (animal?.oneOf) return animal.oneOf.reduce((sum, one) => sum + one.chance * listed({animals, bases: [], kin: []}, one.animal), 0)
      const up = (parent: number, chance: number) => chance * 0.5 * (1 + listed({animals, bases: [], kin: []}, parent))
      return (animal?.matings ?? []).reduce((sum, {sire, dam, chance}) =>
        sum + (sire === null ? 0 : up(sire, chance)) + (dam === null || animal?.damStandIn !== undefined ? 0 : up(dam, chance)), animal?.damStandIn === undefined ? 0 : up(animal.damStandIn, 1))
    }
    fc.assert(fc.property(anyPedigree(14), pedigree => {
      completeness(pedigree).forEach(({equivalent, full}, index) => {
        expect(equivalent).toBeCloseTo(listed(pedigree, index), 10)
        expect(full).toBeLessThanOrEqual(equivalent + 1e-9)
      })
    }), {numRuns: 100})
  })
})
