import type {Bird, Hatch, Logbook} from '../logbook/book.ts'
import type {PartialDate} from '../records/dates.ts'
import {livabilityOfFamilies, type FamilyLivability} from '../statistics/livability-of-families.ts'
import type {Watched} from '../statistics/livability.ts'
import type {Chick} from './ladder-chicks.ts'
import {watchedOf} from './life-watched.ts'
import {askedFrom} from './scoring-age.ts'
import {isJudged} from './set-aside.ts'
import {sireFamilies} from './sire-families.ts'

/** How the chicks of some hatches lived to an age, where the doubt counts both ways. */
export interface LifeToFloor {
  /** each chick counted for as long as it was there; null where nobody was watched so long */
  readonly found: FamilyLivability | null
  /** the same were every chick in doubt dead at the day it left or the age, and were every one alive at the age */
  readonly ifDied: FamilyLivability | null
  readonly ifLived: FamilyLivability | null
  /** in doubt: how many left before the age, and not by death or to another keeper */
  readonly culled: number
  readonly taken: number
  readonly lost: number
  /** in doubt too: old enough by now, and nothing is written of them at that age or after it */
  readonly silent: number
  /** banded or tallied, but a day is not written */
  readonly undated: number
  /** hatched, and nothing more is written of them */
  readonly unlisted: number
}

interface Followed extends Pick<Chick, 'parentage' | 'hatch'> {
  readonly count: number
  readonly watched: Watched
  readonly doubt: boolean
}

/**
 * How many chicks live to an age, and how many would at the worst and at the best?
 *
 * Who culls the weak, or loses them, keeps them out of the dead: so a chick culled, taken or lost before the age is in doubt, and one taken to be alive of which nothing is written at that age or after it.
 * One that was sold, given or lent counts for as long as it was there, as does one that is younger than the age by now. Hatches set aside are left out.
 *
 * @see `livabilityOfFamilies`
 */
export function lifeToFloor(hatches: readonly Hatch[], age: number, book: Pick<Logbook, 'asOf' | 'pens' | 'shows' | 'hatches' | 'eggCounts'>): LifeToFloor {
  const seen = lastSeenOf(book), count = {culled: 0, taken: 0, lost: 0}, followed: Followed[] = []
  let silent = 0, undated = 0, unlisted = 0
  for (const hatch of hatches.filter(isJudged)) {
    unlisted += hatch.unlisted
    for (const chick of [...hatch.chicks, ...hatch.tallies]) {
      const watched = watchedOf(chick, book.asOf), how = chick.left?.how
      if (watched === null) undated += chick.count
      else {
        const early = watched.age < age && (how === 'culled' || how === 'taken' || how === 'lost') ? how : null, isSilent = chick.left === null && watched.age >= age && !isWrittenAt(chick, age, seen)
        if (early) count[early] += chick.count
        if (isSilent) silent += chick.count
        followed.push({parentage: chick.parentage, hatch: chick.hatch, count: chick.count, watched, doubt: early !== null || isSilent})
      }
    }
  }
  const families = sireFamilies(followed.filter(each => each.count > 0)), found = (as: (each: Followed) => Watched): FamilyLivability | null => livabilityOfFamilies(families.map(own => own.flatMap(each => Array<Watched>(each.count).fill(as(each)))), age)
  return {
    found: found(({watched}) => watched), ifDied: found(({watched, doubt}) => (doubt ? {age: Math.min(watched.age, age), died: true} : watched)), ifLived: found(({watched, doubt}) => (doubt ? {age, died: false} : watched)),
    ...count, silent, undated, unlisted,
  }
}

/** Is anything written of a living chick at an age or after it: a score, a weight, an egg, a pen, chicks, a show, a new band or keeper? */
function isWrittenAt(chick: Chick, age: number, seen: ReadonlyMap<Bird, number>): boolean {
  if (chick.hatched === null) return false
  const from = chick.hatched.first + age, isLater = (on: PartialDate | null): boolean => on !== null && on.last >= from
  if ([...chick.looks].some(([trait, {scores}]) => scores.some(({on}) => (on === null ? askedFrom(trait) >= age : isLater(on))))) return true
  if (chick.kind === 'tally') return false
  const {weighings, observations, photos, firstEgg, kept, bands, keptAt} = chick
  return [...weighings, ...observations, ...photos].some(({on}) => isLater(on)) || isLater(firstEgg) || (kept !== null && isLater(kept.on)) || [...bands, ...keptAt].some(each => isLater(each.from)) || (seen.get(chick) ?? -Infinity) >= from
}

/** The last day on which a bird stood in a pen, at a show, laid, or was parent of a hatch. */
function lastSeenOf({pens, shows, hatches, eggCounts}: Pick<Logbook, 'pens' | 'shows' | 'hatches' | 'eggCounts'>): ReadonlyMap<Bird, number> {
  const seen = new Map<Bird, number>(), note = (bird: Bird | null, on: PartialDate | null | undefined): void => {
    if (bird && on) seen.set(bird, Math.max(seen.get(bird) ?? -Infinity, on.last))
  }
  for (const {males, females, from} of pens) for (const stay of [...males, ...females]) note(stay.bird, stay.from ?? from)
  for (const {on, entries} of shows) for (const {bird} of entries) note(bird, on)
  for (const {bird, on} of eggCounts) note(bird, on)
  for (const {on, parentage: {sires, dams}} of hatches) for (const {bird, chance} of [...sires, ...dams]) if (chance === 1) note(bird, on)
  return seen
}
