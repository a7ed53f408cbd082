import type {Bird, Logbook} from '../logbook/book.ts'
import type {Census} from './census.ts'
import type {CannotSay, Share} from './estimate.ts'
import {ladderChicks} from './ladder-chicks.ts'
import {shareOf} from './share-of.ts'

/** By what the living birds of the ladder can be told apart. */
export interface IdentityOfLiving {
  /** banded birds, of these and the chicks alive without a band */
  readonly banded: Share | CannotSay
  /** one certain sire and one certain dam, of the banded */
  readonly bothParents: Share | CannotSay
}

/** One sire and one dam, both in the book and both certain. */
export function bothParentsCertain({parentage}: Bird): boolean {
  const [pair, other] = parentage.pairs
  return other === undefined && pair !== undefined && pair.sire !== null && pair.dam !== null
}

/** How many of the living birds wear a band, and of how many are both parents certain? Birds of the pure strains are left aside. */
export function identityOfLiving(book: Logbook, {alive}: Census): IdentityOfLiving {
  const living = alive.filter(bird => bird.step.kind !== 'strain')
  const unbanded = ladderChicks(book).reduce((sum, chick) => sum + (chick.kind === 'tally' && chick.left === null ? chick.count : 0), 0)
  return {
    banded: shareOf(living.length, living.length + unbanded, [], 'not-counted'),
    bothParents: shareOf(living.filter(bothParentsCertain).length, living.length, [], 'not-counted'),
  }
}
