import {allelesAt, geneBlocks, type GeneBlock} from './gene-block.ts'
import type {Probable} from './genotype-probabilities.ts'
import {genotypeOf, handedOn} from './handed-on.ts'
import type {Alleles, Linkage, Locus} from './locus.ts'
import type {Sex} from './look-likelihood.ts'

/** What stands on the two chromosomes of a parent at one locus: first on the one, second on the other, so that phase is told. `null`: a hen's missing Z. */
export type Homologues = readonly [number, number | null]

/** Two parents of known genotypes, the places of `sire` and `dam` those of `loci`. */
export interface StatedParents {
  readonly loci: readonly Locus[]
  readonly linkages: readonly Linkage[]
  readonly sire: readonly Homologues[]
  readonly dam: readonly Homologues[]
}

/**
 * With what genotypes do two birds conceive chicks of one sex? Mendel’s rules over every locus, blocks of linked loci by their gametes, before anything lethal
 * is taken out.
 *
 * @throws RangeError where a parent's genotype is not one of its sex and locus
 * @returns every genotype that can be, each once; they sum to 1
 */
export function conceptions({loci, linkages, sire, dam}: StatedParents, sex: Sex): readonly Probable<readonly Alleles[]>[] {
  return geneBlocks(loci, linkages).reduce<readonly Probable<readonly Alleles[]>[]>((all, block) => {
    const own = atBlock(block, sire, dam, sex)
    return all.flatMap(({is, probability}) => own.map(each => {
      const genotype = [...is]
      block.loci.forEach((locus, place) => { genotype[locus] = each.is[place] ?? [0, null] })
      return {is: genotype, probability: probability * each.probability}
    }))
  }, [{is: [], probability: 1}])
}

/** What stands at the loci of one block, in the block's order. */
function atBlock(block: GeneBlock, sire: readonly Homologues[], dam: readonly Homologues[], sex: Sex): readonly Probable<readonly Alleles[]>[] {
  const left = handedOn(block, numberOf(block, sire, 'sire'), 'sire', sex), right = handedOn(block, numberOf(block, dam, 'dam'), 'dam', sex)
  const sums = new Map<string, {is: readonly Alleles[]; probability: number}>()
  left.forEach((one, a) => {
    if (one > 0) right.forEach((other, b) => {
      const genotype = block.genotypes[genotypeOf(block, a, b)]
      if (other === 0 || !genotype) return
      const is = block.loci.map((_, place) => allelesAt(block, genotype, place)), key = is.join(' '), known = sums.get(key)
      if (known) known.probability += one * other
      else sums.set(key, {is, probability: one * other})
    })
  })
  return [...sums.values()]
}

/** The number of a parent's genotype in a block, from what stands on each of its chromosomes. */
function numberOf(block: GeneBlock, parent: readonly Homologues[], role: 'sire' | 'dam'): number {
  const haplotype = (side: 0 | 1): number | null => {
    for (let number = 0; number < block.haplotypes; number++) if (block.loci.every((locus, place) => parent[locus]?.[side] === block.allele(number, place))) return number
    return null
  }
  const one = haplotype(0), other = haplotype(1), single = block.on === 'Z' && role === 'dam'
  if (one === null || (single ? block.loci.some(locus => parent[locus]?.[1] !== null) : other === null)) throw new RangeError(`no genotype of a ${role} at ${block.loci.length} linked loci`)
  return genotypeOf(block, one, single || other === null ? block.haplotypes : other)
}
