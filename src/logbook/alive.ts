/** Who is alive, and who is bred from, on a day. */
import type {Day} from '../records/dates.ts'
import type {Bird, Logbook, Pen} from './book.ts'
import {stayDays} from './laying.ts'
import {penDays} from './pen-days.ts'

/**
 * Was the bird hatched by that day, and had it not left? A date that is not known to the day counts from its first day on:
 * `left: 2024-06` is left on the first of June. A bird of no known hatch day was hatched; one that left on an unknown day has left.
 */
export function isAlive({hatched, left}: Pick<Bird, 'hatched' | 'left'>, day: Day): boolean {
  if (hatched !== null && hatched.first > day) return false
  return left === null || (left.on !== null && left.on.first > day)
}

/** The pens of the latest season that had begun by a day. */
export function pensOfSeason(pens: readonly Pen[], day: Day): readonly Pen[] {
  const begun = pens.filter(pen => penDays(pen).from <= day)
  const season = begun.reduce((latest, pen) => Math.max(latest, pen.season), -Infinity)
  return begun.filter(pen => pen.season === season)
}

/** The breeders on a day: alive, and in a pen of the latest season by then, or kept on record for breeding. In the order of the book. */
export function breedersOn(book: Pick<Logbook, 'birds' | 'pens'>, day: Day): readonly Bird[] {
  const penned = new Set<Bird>()
  for (const pen of pensOfSeason(book.pens, day)) {
    for (const stay of [...pen.males, ...pen.females]) if (stayDays(pen, stay).from <= day) penned.add(stay.bird)
  }
  return book.birds.filter(bird => isAlive(bird, day) && (penned.has(bird) || isKeptToBreed(bird, day)))
}

/** A bird is kept for many reasons, and some of them for company: only a reason that speaks of breeding makes a breeder. */
function isKeptToBreed({kept}: Bird, day: Day): boolean {
  return kept !== null && (kept.on === null || kept.on.first <= day) && /\bbreed/i.test(kept.why)
}

/** The birds alive on a day, in the order of the book. */
export function aliveOn(book: Pick<Logbook, 'birds'>, day: Day): readonly Bird[] {
  return book.birds.filter(bird => isAlive(bird, day))
}
