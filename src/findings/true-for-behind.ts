import {alleleShares} from '../logbook/allele-shares.ts'
import type {Bird, Strain, Tally, Trait} from '../logbook/book.ts'
import {lookTells} from './look-tells.ts'

/** A strain's record that leaves a look no room. */
export interface TrueForBehind {
  readonly strain: Strain
  /** what it is said to breed true for */
  readonly state: string
}

/**
 * Which records of strains make a chick's score impossible, or nearly? Those of strains that it descends from and that breed true for another look of the trait, where this alone says that they are without an
 * allele that every bird scored so has. If such a record is wrong the score may be right. A strain whose alleles are stated is not asked.
 */
export function trueForBehind({shares, sex}: Pick<Bird | Tally, 'shares' | 'sex'>, trait: Trait, scored: string): readonly TrueForBehind[] {
  const needed = trait.loci.flatMap(locus => [...lookTells(trait, scored, sex, locus)?.must ?? []].map(allele => ({locus, allele})))
  return [...shares].flatMap(([strain, share]): TrueForBehind[] => {
    const state = strain.trueFor.get(trait)
    if (share <= 0 || state === undefined || state === scored) return []
    return needed.some(({locus, allele}) => {
      const has = alleleShares(strain, locus)
      return has.known === 'true-for' && has.shares[allele] === 0
    }) ? [{strain, state}] : []
  })
}
