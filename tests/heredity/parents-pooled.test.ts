import {describe, expect, it} from 'vitest'
import {geneBlocks} from '../../src/heredity/gene-block.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {emptyNetwork, type Held, type Network} from '../../src/heredity/network.ts'
import {areAlike, pooled, pooledDoubt, pooledShares, sidesApart} from '../../src/heredity/parents-pooled.ts'
import {summed} from './summed.ts'

const P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}
const S: Locus = {symbol: 'S', on: 'Z', alleles: ['S', 's+']}
const [AUTOSOME] = geneBlocks([P], []), [Z] = geneBlocks([S], [])
const pair = (sire: number | null, dam: number | null, chance: number) => ({sire, dam, chance})

/** birds that may be of each of these genotypes alike */
function birds(network: Network, genotypes: readonly (readonly number[])[]): Held[] {
  return genotypes.map(list => {
    const variable = network.variable(list.length)
    network.factor([variable], () => 1 / list.length)
    return {variable, genotypes: list, source: null, own: 0}
  })
}

describe('sidesApart', () => {
  it('gives the candidates of each side in order, a bird outside last', () => {
    const sides = sidesApart([pair(4, null, 0.3), pair(4, 2, 0.1), pair(1, null, 0.45), pair(1, 2, 0.15)])
    expect(sides?.sire.map(([bird]) => bird)).toEqual([1, 4])
    expect(sides?.dam.map(([bird]) => bird)).toEqual([2, null])
    ;[0.6, 0.4].forEach((chance, place) => { expect(sides?.sire[place]?.[1]).toBeCloseTo(chance, 12) })
  })

  it('is null where who the sire is says who the dam may be', () => {
    expect(sidesApart([pair(0, 2, 0.5), pair(1, 3, 0.5)])).toBeNull()
    expect(sidesApart([pair(0, 2, 0.4), pair(0, 3, 0.1), pair(1, 2, 0.1), pair(1, 3, 0.4)])).toBeNull()
  })
})

describe('pooled', () => {
  it('tells five hens by the number of copies among them, 0 to 10, as often as they fall out', () => {
    const network = emptyNetwork(), held = birds(network, Array.from({length: 5}, () => [0, 1, 2]))
    const pool = pooled(network, AUTOSOME!, 'dam', held.map((_, hen) => [hen, 0.2] as const), hen => held[hen]!, [0.5, 0.5])!
    expect(pool.handed.male).toHaveLength(11)
    const shares = summed(network.sizes, network.factors).marginals[pool.variable!]!
    // five hens, each with 2, 1 or 0 copies alike: the trinomial coefficients over 3⁵ = 243
    const copies = new Map(pool.handed.male.map(([first], value) => [Math.round(first! * 10), shares[value]! * 243]))
    expect(Array.from({length: 11}, (_, number) => Math.round(copies.get(number) ?? -1))).toEqual([1, 5, 15, 30, 45, 51, 45, 30, 15, 5, 1])
  })

  it('leaves out of the sum what does not vary, and a hen gives her daughters no Z', () => {
    const network = emptyNetwork(), held = birds(network, [[3], [4]])
    const pool = pooled(network, Z!, 'dam', [[0, 0.5], [1, 0.25], [null, 0.25]], hen => held[hen]!, [0.4, 0.6])!
    expect(pool.variable).toBeNull()
    expect(pool.handed.female.map(chances => [...chances])).toEqual([[0, 0, 1]])
    ;[0.5 + 0.25 * 0.4, 0.25 + 0.25 * 0.6, 0].forEach((chance, haplotype) => { expect(pool.handed.male[0]![haplotype]).toBeCloseTo(chance, 12) })
    expect(network.factors).toHaveLength(2)
  })

  it('is null for one bird, for a sum of too many values, and for what a parent of its sex cannot be', () => {
    const network = emptyNetwork(), held = birds(network, Array.from({length: 6}, () => [0, 1, 2])), variables = network.sizes.length
    expect(pooled(network, AUTOSOME!, 'sire', [[0, 1]], hen => held[hen]!, [0.5, 0.5])).toBeNull()
    expect(pooled(network, AUTOSOME!, 'sire', [[0, 0.41], [1, 0.33], [2, 0.19], [3, 0.07]], hen => held[hen]!, [0.5, 0.5])).toBeNull()
    expect(pooled(network, Z!, 'sire', [[0, 0.5], [1, 0.5]], () => ({...held[0]!, genotypes: [0, 1, 3]}), [0.5, 0.5])).toBeNull()
    expect(network.sizes).toHaveLength(variables)
  })
})

describe('pooledDoubt and pooledShares', () => {
  it('owe each bird what it would have handed on: one of two that gave what only one of them has', () => {
    const doubt = pooledDoubt({members: [{animal: 7, chance: 0.5, variable: 3, handed: {male: [], female: [], unknown: []}}, {animal: null, chance: 0.5, variable: null, handed: {male: [], female: [], unknown: []}}], variable: 9, handed: {male: [], female: [], unknown: []}}, 5,
      () => [[Float64Array.of(1, 0), Float64Array.of(0.5, 0.5)], [Float64Array.of(0, 1)]])
    expect(doubt).toMatchObject({sources: [7, null], variables: [3, null], factor: 5})
    // the table's entries stand 0.75 to 0.25; the first bird is of its first genotype in 0.5 and 0 of them, of its second in the rest
    const found = {joint: () => Float64Array.of(0.75, 0.25), jointWith: () => [Float64Array.of(0.5, 0), Float64Array.of(0.25, 0.25)]}
    const first = 0.5 * 1 + 0.25 * 0.5 + 0.25 * 0.5, outside = 0.25
    expect(pooledShares(doubt, found)).toEqual([first / (first + outside), outside / (first + outside)])
  })
})

describe('areAlike', () => {
  it('holds where every value hands on the same, but for rounding', () => {
    expect([areAlike([]), areAlike([Float64Array.of(0.5, 0.5), Float64Array.of(0.5 + 1e-13, 0.5)]), areAlike([Float64Array.of(1, 0), Float64Array.of(0, 1)])]).toEqual([true, true, false])
  })
})
