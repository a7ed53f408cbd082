import type {GeneBlock} from './gene-block.ts'

/**
 * What a parent hands on to a chick: the chance of each haplotype, and in the last place of none, for a hen gives her daughters no Z.
 *
 * @param genotype the parent's, by number
 * @returns haplotypes + 1 chances, summing to 1; all 0 where the parent cannot have that genotype (a single Z as sire, a pair as dam)
 */
export function handedOn(block: GeneBlock, genotype: number, role: 'sire' | 'dam', chick: 'male' | 'female' | 'unknown'): Float64Array {
  const chances = new Float64Array(block.haplotypes + 1), gamete = block.gametes[genotype]
  const single = genotype >= block.pairs
  if (!gamete || (block.on === 'Z' && single !== (role === 'dam'))) return chances
  return fill(chances, gamete, block, role, chick)
}

/** The same of a parent of whom only the shares of haplotypes in its population are known. */
export function handedOnFromOutside(block: GeneBlock, shares: ArrayLike<number>, role: 'sire' | 'dam', chick: 'male' | 'female' | 'unknown'): Float64Array {
  return fill(new Float64Array(block.haplotypes + 1), shares, block, role, chick)
}

function fill(chances: Float64Array, gamete: ArrayLike<number>, {on, haplotypes}: GeneBlock, role: 'sire' | 'dam', chick: 'male' | 'female' | 'unknown'): Float64Array {
  const gives = on === 'autosome' || role === 'sire' || chick === 'male' ? 1 : chick === 'female' ? 0 : 0.5
  for (let haplotype = 0; haplotype < haplotypes; haplotype++) chances[haplotype] = gives * (gamete[haplotype] ?? 0)
  chances[haplotypes] = 1 - gives
  return chances
}

/** The genotype of a chick of these two haplotypes, by number; `dam` may be `haplotypes`, for none. */
export function genotypeOf({haplotypes, pairs}: GeneBlock, sire: number, dam: number): number {
  if (dam === haplotypes) return pairs + sire
  const low = Math.min(sire, dam), high = Math.max(sire, dam)
  return low * haplotypes - (low * (low - 1)) / 2 + high - low
}
