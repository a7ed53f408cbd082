import {describe, expect, it} from 'vitest'
import {broodAt, conceived} from '../../src/heredity/brood.ts'
import type {SideAtBlock} from '../../src/heredity/chick-side.ts'
import {geneBlocks} from '../../src/heredity/gene-block.ts'

const [block] = geneBlocks([{symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}], [])
const side = (variable: number | null, ...handed: readonly (readonly number[])[]): SideAtBlock =>
  ({variable, handed: handed.map(each => Float64Array.from(each)), source: handed.map(() => 0), parents: [], between: false})
const BIRD = [[1, 0, 0], [0.5, 0.5, 0], [0, 1, 0]] as const
const ALL = Float64Array.of(1, 1, 1)

describe('conceived', () => {
  it('is Mendel’s square, without what never hatches, made whole where asked', () => {
    const half = Float64Array.of(0.5, 0.5, 0)
    expect([...conceived(block!, half, half, ALL, true)]).toEqual([0.25, 0.5, 0.25])
    expect([...conceived(block!, half, half, Float64Array.of(0, 1, 1), false)]).toEqual([0, 0.5, 0.25])
    expect([...conceived(block!, half, half, Float64Array.of(0, 1, 1), true)].map(share => share * 3)).toEqual([0, 2, 1])
    expect([...conceived(block!, undefined, half, ALL, true)]).toEqual([0, 0, 0])
  })
})

describe('broodAt', () => {
  it('lays out a table over sire, dam and chick, of the genotypes asked for', () => {
    const brood = broodAt(block!, side(4, ...BIRD), side(9, ...BIRD), 'male', ALL)
    expect([brood.of, brood.possible]).toEqual([[4, 9], [0, 1, 2]])
    const table = brood.table([0, 1, 2])
    expect([...table.subarray(12, 15)]).toEqual([0.25, 0.5, 0.25])
    expect([...brood.table([2])]).toEqual([0, 0, 0, 0, 0.25, 0.5, 0, 0.5, 1])
    expect([...brood.table([2], (one, other) => (one === other ? 10 : 1))]).toEqual([0, 0, 0, 0, 2.5, 0.5, 0, 0.5, 10])
    expect(brood.table([0, 1, 2])).toBe(table)
  })

  it('has no variable for a side that is known, and only the genotypes that can be', () => {
    const brood = broodAt(block!, side(null, [0.3, 0.7, 0]), side(2, [0, 1, 0]), 'female', ALL)
    expect([brood.of, brood.possible]).toEqual([[2], [1, 2]])
    expect([...brood.table(brood.possible)]).toEqual([0.3, 0.7])
  })

  it('owes every entry wholly to the pool’s members together', () => {
    // two hens of equal chance: the pool hands on the mean of what they do
    const members = [0, 1].map(animal => ({animal, chance: 0.5, variable: animal, handed: {male: BIRD.map(each => Float64Array.from(each)), female: [], unknown: []}}))
    const copies = [0, 0.25, 0.5, 0.75, 1].map(share => [share, 1 - share, 0]), pool = {members, variable: 5, handed: {male: copies.map(each => Float64Array.from(each)), female: [], unknown: []}}
    for (const role of ['sire', 'dam'] as const) {
      const [bird, together] = [side(3, ...BIRD), side(5, ...copies)]
      const brood = broodAt(block!, role === 'sire' ? together : bird, role === 'sire' ? bird : together, 'male', ALL), owed = brood.owed(role, pool, [0, 1, 2])
      const table = brood.table([0, 1, 2])
      BIRD.forEach((one, a) => BIRD.forEach((other, b) => {
        // where the hens are of these genotypes the pool's value is their mean; there both parts make the whole
        const value = copies.findIndex(([share]) => share === (one[0] + other[0]) / 2)
        table.forEach((entry, at) => {
          const here = role === 'sire' ? Math.floor(at / 9) : Math.floor(at / 3) % 5
          if (here === value && entry > 0) expect(owed[0]![a]![at]! + owed[1]![b]![at]!).toBeCloseTo(1, 12)
        })
      }))
      expect(brood.owed(role, pool, [0, 1, 2])).toBe(owed)
    }
  })

  it('owes one table where all of a member’s genotypes hand on alike', () => {
    const none = {male: [], female: [Float64Array.of(0, 0, 1), Float64Array.of(0, 0, 1)], unknown: []}
    const [z] = geneBlocks([{symbol: 'S', on: 'Z', alleles: ['S', 's+']}], [])
    const brood = broodAt(z!, side(0, ...BIRD), side(null, [0, 0, 1]), 'female', new Float64Array(5).fill(1))
    const owed = brood.owed('dam', {members: [{animal: 1, chance: 1, variable: 2, handed: none}], variable: 2, handed: none}, [3, 4])
    expect(owed.map(parts => parts.map(part => [...part]))).toEqual([[[1, 0, 1, 1, 0, 1]]])
  })
})
