import {describe, expect, it} from 'vitest'
import {geneFlow, HANDED, selfKinship, type GeneFlow} from '../../src/pedigree/gene-flow.ts'
import type {Animal, Pedigree, Transmission} from '../../src/pedigree/pedigree.ts'
import {written} from './pedigrees.ts'

const founder = (sex: Animal['sex'] = 'unknown', base: number | null = null): Animal => ({sex, base, matings: []})
const alone = (animals: readonly Animal[], bases: Pedigree['bases'] = []): Pedigree => ({animals, bases, kin: []})
/** sources of one node with their weights */
const from = ({first, source, weight}: GeneFlow, node: number): Record<string, number> =>
  Object.fromEntries(Array.from(source.slice(first[node], first[node + 1]), (each, k) => [each, weight[(first[node] ?? 0) + k] ?? NaN]))

describe('geneFlow(pedigree, transmission)', () => {
  const {pedigree} = written('A♂ - -\nB♀ - -\nC♂ A B\nD♀ A B\nE A B')

  it.each<[Transmission, readonly Record<string, number>[]]>([
    ['autosome', [{0: 0.5, 1: 0.5}, {0: 0.5, 1: 0.5}, {0: 0.5, 1: 0.5}]],
    // a cock has a Z of each, a hen her sire's; a chick of unknown sex is half of both
    ['Z', [{0: 0.5, 1: 0.5}, {0: 1}, {0: 0.75, 1: 0.25}]],
    ['dam line', [{1: 1}, {1: 1}, {1: 1}]],
  ])('%s: a son, a daughter and a chick of unknown sex', (transmission, expected) => {
    const flow = geneFlow(pedigree, transmission)
    expect([2, 3, 4].map(node => from(flow, node))).toEqual(expected)
  })

  it('blends candidates by their chances, and gives a parent outside the book its base', () => {
    const chick: Animal = {
      sex: 'unknown', base: null, outside: {sire: 0, dam: null}, matings: [{sire: 0, dam: 1, chance: 0.5}, {sire: 2, dam: 1, chance: 0.2}, {sire: null, dam: 1, chance: 0.2}, {sire: 0, dam: null, chance: 0.1}],
    }
    const flow = geneFlow(alone([founder('male'), founder('female'), founder('male'), chick], [{inbreeding: 0, kinship: 0.1, within: null}]), 'autosome')
    // nodes: the base 0, then the birds
    const blend = from(flow, 4)
    expect(Object.keys(blend)).toEqual(['0', '1', '2', '3'])
    for (const [node, weight] of Object.entries({0: 0.1, 1: 0.3, 2: 0.45, 3: 0.1})) expect(blend[node]).toBeCloseTo(weight, 12)
  })

  it('leads a family through the one hen that stands for its dam, and her through those she may be', () => {
    const standIn: Animal = {...founder('female'), oneOf: [{animal: 1, chance: 0.5}, {animal: 2, chance: 0.5}]}
    const chick: Animal = {sex: 'male', base: null, damStandIn: 3, matings: [{sire: 0, dam: 1, chance: 0.5}, {sire: 0, dam: 2, chance: 0.5}]}
    const flow = geneFlow(alone([founder('male'), founder('female'), founder('female'), standIn, chick]), 'autosome')
    expect(from(flow, 3)).toEqual({1: 0.5, 2: 0.5})
    expect(from(flow, 4)).toEqual({0: 0.5, 3: 0.5})
  })

  it('stands sources before what flows from them, and counts the longest way up', () => {
    const {pedigree: late, of} = written('E C D\nD A C\nC A B\nA - -\nB - -')
    const {order, level} = geneFlow(late, 'autosome')
    const place = (id: string) => order.indexOf(of(id))
    for (const [parent, chick] of [['A', 'C'], ['B', 'C'], ['C', 'D'], ['A', 'D'], ['C', 'E'], ['D', 'E']] as const) expect(place(parent)).toBeLessThan(place(chick))
    expect(['A', 'B', 'C', 'D', 'E'].map(id => level[of(id)])).toEqual([0, 0, 1, 2, 3])
  })

  it('says what of a founder no source explains, and nothing of others', () => {
    const flow = geneFlow(alone([founder('male', 1), {sex: 'male', base: null, matings: [{sire: 0, dam: null, chance: 1}]}],
      [{inbreeding: 0.1, kinship: 0.05, within: null}, {inbreeding: 0.1, kinship: 0.2, within: 0}]), 'autosome')
    expect(Array.from(flow.founderOwn, own => Number(own.toFixed(12)))).toEqual([0.05, 0.15, 0.35, NaN])
  })

  it('refuses a loop, a chance of nothing and chances above the whole', () => {
    const chick = (...matings: Animal['matings']): Animal => ({sex: 'unknown', base: null, matings})
    expect(() => geneFlow(alone([chick({sire: 1, dam: null, chance: 1}), chick({sire: 0, dam: null, chance: 1})]), 'autosome')).toThrow('a loop in descent: 1 → 0')
    expect(() => geneFlow(alone([founder(), chick({sire: 0, dam: null, chance: 0})]), 'autosome')).toThrow('a chance is above 0, not 0')
    expect(() => geneFlow(alone([founder(), founder(), chick({sire: 0, dam: 1, chance: 0.7}, {sire: 1, dam: 0, chance: 0.7})]), 'autosome')).toThrow('above 1')
  })
})

describe('what a parent hands on', () => {
  it('makes the whole of every chick', () => {
    for (const bySex of Object.values(HANDED)) for (const {sire, dam} of Object.values(bySex)) expect(sire + dam).toBe(1)
  })

  it('selfKinship: ½ (1 + F) with two copies, 1 with one, between them for a bird of unknown sex', () => {
    expect(selfKinship(0.5, 'female', 'autosome')).toBe(0.75)
    expect((['male', 'female', 'unknown'] as const).map(sex => selfKinship(0.5, sex, 'Z'))).toEqual([0.75, 1, 0.875])
    expect(selfKinship(0.5, 'male', 'dam line')).toBe(1)
  })
})
