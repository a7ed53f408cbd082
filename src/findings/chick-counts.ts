import type {Bird, Leaving, Logbook, Tally} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'

/** hatched = listed + unlisted; listed = banded + unbanded. */
export interface ChickCounts {
  readonly hatched: number
  /** hatched, but neither banded nor tallied */
  readonly unlisted: number
  readonly listed: number
  readonly banded: number
  readonly unbanded: number
  readonly male: number
  readonly female: number
  readonly unknownSex: number
  /** with at least one trait scored or measured that counts */
  readonly scored: number
  /** kept on record, or put into a breeding pen */
  readonly kept: number
  /** gone, by how; kept birds that left later are among them */
  readonly left: ReadonlyMap<Leaving['how'], number>
}

/** Every bird that was ever put into a pen. */
export function birdsPenned(book: Logbook): ReadonlySet<Bird> {
  const penned = new Set<Bird>()
  for (const pen of book.pens) for (const {bird} of [...pen.males, ...pen.females]) penned.add(bird)
  return penned
}

/**
 * What became of some chicks, in counts: banded or not, of which sex, scored, kept, and how they left. Tallies count with all their chicks.
 *
 * @param unlisted hatched, and neither banded nor tallied
 * @param penned `birdsPenned`
 */
export function chickCounts(birds: readonly Bird[], tallies: readonly Tally[], unlisted: number, traits: Logbook['traits'], penned: ReadonlySet<Bird>): ChickCounts {
  const sexes = {male: 0, female: 0, unknown: 0}, left = new Map<Leaving['how'], number>()
  let scored = 0, kept = 0, unbanded = 0
  for (const chick of [...birds, ...tallies]) {
    sexes[chick.sex] += chick.count
    if (traits.some(trait => countedValue(chick, trait) !== null)) scored += chick.count
    if (chick.kind === 'tally') unbanded += chick.count
    else if (chick.kept !== null || penned.has(chick)) kept += 1
    if (chick.left) left.set(chick.left.how, (left.get(chick.left.how) ?? 0) + chick.count)
  }
  const listed = birds.length + unbanded
  return {hatched: listed + unlisted, unlisted, listed, banded: birds.length, unbanded, male: sexes.male, female: sexes.female, unknownSex: sexes.unknown, scored, kept, left}
}
