/** The birds that a keeper had when an egg was laid: who may be the parent when all that is known is the yard. */
import type {Span} from './band-book.ts'
import type {Bird, Keeper} from './book.ts'
import {daysInSeason, lastDayOf, YOUNGEST_BREEDER} from './laying.ts'
import type {Pens} from './pens.ts'

/**
 * Birds of one sex that stood with the keeper, in a pen of theirs or by their own records, on some day of the laying, and were old enough at its
 * beginning. A pen without days stood in its season, not before and not after. A bird never sexed counts by the side of the pens it stood on.
 */
export function keptThen(birds: readonly Bird[], staysOf: Pens['staysOf'], keeper: Keeper, as: 'male' | 'female', laying: Span): readonly Bird[] {
  const meets = ({from, to}: Span) => from <= laying.to && to >= laying.from
  return birds.filter(bird => {
    const stays = staysOf.get(bird) ?? []
    const isOfSex = bird.sex === 'unknown' ? stays.some(({pen, stay}) => (as === 'male' ? pen.males : pen.females).includes(stay)) : bird.sex === as
    if (!isOfSex || lastDayOf(bird) < laying.from || (bird.hatched !== null && bird.hatched.last + YOUNGEST_BREEDER > laying.from)) return false
    return bird.keptAt.some(({keeper: whose, from, to}) => whose === keeper && meets({from: from?.first ?? -Infinity, to: to?.last ?? Infinity}))
      || stays.some(({pen, stay}) => pen.keeper === keeper && meets(daysInSeason(pen, stay)))
  })
}
