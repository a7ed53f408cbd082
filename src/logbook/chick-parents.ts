/** Who the parents of a chick are, by everything that is said of them: of the chick itself, of the tally it was banded from, of its family and of its hatch. */
import type {TallyRecord} from '../records/schema/hatch.ts'
import type {Bird, Hatch, Parentage} from './book.ts'
import {loneOrigin, NOTHING_STATED, statedOf, type Origin, type Rooms, type Stated} from './origins.ts'
import {FOUNDER, UNKNOWN_PARENTS} from './parentage.ts'
import type {StatedParent} from './stated-parents.ts'
import {told, type Told} from './tellings.ts'

/** What is said of the parents of one bird, or of the chicks of one tally. */
export interface ParentsTold {
  readonly stated: Stated
  readonly family: string | null
}

export function toldOfBird(bird: Bird, origin: Origin, rooms: Rooms): ParentsTold {
  return {stated: statedIn(rooms.birds.tellings.get(bird) ?? [], origin, rooms), family: bird.family}
}

export function toldOfTally(line: TallyRecord, origin: Origin, rooms: Rooms): ParentsTold {
  return {stated: statedOf(line, {sire: line.at, dam: line.at}, origin, rooms), family: line.family ?? null}
}

/** What a bird leaves open its tally fills in, each thing by itself. To say that nobody knows a parent leaves it open. */
export function filledIn(own: ParentsTold, tally: ParentsTold): ParentsTold {
  const side = (key: 'sire' | 'dam'): StatedParent => (own.stated[key].candidates ? own : tally).stated[key]
  return {stated: {sire: side('sire'), dam: side('dam'), pen: own.stated.pen ?? tally.stated.pen}, family: own.family ?? tally.family}
}

/** The parentage of each chick and tally of a hatch, in their order. */
export function parentages(hatch: Hatch, lines: readonly ParentsTold[], origin: Origin): readonly Parentage[] {
  const dams = damsOfFamilies(lines)
  return lines.map(({family, stated}) => {
    if (hatch.strain) return FOUNDER
    const dam = stated.dam.candidates || family === null ? stated.dam : dams.get(family) ?? stated.dam
    return origin.of({...stated, dam})
  })
}

/** A bird that no hatch lists: a founder, or with parents of its own. */
export function loneParentage(bird: Bird, rooms: Rooms): Parentage {
  const origin = loneOrigin(bird, rooms)
  const {stated} = toldOfBird(bird, origin, rooms)
  if (bird.strain && !stated.sire.written && !stated.dam.written && !stated.pen) return FOUNDER
  return stated === NOTHING_STATED ? UNKNOWN_PARENTS : origin.of(stated)
}

/** What is said of a bird's own parents, wherever it is said. */
function statedIn(tellings: Told, origin: Origin, rooms: Rooms): Stated {
  const sire = told(tellings, 'sire'), dam = told(tellings, 'dam'), pen = told(tellings, 'pen')
  if (!sire && !dam && !pen) return NOTHING_STATED
  const spot = tellings[0]?.at ?? {file: '', path: []}
  return statedOf({sire: sire?.value, dam: dam?.value, pen: pen?.value}, {sire: sire?.by.at ?? spot, dam: dam?.by.at ?? spot}, origin, rooms)
}

/** A family has one dam: where one of its chicks names her, she is the dam of all. */
function damsOfFamilies(lines: readonly ParentsTold[]): ReadonlyMap<string, StatedParent> {
  const dams = new Map<string, StatedParent>()
  for (const {family, stated} of lines) {
    if (family !== null && stated.dam.candidates?.length === 1 && !dams.has(family)) dams.set(family, stated.dam)
  }
  return dams
}
