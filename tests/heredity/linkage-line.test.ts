import {describe, expect, it} from 'vitest'
import {geneBlocks} from '../../src/heredity/gene-block.ts'
import {strayLinkages} from '../../src/heredity/linkage-line.ts'
import type {Linkage, Locus} from '../../src/heredity/locus.ts'
import {expectClose} from '../expect-close.ts'

const loci = 'ABCD'.split('').map((symbol): Locus => ({symbol, on: 'autosome', alleles: [symbol, symbol.toLowerCase()]}))
const link = (a: number, b: number, recombination: number): Linkage => ({loci: [a, b], recombination})

describe('strayLinkages(loci, linkages)', () => {
  it('finds the arm of a star that no line has room for, with the share that is reckoned in its place', () => {
    const linkages = [link(0, 1, 0.1), link(0, 2, 0.1), link(0, 3, 0.1)]
    const [stray, ...more] = strayLinkages(loci, linkages)
    expect(more).toEqual([])
    expect(stray?.linkage).toBe(linkages[2])
    expectClose(stray?.implied ?? 0, 0.5, 1e-12)
    // the twin: gametes of a bird that has all four from one parent alike
    const [block] = geneBlocks(loci, linkages)
    const bird = block?.genotypes.findIndex(([a, b]) => a === 0 && b === block.haplotypes - 1) ?? -1
    const at = (haplotype: number, locus: number) => block?.allele(haplotype, block.loci.indexOf(locus))
    expectClose((block?.gametes[bird] ?? new Float64Array()).reduce((sum, chance, gamete) => sum + (at(gamete, 0) === at(gamete, 3) ? 0 : chance), 0), stray?.implied ?? 0, 1e-12)
  })
  it('holds a share over three loci against the two between, ½(1 − (1 − 2·0.1)²) = 0.18', () => {
    expect(strayLinkages(loci, [link(0, 1, 0.1), link(1, 2, 0.1), link(0, 2, 0.18)])).toEqual([])
    expect(strayLinkages(loci, [link(0, 1, 0.1), link(1, 2, 0.1), link(0, 2, 0.4)]).map(({between}) => between)).toEqual([[1]])
  })
  it('is silent on neighbours, and on loci that go their own ways', () => expect(strayLinkages(loci, [link(0, 1, 0.1), link(2, 3, 0.02)])).toEqual([]))
})
