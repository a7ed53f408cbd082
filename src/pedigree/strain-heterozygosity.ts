import {coancestry, type Coancestry} from './coancestry.ts'
import type {Pedigree} from './pedigree.ts'

/**
 * How likely do the two copies of a gene in a bird come from different strains? It is what the vigour of a cross follows.
 *
 *     H = 1 − F, where F is worked as if every strain were one single gene copy: all birds of a strain alike, strains unrelated
 *
 * F1 1, F2 ½, BC1 ½, BC2 ¼ …; inter se it stays, but for what kin matings take. An expectation, as F is.
 * A parent of no stated strain counts as a strain of its own.
 *
 * @returns for every animal 0 to 1, on the autosomes
 * @see Dickerson 1973, Proc. Anim. Breeding Genet. Symp. (heterosis in proportion to breed heterozygosity; from memory)
 */
export function strainHeterozygosity(pedigree: Pedigree): Float64Array {
  return Float64Array.from(strainSameness(pedigree).inbreeding, ({mean}) => 1 - mean)
}

/** The kinship it is worked from: of two birds, the chance that two copies of a gene in a chick of theirs would come from one strain. */
export function strainSameness(pedigree: Pedigree): Coancestry {
  const asOneCopy = pedigree.bases.map(base => (base.within === null ? {inbreeding: 1, kinship: 1, within: null} : {...base, inbreeding: 1, kinship: 1}))
  return coancestry({...pedigree, bases: asOneCopy, kin: []})
}
