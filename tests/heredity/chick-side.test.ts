import {describe, expect, it} from 'vitest'
import {chickSide, standInSide} from '../../src/heredity/chick-side.ts'
import {geneBlocks} from '../../src/heredity/gene-block.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {emptyNetwork, type Held, type Network} from '../../src/heredity/network.ts'
import {summed} from './summed.ts'

const P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}
const R: Locus = {symbol: 'R', on: 'autosome', alleles: ['R', 'r+']}

/** birds whose genotypes at every block are as given, each for certain */
function birds(network: Network, genotypes: readonly (readonly number[])[]): Held[][] {
  return genotypes.map(list => list.map((genotype): Held => {
    const variable = network.variable(3)
    network.factor([variable], ([value]) => (value === genotype ? 1 : 0))
    return {variable, genotypes: [0, 1, 2], source: null, own: 0}
  }))
}

describe('chickSide', () => {
  it('is the parent itself where it is certain, and a fixed gamete where it is outside', () => {
    const network = emptyNetwork(), blocks = geneBlocks([P], []), held = birds(network, [[1]])
    const sure = chickSide(network, blocks, held, 'male', 'sire', [{sire: 0, dam: null, chance: 1}], [])
    expect(sure).toMatchObject({doubt: null, birds: [0], at: [{variable: held[0]![0]!.variable, between: false}]})
    expect(sure.at[0]!.handed.map(chances => [...chances])).toEqual([[1, 0, 0], [0.5, 0.5, 0], [0, 1, 0]])
    const outside = chickSide(network, blocks, held, 'male', 'dam', [{sire: 0, dam: null, chance: 1}], [Float64Array.of(0.3, 0.7, 0)])
    expect(outside).toMatchObject({doubt: null, birds: [null], at: [{variable: null}]})
    expect([...outside.at[0]!.handed[0]!]).toEqual([0.3, 0.7, 0])
    expect(() => chickSide(network, blocks, held, 'male', 'dam', [{sire: 0, dam: null, chance: 1}], [])).toThrow(RangeError)
  })

  it('stands between chick and birds where it may be one of several: source and haplotype as each would hand them on', () => {
    const network = emptyNetwork(), blocks = geneBlocks([P], []), held = birds(network, [[0], [1], [2]])
    const {doubt, at: [at]} = chickSide(network, blocks, held, 'male', 'sire', [0, 1, 2].map(sire => ({sire, dam: null, chance: 1 / 3})), [])
    if (!doubt || !at) throw new Error('no doubt')
    const shares = summed(network.sizes, network.factors).marginals[at.variable!]!
    const found = at.handed.map((chances, value) => [at.source[value], chances.indexOf(1), Number((shares[value]! * 3).toFixed(12))]).filter(([, , share]) => share! > 0)
    expect(found).toEqual([[0, 0, 1], [1, 0, 0.5], [1, 1, 0.5], [2, 1, 1]])
    expect(doubt).toMatchObject({sources: [0, 1, 2], variable: at.variable})
  })

  it('keeps several blocks to one and the same bird', () => {
    const network = emptyNetwork(), blocks = geneBlocks([P, R], []), held = birds(network, [[0, 0], [2, 2]])
    const {doubt, at: [one, other]} = chickSide(network, blocks, held, 'male', 'sire', [0, 1].map(sire => ({sire, dam: null, chance: 0.5})), [])
    if (!doubt || !one || !other) throw new Error('no doubt')
    expect(new Set([doubt.variable, one.variable, other.variable]).size).toBe(3)
    const together = network.factor([one.variable!, other.variable!], () => 1)
    const joint = summed(network.sizes, network.factors).joints[together]!
    joint.forEach((share, entry) => {
      if (share > 0) expect(one.source[Math.floor(entry / other.source.length)]).toBe(other.source[entry % other.source.length])
    })
  })
})

describe('standInSide', () => {
  it('is the one hen, whoever she is', () => {
    const blocks = geneBlocks([P], [])
    const side = standInSide(blocks, 7, [{variable: 3, genotypes: [0, 1, 1], source: [0, 0, 1], own: 0}], 'female', null)
    expect(side).toMatchObject({birds: [7], at: [{variable: 3, source: [0, 0, 1], between: false}]})
    expect(side.at[0]!.handed.map(chances => [...chances])).toEqual([[1, 0, 0], [0.5, 0.5, 0], [0.5, 0.5, 0]])
    expect(() => standInSide(blocks, 7, [], 'female', null)).toThrow(RangeError)
  })
})
