import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {contributions} from '../../src/pedigree/contributions.ts'
import {geneFlow} from '../../src/pedigree/gene-flow.ts'
import type {Animal, Pedigree} from '../../src/pedigree/pedigree.ts'
import {geneDrop} from './gene-drop.ts'
import {anyPedigree, written} from './pedigrees.ts'

const founder: Animal = {sex: 'unknown', base: null, matings: []}
const of = (animals: readonly Animal[], group: readonly number[], bases: Pedigree['bases'] = []) => contributions(geneFlow({animals, bases, kin: []}, 'autosome'), group)

describe('contributions(flow, group)', () => {
  it('seven animals of three founders', () => {
    // source: Lacy 1989, Zoo Biol. 8:111 (pedigree and fe 2.91 from memory; shares recomputed)
    const {pedigree, of: at} = written('A - -\nB - -\nE - -\nC A B\nD A B\nF D E\nG D E')
    const group = ['C', 'D', 'F', 'G'].map(at)
    const {founders, unknown, effective} = contributions(geneFlow(pedigree, 'autosome'), group)
    expect(founders.map(({share}) => share)).toEqual([3 / 8, 3 / 8, 1 / 4])
    expect(unknown).toEqual([])
    expect(effective).toBeCloseTo(32 / 11, 12)

    // fg by retention, the other definition: 2.18 as printed there
    const dropped = geneDrop(pedigree, {drops: 20_000, seed: 9, group})
    const byRetention = 1 / founders.reduce((sum, {animal, share}) => sum + share ** 2 / dropped.retention(animal), 0)
    for (const {animal} of founders) expect(Math.abs(dropped.retention(animal) - 0.75)).toBeLessThan(5 * Math.sqrt(0.75 * 0.25 / 20_000))
    expect(Math.abs(byRetention - 24 / 11)).toBeLessThan(0.05)
  })

  it('a bottleneck hides behind four founders', () => {
    // computed exactly
    const {pedigree, of: at} = written('1 - -\n2 - -\n3 - -\n4 - -\n5 1 2\n6 3 4\n7 5 6\n8 5 6\n9 5 6\n10 5 6')
    expect(contributions(geneFlow(pedigree, 'autosome'), ['7', '8', '9', '10'].map(at)).effective).toBe(4)
  })

  it('a founder with nothing left in the group is listed with 0', () => {
    const {founders, effective} = of([founder, founder, {...founder, matings: [{sire: 0, dam: 0, chance: 1}]}], [2])
    expect(founders).toEqual([{animal: 0, base: null, share: 1}, {animal: 1, base: null, share: 0}])
    expect(effective).toBe(1)
  })

  it('every unknown parent is a founder of its own', () => {
    const half = (chance: number): Animal => ({...founder, outside: {sire: null, dam: 0}, matings: [{sire: 0, dam: null, chance}]})
    const {founders, unknown, effective} = of([founder, half(1), half(0.5)], [1, 2], [{inbreeding: 0, kinship: 0, within: null}])
    expect(founders).toEqual([{animal: 0, base: null, share: 3 / 8}])
    expect(unknown).toEqual([
      {behind: 1, as: 'dam', base: 0, share: 1 / 4},
      {behind: 2, as: 'sire', base: null, share: 1 / 8}, {behind: 2, as: 'dam', base: 0, share: 1 / 8}, {behind: 2, as: 'dam', base: null, share: 1 / 8},
    ])
    expect(effective).toBeCloseTo(1 / (9 / 64 + 1 / 16 + 3 / 64), 12)
  })

  it('one unknown hen of a family is one founder; a bird taken for another may be none of those', () => {
    const chick: Animal = {...founder, damStandIn: 1, matings: [{sire: 0, dam: null, chance: 1}]}
    expect(of([founder, founder, chick, chick], [2, 3])).toMatchObject({founders: [{share: 1 / 2}, {share: 1 / 2}], unknown: []})
    const {unknown} = of([founder, {...founder, oneOf: [{animal: 0, chance: 0.75}]}], [1])
    expect(unknown).toEqual([{behind: 1, as: 'itself', base: null, share: 0.25}])
  })

  it('by strain: shares within each, its flocks counted in', () => {
    const bases = [{inbreeding: 0, kinship: 0, within: null}, {inbreeding: 0, kinship: 0.1, within: 0}, {inbreeding: 0, kinship: 0, within: null}]
    const from = (base: number | null): Animal => ({...founder, base})
    const {byBase} = of([from(0), from(1), from(2), from(null)], [0, 0, 1, 2], bases)
    expect(byBase).toEqual([
      {base: 0, share: 0.75, effective: 0.75 ** 2 / (0.25 + 0.0625)}, {base: 1, share: 0.25, effective: 1}, {base: 2, share: 0.25, effective: 1}, {base: null, share: 0, effective: 0},
    ])
  })

  it('no group, no shares', () => {
    expect(of([founder], [])).toMatchObject({founders: [{share: 0}], effective: 0})
  })

  it('on the Z and in the dam line', () => {
    const {pedigree, of: at} = written('s♂ - -\nd♀ - -\nc♂ s d\nh♀ s d')
    const shares = (transmission: 'Z' | 'dam line') => contributions(geneFlow(pedigree, transmission), [at('c'), at('h')]).founders.map(({share}) => share)
    expect([shares('Z'), shares('dam line')]).toEqual([[3 / 4, 1 / 4], [0, 1]])
  })

  it.each(['autosome', 'Z', 'dam line'] as const)('shares sum to 1 whatever is in doubt (%s)', transmission => {
    fc.assert(fc.property(anyPedigree(), fc.array(fc.nat(), {minLength: 1, maxLength: 5}), (pedigree, picks) => {
      const {founders, unknown, effective, byBase} = contributions(geneFlow(pedigree, transmission), picks.map(pick => pick % pedigree.animals.length))
      expect([...founders, ...unknown].reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 9)
      expect(effective).toBeGreaterThanOrEqual(1 - 1e-9)
      expect(effective).toBeLessThanOrEqual(founders.length + unknown.length + 1e-9)
      // base 2 is within base 0
      expect(byBase.filter(({base}) => base !== 2).reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 9)
    }), {numRuns: 200})
  })
})
