import type {Alleles, Linkage, Locus} from './locus.ts'

/**
 * Loci that travel together: those linked to each other, and all of the Z, since a hen hands on her Z as it is. A haplotype is what stands at every locus
 * of the block on one chromosome; a genotype is an unordered pair of haplotypes, or the single haplotype of a hen's Z.
 */
export interface GeneBlock {
  readonly on: 'autosome' | 'Z'
  /** places in the list of loci, along the chromosome */
  readonly loci: readonly number[]
  /** number of haplotypes */
  readonly haplotypes: number
  /** every genotype there is: the pairs, then on the Z the single ones */
  readonly genotypes: readonly Genotype[]
  /** how many of `genotypes` are pairs */
  readonly pairs: number
  /** the allele of a haplotype at a locus of the block, by its place in `loci` */
  allele(haplotype: number, place: number): number
  /** chance of each haplotype in a gamete that hands on this chromosome: a row a genotype */
  readonly gametes: readonly Float64Array[]
}

/** Haplotypes by number, the lower first; null beside a hen's single one. */
export type Genotype = readonly [number, number | null]

/** Loci that linkage joins make one block, along the chromosome; all of the Z make one. Others stand alone. */
export const geneBlocks = (loci: readonly Locus[], linkages: readonly Linkage[]): readonly GeneBlock[] => orderAlong(loci, linkages).map(members => geneBlock(members, loci, linkages))

/** The loci of each block by their numbers, in the order in which they are taken to lie. */
export function orderAlong(loci: readonly Locus[], linkages: readonly Linkage[]): readonly (readonly number[])[] {
  const blockOf = loci.map((_, index) => index)
  const join = (a: number, b: number): void => {
    const [from, to] = [blockOf[a], blockOf[b]]
    if (from !== undefined && to !== undefined) blockOf.forEach((block, index) => { if (block === from) blockOf[index] = to })
  }
  for (const {loci: [a, b]} of linkages) join(a, b)
  const onZ = loci.flatMap(({on}, index) => (on === 'Z' ? [index] : []))
  for (const index of onZ) join(onZ[0] ?? index, index)
  return [...new Set(blockOf)].map(block => alongChromosome(loci.flatMap((_, index) => (blockOf[index] === block ? [index] : [])), linkages))
}

/**
 * The order of linked loci: each next to the one it crosses over with least, beginning at an end of the chain. Two that no record joins cross over freely;
 * a linkage of two that come to lie apart is not reckoned with (`strayLinkages` finds those that contradict the order).
 */
function alongChromosome(members: readonly number[], linkages: readonly Linkage[]): readonly number[] {
  const near = [...linkages].filter(({loci: [a, b]}) => members.includes(a) && members.includes(b)).sort((x, y) => x.recombination - y.recombination)
  const chains = members.map(member => [member])
  for (const {loci: [a, b]} of near) {
    const one = chains.findIndex(chain => chain[0] === a || chain.at(-1) === a), other = chains.findIndex(chain => chain[0] === b || chain.at(-1) === b)
    if (one < 0 || other < 0 || one === other) continue
    const left = chains[one] ?? [], right = chains[other] ?? []
    const joined = [...(left.at(-1) === a ? left : left.toReversed()), ...(right[0] === b ? right : right.toReversed())]
    chains.splice(Math.max(one, other), 1)
    chains.splice(Math.min(one, other), 1, joined)
  }
  return chains.flat()
}

function geneBlock(members: readonly number[], loci: readonly Locus[], linkages: readonly Linkage[]): GeneBlock {
  const counts = members.map(index => loci[index]?.alleles.length ?? 0)
  const haplotypes = counts.reduce((product, count) => product * count, 1)
  const strides = counts.map((_, place) => counts.slice(place + 1).reduce((product, count) => product * count, 1))
  const allele = (haplotype: number, place: number): number => Math.floor(haplotype / (strides[place] ?? 1)) % (counts[place] ?? 1)
  const on = loci[members[0] ?? -1]?.on ?? 'autosome'
  const pairs: Genotype[] = [], single: Genotype[] = []
  for (let a = 0; a < haplotypes; a++) {
    for (let b = a; b < haplotypes; b++) pairs.push([a, b])
    if (on === 'Z') single.push([a, null])
  }
  const between = members.slice(1).map((member, place) => recombinationOf(members[place] ?? member, member, linkages))
  const genotypes = [...pairs, ...single]
  const gametes = genotypes.map(([a, b]) => (b === null ? only(a, haplotypes) : crossed(a, b)))
  return {on, loci: members, haplotypes, genotypes, pairs: pairs.length, allele, gametes}

  /** Walks along both chromosomes, changing over between neighbours at their rate, without interference. */
  function crossed(a: number, b: number): Float64Array {
    const chances = new Float64Array(haplotypes)
    if (a === b) return only(a, haplotypes)
    const walk = (place: number, from: number, gamete: number, chance: number): void => {
      if (chance === 0) return
      if (place === members.length) {
        chances[gamete] = (chances[gamete] ?? 0) + chance
        return
      }
      const r = place === 0 ? 0.5 : between[place - 1] ?? 0.5
      for (const next of [0, 1]) {
        const here = allele(next === 0 ? a : b, place)
        walk(place + 1, next, gamete + here * (strides[place] ?? 1), chance * (place === 0 ? 0.5 : next === from ? 1 - r : r))
      }
    }
    walk(0, 0, 0, 1)
    return chances
  }
}

function only(haplotype: number, of: number): Float64Array {
  const chances = new Float64Array(of)
  chances[haplotype] = 1
  return chances
}

const recombinationOf = (a: number, b: number, linkages: readonly Linkage[]): number =>
  linkages.find(({loci: [x, y]}) => (x === a && y === b) || (x === b && y === a))?.recombination ?? 0.5

/** What stands at one locus of a genotype: `place` is the locus's place in the block. */
export function allelesAt(block: GeneBlock, [a, b]: Genotype, place: number): Alleles {
  const first = block.allele(a, place)
  if (b === null) return [first, null]
  const second = block.allele(b, place)
  return first <= second ? [first, second] : [second, first]
}

/** The genotypes a bird of this sex can have, by number: on the Z a cock the pairs, a hen the single ones, a bird of unknown sex either. */
export function genotypesOfSex({on, pairs, genotypes}: GeneBlock, sex: 'male' | 'female' | 'unknown'): readonly number[] {
  const all = genotypes.map((_, index) => index)
  if (on === 'autosome' || sex === 'unknown') return all
  return sex === 'male' ? all.slice(0, pairs) : all.slice(pairs)
}

/**
 * Shares of genotypes among birds of a population: Hardy–Weinberg with inbreeding F, p² + F p q for two alike and 2 p q (1 − F) for two different, loci of a
 * block in equilibrium with each other. Of a bird of unknown sex half are cocks.
 *
 * @param shares by locus of the block, the share of each allele, summing to 1
 * @param inbreeding F of the population's birds, 0 to 1
 */
export function foundersGenotypes(block: GeneBlock, shares: readonly ArrayLike<number>[], inbreeding: number, sex: 'male' | 'female' | 'unknown'): Float64Array {
  const haplotype = haplotypeShares(block, shares)
  const half = block.on === 'Z' && sex === 'unknown' ? 0.5 : 1
  const wanted = new Set(genotypesOfSex(block, sex))
  return Float64Array.from(block.genotypes, ([a, b], index) => {
    if (!wanted.has(index)) return 0
    const p = haplotype[a] ?? 0
    if (b === null) return half * p
    const q = haplotype[b] ?? 0
    return half * (a === b ? p * p + inbreeding * p * (1 - p) : 2 * p * q * (1 - inbreeding))
  })
}

/** Shares of haplotypes where the loci of the block are in equilibrium. */
export function haplotypeShares(block: GeneBlock, shares: readonly ArrayLike<number>[]): Float64Array {
  return Float64Array.from({length: block.haplotypes}, (_, haplotype) => block.loci.reduce((product, _locus, place) => product * (shares[place]?.[block.allele(haplotype, place)] ?? 0), 1))
}
