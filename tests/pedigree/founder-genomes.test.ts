import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {founderGenomes} from '../../src/pedigree/founder-genomes.ts'
import {contributions} from '../../src/pedigree/contributions.ts'
import {geneDrop} from './gene-drop.ts'
import {anyPedigree, certain, written} from './pedigrees.ts'

function of(text: string, group: readonly string[]) {
  const {pedigree, of: at} = written(text)
  return founderGenomes(coancestry(pedigree), group.map(at))
}

const bottleneck = '1 - -\n2 - -\n3 - -\n4 - -\n5 1 2\n6 3 4\n7 5 6\n8 5 6\n9 5 6\n10 5 6'

describe('founderGenomes(coancestry, group)', () => {
  it('half the inverse of mean kinship', () => {
    // pedigree of Lacy 1989, Zoo Biol. 8:111 (from memory); mean kinship 9/32 worked by hand
    expect(of('A - -\nB - -\nE - -\nC A B\nD A B\nF D E\nG D E', ['C', 'D', 'F', 'G'])).toBeCloseTo(16 / 9, 12)
    // computed exactly: mean kinship 5/16
    expect(of(bottleneck, ['7', '8', '9', '10'])).toBeCloseTo(1.6, 12)
  })

  it('below 1 for one bird of full sibs', () => {
    // computed exactly: kinship with itself (1 + 1/4)/2
    expect(of('s - -\nd - -\na s d\nb s d\nc a b', ['c'])).toBeCloseTo(0.8, 12)
  })

  it('nobody holds nothing', () => {
    expect(of('s - -', [])).toBeNull()
  })

  it('by retention, the other definition, the bottleneck gives another figure', () => {
    // computed exactly: each founder keeps 15/32 of its genes, fg 1.875
    const {pedigree, of: at} = written(bottleneck)
    const group = ['7', '8', '9', '10'].map(at)
    const dropped = geneDrop(pedigree, {drops: 20_000, seed: 11, group})
    const {founders} = contributions(coancestry(pedigree).flow, group)
    for (const {animal} of founders) expect(Math.abs(dropped.retention(animal) - 15 / 32)).toBeLessThan(5 * Math.sqrt((15 / 32) * (17 / 32) / 20_000))
    expect(Math.abs(1 / founders.reduce((sum, {animal, share}) => sum + share ** 2 / dropped.retention(animal), 0) - 1.875)).toBeLessThan(0.05)
  })
  it('fg ≤ fe for certain parents and unrelated founders', () => {
    fc.assert(fc.property(anyPedigree(), fc.array(fc.nat(), {minLength: 1, maxLength: 6}), (drawn, picks) => {
      const kin = coancestry(certain(drawn))
      const group = picks.map(pick => pick % drawn.animals.length)
      expect(founderGenomes(kin, group)).toBeLessThanOrEqual(contributions(kin.flow, group).effective + 1e-9)
    }), {numRuns: 200})
  })
})
