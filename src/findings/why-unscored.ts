import type {Logbook, Trait} from '../logbook/book.ts'
import {setAside} from './counted-value.ts'
import type {LeftOut} from './estimate.ts'
import type {Chick} from './ladder-chicks.ts'
import {oldEnough, sexShows} from './scoring-age.ts'

/** Why a chick has no counted score; null when its sex does not show the trait and nothing was missed. */
export function whyUnscored(chick: Chick, trait: Trait, book: Logbook): LeftOut['why'] | null {
  const aside = setAside(chick, trait)
  if (aside) return aside
  if (!sexShows(trait, chick)) return chick.sex === 'unknown' && trait.seenIn !== null ? 'sex-unknown' : null
  if (oldEnough(trait, chick, book.asOf)) return 'unscored'
  return chick.left ? 'lost-before-scoring' : 'too-young'
}
