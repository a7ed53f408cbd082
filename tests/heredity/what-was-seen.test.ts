import {describe, expect, it} from 'vitest'
import type {Flock, HeritableTrait, Reading} from '../../src/heredity/flock.ts'
import {geneBlocks} from '../../src/heredity/gene-block.ts'
import type {GenotypePattern} from '../../src/heredity/genotype-notation.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {lookOf} from '../../src/heredity/look-rules.ts'
import {whatWasSeen} from '../../src/heredity/what-was-seen.ts'
import type {Animal} from '../../src/pedigree/pedigree.ts'
import {KINDS} from './random-flock.ts'

const sure = (states: number): HeritableTrait['misscoring'] => Array.from({length: states}, (_, state) => Array.from({length: states}, (_other, scored) => (scored === state ? 1 : 0)))

/** one bird of this kind of genetics */
function flockOf(kind: string, sex: Animal['sex'], readings: readonly Reading[], tested: readonly (GenotypePattern | null)[] | null = null): Flock {
  const {loci, linkages = [], looks} = KINDS[kind] ?? {loci: [], looks: []}
  return {
    pedigree: {animals: [{sex, matings: [], base: null}], bases: [], kin: []}, loci, linkages, traits: looks.map(look => ({look, misscoring: sure(look.states.length)})),
    shares: () => [], readings: () => readings, tested: () => tested,
  }
}
const seenOf = (flock: Flock, slack = 0) => {
  const seen = whatWasSeen(flock, geneBlocks(flock.loci, flock.linkages), slack)
  return {...seen, alone: (animal: number, block: number) => seen.alone(animal, block, seen.told(animal)), together: (animal: number) => seen.together(animal, seen.told(animal))}
}

describe('whatWasSeen(flock, blocks, slack)', () => {
  it('multiplies the readings of a bird, and strikes what a test rules out', () => {
    expect([...seenOf(flockOf('an autosomal dominant', 'male', [{trait: 0, scored: [0]}])).alone(0, 0)]).toEqual([1, 1, 0])
    expect([...seenOf(flockOf('an autosomal dominant', 'male', [], [[0, 1]])).alone(0, 0)]).toEqual([0, 1, 0])
    expect([...seenOf(flockOf('an autosomal dominant', 'male', [{trait: 0, scored: [0]}], [[1, 'any']])).alone(0, 0)]).toEqual([0, 1, 0])
  })

  it('leaves a share of scores and tests in doubt where it is told to', () => {
    // worked by hand: .9 of the score's own chance and half of the tenth that may be anything; a test that says otherwise, a tenth
    const wrong = seenOf(flockOf('an autosomal dominant', 'male', [{trait: 0, scored: [0]}], [[1, 1]]), 0.1).alone(0, 0)
    expect([...wrong].map(entry => Number(entry.toFixed(12)))).toEqual([0.095, 0.095, 0.05])
  })

  it('tells the sex of a bird by its Z, and else takes both alike', () => {
    const silver = seenOf(flockOf('a Z-linked dominant', 'unknown', [{trait: 0, scored: [0]}])).alone(0, 0)
    expect([...silver]).toEqual([1, 1, 0, 1, 0])
    // egg colour seen only in hens: what was scored was a hen's, whatever the book says of the sex
    expect([...seenOf(flockOf('a dominant seen in hens', 'unknown', [{trait: 0, scored: [1]}])).alone(0, 0)]).toEqual([0, 0, 1])
  })

  it('ties several blocks where one trait leans on them', () => {
    const seen = seenOf(flockOf('walnut', 'male', [{trait: 0, scored: [1]}])), tied = seen.together(0)
    expect([...seen.alone(0, 0), ...seen.alone(0, 1)]).toEqual([1, 1, 1, 1, 1, 1])
    // rose: R of either kind, no P
    expect([[0, 2], [1, 2], [2, 2], [1, 1], [2, 0]].map(genotypes => tied?.(genotypes))).toEqual([1, 1, 0, 0, 0])
    expect(seenOf(flockOf('walnut', 'male', [])).together(0)).toBeNull()
  })

  it('counts a chick as dead by the lethal rule, though a look at another locus stands before it', () => {
    const loci: readonly Locus[] = [{symbol: 'R', on: 'autosome', alleles: ['R', 'r+']}, {symbol: 'Cp', on: 'autosome', alleles: ['Cp', 'cp+']}]
    const rule = (patterns: readonly (GenotypePattern | null)[], is: number | 'lethal') => ({patterns, is, sex: null, penetrance: 1})
    const look = {loci: [0, 1], states: ['rose', 'short', 'long'], seenIn: null, rules: [rule([[0, 'any'], null], 0), rule([null, [0, 0]], 'lethal'), rule([null, [0, 'any']], 1), rule([null, null], 2)]}
    const flock: Flock = {...flockOf('an autosomal dominant', 'male', []), loci, linkages: [], traits: [{look, misscoring: sure(3)}]}
    expect([...seenOf(flock).hatching(1, 'male')]).toEqual([0, 1, 1])
    expect(lookOf(look, [[0, 0], [0, 0]], 'male').lethal).toBe(1)
  })

  it('kills at each block by itself where one look has lethals at two', () => {
    const seen = seenOf(flockOf('two lethals of one look, not linked', 'male', []))
    expect([[...seen.hatching(0, 'male')], [...seen.hatching(1, 'male')].map(share => Number(share.toFixed(12)))]).toEqual([[0, 1, 1], [0.2, 1, 1]])
  })

  it('says which chicks never hatch, and will not have a lethal rule over loci that are not linked', () => {
    expect([...seenOf(flockOf('a lethal double dominant', 'male', [])).hatching(0, 'male')]).toEqual([0, 1, 1])
    const two: Locus[] = [{symbol: 'A', on: 'autosome', alleles: ['A', 'a+']}, {symbol: 'B', on: 'autosome', alleles: ['B', 'b+']}]
    const look = {loci: [0, 1], states: ['plain'], seenIn: null, rules: [{patterns: [[0, 0], [0, 0]] as const, is: 'lethal' as const, sex: null, penetrance: 1}]}
    expect(() => seenOf({...flockOf('walnut', 'male', []), loci: two, traits: [{look, misscoring: sure(1)}]})).toThrow(RangeError)
  })
})
