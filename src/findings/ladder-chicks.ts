import type {Bird, Hatch, Logbook, Tally} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'

/** A banded bird or an unbanded tally. */
export type Chick = Bird | Tally

/**
 * The chicks that ladder figures are about: every banded bird and every tally of any step, kept or not, but no bird of a
 * pure strain (those stand on their strain's page). A tally all of whose chicks were banded later counts no more.
 */
export function ladderChicks(book: Logbook): readonly Chick[] {
  const chicks: Chick[] = book.birds.filter(bird => bird.step.kind !== 'strain')
  for (const hatch of book.hatches) {
    for (const tally of hatch.tallies) if (tally.count > 0 && tally.step.kind !== 'strain') chicks.push(tally)
  }
  return chicks
}

/** The breeding season of a hatch: its pens', else the year its eggs were set or hatched; null when no date tells. */
export function seasonOfHatch(hatch: Hatch): number | null {
  const pen = hatch.pens[0]
  if (pen) return pen.pen.season
  const date = hatch.on ?? hatch.set
  return date && yearOf(date.first) === yearOf(date.last) ? yearOf(date.first) : null
}

/** The season a chick belongs to: its hatch's, else the year it hatched. */
export function seasonOf(chick: Chick): number | null {
  if (chick.hatch) return seasonOfHatch(chick.hatch)
  const {hatched} = chick
  return hatched && yearOf(hatched.first) === yearOf(hatched.last) ? yearOf(hatched.first) : null
}
