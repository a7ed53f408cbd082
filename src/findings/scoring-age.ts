import type {Trait} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import type {Chick} from './ladder-chicks.ts'

/** The age in days from which a trait can be asked of a bird: when it is measured, else when it can be scored. */
export const askedFrom = (trait: Trait): number => trait.atAge ?? trait.scoredFrom

/** The greatest age in days a chick may have reached by `asOf` or by the day it left; null when its hatch has no date. */
export function greatestAge(chick: Chick, asOf: Day): number | null {
  if (chick.hatched === null) return null
  const last = chick.left?.on ? Math.min(chick.left.on.last, asOf) : asOf
  return last - chick.hatched.first
}

/** Can the sex of this chick show the trait at all? An unsexed chick cannot be asked for what one sex shows, nor a cock for what comes with the first egg. */
export function sexShows(trait: Trait, chick: Chick): boolean {
  if (trait.seenIn !== null && trait.seenIn !== chick.sex) return false
  return !trait.fromFirstEgg || (chick.sex === 'female' && chick.kind === 'bird' && chick.firstEgg !== null)
}

/** Was the chick old enough to show the trait? Where its dates leave that open, yes: then a missing score is missing, not excused. */
export function oldEnough(trait: Trait, chick: Chick, asOf: Day): boolean {
  const age = greatestAge(chick, asOf)
  return age === null || age >= askedFrom(trait)
}
