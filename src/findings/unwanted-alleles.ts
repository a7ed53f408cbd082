import type {Locus} from '../heredity/locus.ts'
import {alleleShares, allelesTrueFor} from '../logbook/allele-shares.ts'
import type {Logbook, Trait} from '../logbook/book.ts'
import type {Heredity} from './heredity.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** Alleles that a breed which is to be true for a trait must be rid of, at one locus. */
export interface UnwantedAlleles {
  readonly trait: Trait
  readonly locus: Locus
  /** numbers of alleles: in no genotype that breeds true for a wanted look */
  readonly unwanted: readonly number[]
}

/** Numbers of the alleles of a locus that some strain or bird of the book may have. */
export type AllelesOfBook = (locus: Locus) => readonly number[]

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

/** The same, but of a long series only the alleles that some strain or bird of the book may have, unless it may have not one of the unwanted. */
export const unwantedInBook = (trait: Trait, of: AllelesOfBook): readonly UnwantedAlleles[] => unwantedAlleles(trait).map(({unwanted, ...asked}) => {
  const there = unwanted.filter(allele => of(asked.locus).includes(allele))
  return {...asked, unwanted: there.length === 0 ? unwanted : there}
})

/** By what the strains' records leave, and what the birds may have by all that was seen. Each locus is gone through once. */
export function allelesOfBook({strains, birds}: Pick<Logbook, 'strains' | 'birds'>, heredity: Heredity, {numberOf}: Pick<PedigreeOfBook, 'numberOf'>): AllelesOfBook {
  const kept = new Map<Locus, readonly number[]>()
  const work = (locus: Locus): readonly number[] => {
    const found = new Set(strains.flatMap(strain => alleleShares(strain, locus).shares.flatMap((share, allele) => (share > 0 ? [allele] : []))))
    const group = heredity.groupOf(locus), place = group.loci.indexOf(locus), {found: worked} = heredity.worked(group)
    for (const bird of birds) for (const {is: [one, other]} of worked.at(numberOf(bird), place)) {
      found.add(one)
      if (other !== null) found.add(other)
    }
    return [...found].sort((a, b) => a - b)
  }
  return locus => {
    const found = kept.get(locus) ?? work(locus)
    kept.set(locus, found)
    return found
  }
}
