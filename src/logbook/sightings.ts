/** Every dated time that a bird was seen: weighed, scored or shown. What was struck out is left out. */
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {Bird, Logbook} from './book.ts'

export interface Sighting {
  readonly on: PartialDate
  readonly at: Spot
  readonly verb: 'weighed' | 'scored' | 'shown'
}

/** The sightings of one bird, the earliest first. */
export function sightings(book: Pick<Logbook, 'shows' | 'sheets'>): (bird: Bird) => readonly Sighting[] {
  const shown = new Map<Bird, Sighting[]>()
  for (const show of book.shows) {
    for (const {bird, at} of [...show.entries, ...show.scores ?? []]) shown.set(bird, [...(shown.get(bird) ?? []), {on: show.on, at, verb: 'shown'}])
  }
  for (const {bird, at, on, struck} of book.sheets) if (on && struck === null) shown.set(bird, [...(shown.get(bird) ?? []), {on, at, verb: 'scored'}])
  return bird => {
    const weighed = bird.weighings.map(({on, at}): Sighting => ({on, at, verb: 'weighed'}))
    const scored = [...bird.looks.values()].flatMap(look => look.scores.flatMap(({on, at, struck}): readonly Sighting[] => (on && struck === null ? [{on, at, verb: 'scored'}] : [])))
    return [...weighed, ...scored, ...(shown.get(bird) ?? [])].sort((a, b) => a.on.first - b.on.first)
  }
}
