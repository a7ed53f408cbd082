import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {allelesAt, foundersGenotypes, geneBlocks, genotypesOfSex, haplotypeShares, type GeneBlock} from '../../src/heredity/gene-block.ts'
import {genotypeOf, handedOn} from '../../src/heredity/handed-on.ts'
import type {Linkage, Locus} from '../../src/heredity/locus.ts'
import {expectClose} from '../expect-close.ts'

const locus = (symbol: string, on: Locus['on'] = 'autosome', alleles = 2): Locus => ({symbol, on, alleles: Array.from({length: alleles}, (_, allele) => `${symbol}${allele}`)})
const link = (a: number, b: number, recombination: number): Linkage => ({loci: [a, b], recombination})

/** the one block that these make */
function block(loci: readonly Locus[], linkages: readonly Linkage[] = []): GeneBlock {
  const [first, ...more] = geneBlocks(loci, linkages)
  if (!first || more.length > 0) throw new Error('more blocks than one')
  return first
}

/** the number of a genotype, from the haplotypes' alleles */
const numberOf = (of: GeneBlock, one: readonly number[], other: readonly number[] | null): number => {
  const haplotype = (alleles: readonly number[]) => Array.from({length: of.haplotypes}, (_, each) => each).find(each => alleles.every((allele, place) => of.allele(each, place) === allele)) ?? -1
  return genotypeOf(of, haplotype(one), other === null ? of.haplotypes : haplotype(other))
}

describe('geneBlocks(loci, linkages)', () => {
  it('lets loci stand alone, but those that linkage joins and all of the Z', () => {
    const loci = [locus('P'), locus('S', 'Z'), locus('O'), locus('K', 'Z'), locus('R')]
    expect(geneBlocks(loci, [link(0, 2, 0.04)]).map(({loci: members}) => [...members].sort())).toEqual([[0, 2], [1, 3], [4]])
  })

  it('puts linked loci along their chromosome, whatever order the records name them in', () => {
    // a map of four loci 1, 3, 0, 2 in a row, all distances known: neighbours cross over least
    const place = [2, 0, 3, 1], loci = place.map((_, index) => locus(`L${index}`))
    const pairs = loci.flatMap((_, a) => loci.slice(a + 1).map((_other, further) => [a, a + 1 + further] as const))
    const recombination = (a: number, b: number) => (1 - Math.exp(-0.4 * Math.abs(place[a]! - place[b]!))) / 2
    fc.assert(fc.property(fc.shuffledSubarray(pairs, {minLength: pairs.length}), fc.array(fc.boolean(), {minLength: pairs.length, maxLength: pairs.length}), (order, turned) => {
      const {loci: row} = block(loci, order.map(([a, b], index) => (turned[index] ? link(b, a, recombination(a, b)) : link(a, b, recombination(a, b)))))
      expect([[1, 3, 0, 2].join(), [2, 0, 3, 1].join()]).toContain(row.join())
    }), {seed: 5, numRuns: 50})
  })

  it('gives a gamete whose chances sum to 1, and each strand as often as the other', () => {
    const of = block([locus('A'), locus('B', 'autosome', 3), locus('C')], [link(0, 1, 0.1), link(1, 2, 0.3)])
    for (const chances of of.gametes) expectClose(chances.reduce((sum, chance) => sum + chance, 0), 1, 1e-12)
    // A0 B1 C1 over A1 B2 C0: unchanged .9 · .7 / 2, a crossing in the first gap .1 · .7 / 2, in both .1 · .3 / 2
    const chances = of.gametes[numberOf(of, [0, 1, 1], [1, 2, 0])]!
    const of3 = (...alleles: number[]) => chances[Array.from({length: of.haplotypes}, (_, each) => each).find(each => alleles.every((allele, place) => of.allele(each, place) === allele))!]
    for (const [alleles, chance] of [[[0, 1, 1], 0.315], [[1, 2, 0], 0.315], [[0, 2, 0], 0.035], [[0, 1, 0], 0.135], [[0, 2, 1], 0.015], [[1, 1, 0], 0.015], [[0, 0, 0], 0]] as const) expectClose(of3(...alleles)!, chance, 1e-12)
  })

  it('lets a hen hand on her Z as it is, and a cock’s cross over', () => {
    const of = block([locus('S', 'Z'), locus('K', 'Z')], [link(0, 1, 0.1)])
    expect([...of.gametes[numberOf(of, [0, 1], null)]!].sort()).toEqual([0, 0, 0, 1])
    expect([...of.gametes[numberOf(of, [0, 1], [1, 0])]!].sort((a, b) => a - b)).toEqual([0.05, 0.05, 0.45, 0.45])
  })
})

describe('an F2 of two linked loci', () => {
  // A_B_, A_bb, aaB_, aabb: (2 + θ)/4, (1 − θ)/4, (1 − θ)/4, θ/4; θ = (1 − r)² in coupling, r² in repulsion. Source: Fisher 1925, Statistical Methods for Research Workers, ch. 9
  const classes = (recombination: number, phase: 'coupling' | 'repulsion'): number[] => {
    const of = block([locus('A'), locus('B')], [link(0, 1, recombination)])
    const f1 = phase === 'coupling' ? numberOf(of, [0, 0], [1, 1]) : numberOf(of, [0, 1], [1, 0])
    const shares = [0, 0, 0, 0]
    handedOn(of, f1, 'sire', 'unknown').forEach((one, a) => handedOn(of, f1, 'dam', 'unknown').forEach((other, b) => {
      if (one * other === 0) return
      const genotype = of.genotypes[genotypeOf(of, a, b)]!, recessive = (place: number) => allelesAt(of, genotype, place)[0] === 1
      shares[(recessive(0) ? 2 : 0) + (recessive(1) ? 1 : 0)]! += one * other
    }))
    return shares
  }

  it('gives the classes that the recombination asks for', () => {
    for (const r of [0, 0.01, 0.1, 0.25, 0.5]) {
      for (const [phase, theta] of [['coupling', (1 - r) ** 2], ['repulsion', r ** 2]] as const) {
        const expected = [(2 + theta) / 4, (1 - theta) / 4, (1 - theta) / 4, theta / 4]
        classes(r, phase).forEach((share, index) => expectClose(share, expected[index]!, 1e-12, {r, phase}))
      }
    }
    // at 10 %, worked by hand
    classes(0.1, 'repulsion').forEach((share, index) => expectClose(share, [0.5025, 0.2475, 0.2475, 0.0025][index]!, 1e-12))
  })
})

describe('foundersGenotypes(block, shares, inbreeding, sex)', () => {
  const shares = (alleles: number) => fc.array(fc.integer({min: 1, max: 9}), {minLength: alleles, maxLength: alleles}).map(list => list.map(each => each / list.reduce((sum, one) => sum + one, 0)))

  it('sums to 1 over the genotypes that the sex can have, and holds the alleles at their shares whatever F', () => {
    fc.assert(fc.property(shares(3), fc.double({min: 0, max: 1, noNaN: true}), fc.constantFrom('male', 'female', 'unknown'), fc.constantFrom('autosome', 'Z'), (p, inbreeding, sex, on) => {
      const of = block([locus('A', on, 3)]), found = foundersGenotypes(of, [p], inbreeding, sex), possible = genotypesOfSex(of, sex)
      expectClose(found.reduce((sum, share) => sum + share, 0), 1, 1e-12)
      found.forEach((share, genotype) => { if (!possible.includes(genotype)) expect(share).toBe(0) })
      const copies = [0, 0, 0]
      let genes = 0
      of.genotypes.forEach(([a, b], genotype) => {
        for (const allele of b === null ? [a] : [a, b]) {
          copies[allele]! += found[genotype]!
          genes += found[genotype]!
        }
      })
      copies.forEach((count, allele) => expectClose(count / genes, p[allele]!, 1e-12))
    }), {seed: 5, numRuns: 60})
  })

  it('is p² + F p q for two alike, 2 p q (1 − F) for two different', () => {
    // worked by hand: p .8, q .2, F 1/4 gives .68, .24, .08
    expect([...foundersGenotypes(block([locus('P')]), [[0.8, 0.2]], 0.25, 'male')].map(share => Number(share.toFixed(12)))).toEqual([0.68, 0.24, 0.08])
  })

  it('has loci of a block in equilibrium', () => {
    const of = block([locus('A'), locus('B')], [link(0, 1, 0.1)])
    expect([...haplotypeShares(of, [[0.25, 0.75], [0.5, 0.5]])].sort()).toEqual([0.125, 0.125, 0.375, 0.375])
  })
})
