import type {Bird, Logbook, Strain} from '../logbook/book.ts'
import {baseShares} from '../pedigree/base-shares.ts'
import {shareSpread} from '../pedigree/share-spread.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What of which strain is in a bird, by the three ways in which genes are handed down. */
export interface LineageOfBird {
  /** expected shares by strain, every strain of the book in its order; what is wanting to 1 is not known. The autosomes' stand in `StrainShares` */
  readonly z: ReadonlyMap<Strain, number>
  /** mitochondria, and the W of hens */
  readonly damLine: ReadonlyMap<Strain, number>
  /** standard deviation of the true share of the recurrent strain about the expected one, on the autosomes; null where the project names no such strain */
  readonly spread: number | null
  /** chance that the two copies of a gene come from different strains */
  readonly heterozygosity: number
}

export interface Lineage {
  of(bird: Bird): LineageOfBird
}

/**
 * How much of each strain is in every bird on the Z and in the mother's line, and how far may its true share lie from the expected one?
 *
 * @param heterozygosity of `strainHeterozygosity`, by the pedigree's numbers
 * @see `baseShares`, `shareSpread`
 */
export function lineageOfBook({strains, project: {recurrent}}: Logbook, {pedigree, numberOf, baseOf}: PedigreeOfBook, heterozygosity: Float64Array): Lineage {
  const z = strains.map(strain => baseShares(pedigree, 'Z', baseOf(strain))), damLine = strains.map(strain => baseShares(pedigree, 'dam line', baseOf(strain)))
  const spread = recurrent && strains.includes(recurrent) ? shareSpread(pedigree, baseOf(recurrent)) : null
  const byStrain = (shares: readonly Float64Array[], number: number) => new Map(strains.map((strain, place) => [strain, shares[place]?.[number] ?? 0] as const))
  return {
    of(bird) {
      const number = numberOf(bird)
      return {z: byStrain(z, number), damLine: byStrain(damLine, number), spread: spread && (spread[number] ?? 0), heterozygosity: heterozygosity[number] ?? 0}
    },
  }
}
