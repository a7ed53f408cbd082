import type {Logbook, Trait} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import type {Chick} from './ladder-chicks.ts'
import {askedFrom, greatestAge, oldEnough, sexShows} from './scoring-age.ts'
import {looksRight, wantedOf} from './wanted-look.ts'

/** What a chick shows of everything the standard requires. */
export interface Verdict {
  /**
   * right: something required was scored, all that its sex and age can show was, and all is right · off: something required is
   * not · part-scored: neither, something is still missing · too-young, lost: nothing scored, and the bird is, or was when it
   * left, younger than the first required trait asks for that cannot be seen at hatch
   */
  readonly is: 'right' | 'off' | 'part-scored' | 'too-young' | 'lost'
  /** required traits it fails */
  readonly off: readonly Trait[]
  /** required traits it shows as wanted */
  readonly right: readonly Trait[]
  /** required traits it could show and was not scored for, or that cannot be judged while its sex is unknown */
  readonly missing: readonly Trait[]
}

/** The required traits of a project for which something is wanted of at least one sex. */
export function requiredTraits(book: Pick<Logbook, 'traits'>): readonly Trait[] {
  return book.traits.filter(trait => trait.required && (trait.wanted.male !== null || trait.wanted.female !== null))
}

/**
 * Does this chick show everything the standard requires?
 *
 * A trait counts for a chick when something is wanted of its sex, and its sex can show it. One that was scored is judged
 * whatever the age; one that was not is missing only if the chick was old enough to show it.
 *
 * @param valueOf what counts for the chick, where what is required is a trait as a clause of the standard has it
 */
export function verdictOn(chick: Chick, required: readonly Trait[], book: Pick<Logbook, 'asOf'>, valueOf: (trait: Trait) => string | number | null = trait => countedValue(chick, trait)): Verdict {
  const off: Trait[] = [], right: Trait[] = [], missing: Trait[] = []
  let firstAge = Infinity, scored = 0
  for (const trait of required) {
    if (wantedOf(trait, chick.sex) === null && !(chick.sex === 'unknown' && trait.seenIn === null)) continue
    const value = valueOf(trait)
    if (value !== null) {
      scored += 1
      const judged = looksRight(trait, chick.sex, value)
      if (judged === null) {
        if (chick.sex === 'unknown') missing.push(trait)
      } else (judged ? right : off).push(trait)
      continue
    }
    if (!sexShows(trait, chick)) continue
    if (askedFrom(trait) > 0) firstAge = Math.min(firstAge, askedFrom(trait))
    if (oldEnough(trait, chick, book.asOf)) missing.push(trait)
  }
  if (off.length > 0) return {is: 'off', off, right, missing}
  if (right.length > 0 && missing.length === 0) return {is: 'right', off, right, missing}
  const age = greatestAge(chick, book.asOf)
  if (scored === 0 && age !== null && firstAge < Infinity && age < firstAge) return {is: chick.left ? 'lost' : 'too-young', off, right, missing}
  return {is: 'part-scored', off, right, missing}
}
