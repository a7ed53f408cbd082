import {alleleShares} from '../logbook/allele-shares.ts'
import type {Locus, Logbook} from '../logbook/book.ts'

/** What a bird has at a locus of which nothing is said. */
export interface PlainAllele {
  readonly allele: number
  /** every strain of the book has nothing else there, or it is the allele of the wild fowl */
  readonly known: 'strains' | 'wild'
}

/** The one allele that all strains of the book have at a locus, else the one marked with a plus as the wild fowl's; null where there is neither. */
export function plainAllele({strains}: Pick<Logbook, 'strains'>, locus: Locus): PlainAllele | null {
  const held = new Set(strains.flatMap(strain => alleleShares(strain, locus).shares.flatMap((share, allele) => (share > 0 ? [allele] : [])))), [only] = held
  if (only !== undefined && held.size === 1) return {allele: only, known: 'strains'}
  const wild = locus.alleles.findIndex(allele => allele.endsWith('+'))
  return wild < 0 ? null : {allele: wild, known: 'wild'}
}
