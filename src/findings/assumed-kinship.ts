import type {Bird, Logbook, Strain} from '../logbook/book.ts'
import {coancestry} from '../pedigree/coancestry.ts'
import {contradictedFounders} from '../pedigree/founder-flow.ts'
import type {Pedigree} from '../pedigree/pedigree.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What the kinship that nobody knows, of the recurrent strain's birds among themselves, does to F. */
export interface AssumedKinship {
  readonly strain: Strain
  readonly birds: readonly Bird[]
  /** mean F of the birds, at the kinships tried and at the one stated, ascending */
  readonly at: readonly {readonly kinship: number; readonly stated: boolean; readonly mean: number}[]
}

/** Tried in turn. A strain that nobody has pedigrees of lies somewhere between; the choice is ours. */
const TRIED = [0, 0.05, 0.1] as const

/**
 * How much do our figures lean on what we believe of the old strain?
 *
 * F of the same birds worked again with another kinship of two founders of the recurrent strain, all else as stated. A flock
 * that states more kinship than its strain keeps it, where it is more; pairs of birds keep what they state.
 *
 * @returns null without a recurrent strain, or without birds to ask of
 */
export function assumedKinship(book: Logbook, birds: readonly Bird[], {pedigree, numberOf, baseOf}: PedigreeOfBook): AssumedKinship | null {
  const strain = book.project.recurrent
  if (strain === null || birds.length === 0) return null
  const most = (1 + strain.inbreeding) / 2
  const values = [...new Set([...TRIED.filter(kinship => kinship <= most), strain.kinship])].sort((a, b) => a - b)
  return {
    strain, birds,
    at: values.flatMap(kinship => {
      const tried = withKinship(pedigree, baseOf(strain), kinship)
      // kinships stated of single birds may leave no room for it
      if (contradictedFounders(tried).length > 0) return []
      const {inbreeding} = coancestry(tried)
      return [{kinship, stated: kinship === strain.kinship, mean: birds.reduce((sum, bird) => sum + (inbreeding[numberOf(bird)]?.mean ?? 0), 0) / birds.length}]
    }),
  }
}

/** The same pedigree with another kinship of two founders of one base population; a flock within it keeps its own, where it is more. */
export function withKinship(pedigree: Pedigree, strain: number, kinship: number): Pedigree {
  const stated = pedigree.bases[strain]?.kinship ?? 0
  return {...pedigree, bases: pedigree.bases.map((base, place) => {
    if (place !== strain && base.within !== strain) return base
    return {...base, kinship: base.kinship > stated ? Math.max(base.kinship, kinship) : kinship}
  })}
}
