import {describe, expect, it} from 'vitest'
import {geneBlocks, type GeneBlock} from '../../src/heredity/gene-block.ts'
import {genotypeOf, handedOn, handedOnFromOutside} from '../../src/heredity/handed-on.ts'

function blockOn(on: 'autosome' | 'Z', alleles = 2): GeneBlock {
  const [block] = geneBlocks([{symbol: 'S', on, alleles: Array.from({length: alleles}, (_, allele) => `S${allele}`)}], [])
  if (!block) throw new Error('no block')
  return block
}

describe('handedOn(block, genotype, role, chick)', () => {
  it('halves what a parent has at an autosome, to either sex alike', () => {
    const P = blockOn('autosome')
    for (const role of ['sire', 'dam'] as const) {
      for (const chick of ['male', 'female', 'unknown'] as const) expect([0, 1, 2].map(genotype => [...handedOn(P, genotype, role, chick)])).toEqual([[1, 0, 0], [0.5, 0.5, 0], [0, 1, 0]])
    }
  })

  it('gives a hen’s Z to every son and to no daughter', () => {
    const S = blockOn('Z'), hen = S.pairs + 1
    expect([...handedOn(S, hen, 'dam', 'male')]).toEqual([0, 1, 0])
    expect([...handedOn(S, hen, 'dam', 'female')]).toEqual([0, 0, 1])
    expect([...handedOn(S, hen, 'dam', 'unknown')]).toEqual([0, 0.5, 0.5])
    expect([...handedOn(S, 1, 'sire', 'female')]).toEqual([0.5, 0.5, 0])
  })

  it('gives nothing where the parent cannot have the genotype', () => {
    const S = blockOn('Z')
    expect([...handedOn(S, S.pairs, 'sire', 'male'), ...handedOn(S, 0, 'dam', 'male')]).toEqual([0, 0, 0, 0, 0, 0])
  })

  it('hands on a population’s shares from outside', () => {
    expect([...handedOnFromOutside(blockOn('Z'), [0.3, 0.7], 'dam', 'unknown')]).toEqual([0.15, 0.35, 0.5])
  })
})

describe('genotypeOf(block, sire, dam)', () => {
  it('finds the pair, either way about, and a daughter’s single Z', () => {
    for (const block of [blockOn('autosome', 4), blockOn('Z', 4)]) {
      for (let a = 0; a < 4; a++) {
        for (let b = 0; b < 4; b++) expect(block.genotypes[genotypeOf(block, a, b)]).toEqual([Math.min(a, b), Math.max(a, b)])
        if (block.on === 'Z') expect(block.genotypes[genotypeOf(block, a, block.haplotypes)]).toEqual([a, null])
      }
    }
  })
})
