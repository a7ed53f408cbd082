import type {Locus} from '../heredity/locus.ts'
import {allelesTrueFor} from '../logbook/allele-shares.ts'
import type {Trait} from '../logbook/book.ts'

/** Alleles that a breed which is to be true for a trait must be rid of, at one locus. */
export interface UnwantedAlleles {
  readonly trait: Trait
  readonly locus: Locus
  /** numbers of alleles: in no genotype that breeds true for a wanted look */
  readonly unwanted: readonly number[]
}

/**
 * Which alleles can throw a look that is not wanted? At each locus of the trait those that stand in no true-breeding genotype of a wanted look, of either sex.
 * Where several loci can each give the look by itself, or the wanted look breeds true in no genotype, no allele is unwanted by this rule and there is no entry.
 */
export function unwantedAlleles(trait: Trait): readonly UnwantedAlleles[] {
  const states = new Set([trait.wanted.male, trait.wanted.female].flatMap(wanted => (wanted?.kind === 'states' ? wanted.states : [])))
  return trait.loci.flatMap(locus => {
    const wanted = new Set([...states].flatMap(state => allelesTrueFor(trait, state, locus) ?? []))
    const unwanted = locus.alleles.flatMap((_, allele) => (wanted.has(allele) ? [] : [allele]))
    return wanted.size === 0 || unwanted.length === 0 ? [] : [{trait, locus, unwanted}]
  })
}
