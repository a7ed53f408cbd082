/** Hatches filled in: their pens, the hens of their eggs, their chicks and tallies, and the descent of each. */
import type {RecordOf} from '../records/records.ts'
import {near} from '../records/near.ts'
import {inside} from '../records/problem.ts'
import {leavingOf, sexOf} from './life.ts'
import type {Bird, Hatch, Parentage, Tally} from './book.ts'
import type {Hatches} from './hatch-shells.ts'
import {unknownTally} from './inspect/unknown-tally.ts'
import {layingOf} from './laying.ts'
import type {Matings} from './matings.ts'
import type {Open} from './open.ts'
import {hatchOrigin, loneOrigin, NOTHING_STATED, statedOf, type Origin, type Rooms, type Stated} from './origins.ts'
import {FOUNDER, UNKNOWN_PARENTS} from './parentage.ts'
import {UNPLACED} from './steps.ts'
import type {StatedParent} from './stated-parents.ts'
import {told, type Told} from './tellings.ts'

/** Everything about hatches that needs birds and pens, and the matings behind each. What descent gives (step, shares) comes later, parents first. */
export function fillHatches(hatches: Hatches, rooms: Rooms): ReadonlyMap<Hatch, Matings> {
  const {records} = rooms.bench
  const origins = new Map<Hatch, Origin>()
  records.hatch.forEach((record, index) => {
    const hatch = hatches.all[index]
    if (!hatch) return
    fillPens(hatch, record, rooms)
    const origin = hatchOrigin(hatch, rooms)
    origins.set(hatch, origin)
    hatch.parentage = hatch.strain ? FOUNDER : hatch.pens.length === 0 ? UNKNOWN_PARENTS : origin.of(NOTHING_STATED)
  })
  for (const bird of rooms.birds.birds) if (bird.hatch) (bird.hatch as Open<Hatch>).chicks = [...bird.hatch.chicks, bird]
  records.hatch.forEach((record, index) => {
    const hatch = hatches.all[index]
    const origin = hatch ? origins.get(hatch) : undefined
    if (hatch && origin) fillChicks(hatch, record, origin, rooms)
  })
  for (const bird of rooms.birds.birds) if (!bird.hatch) bird.parentage = loneParentage(bird, rooms)
  return new Map([...origins].map(([hatch, {matings}]) => [hatch, matings]))
}

function fillPens(hatch: Open<Hatch>, {data}: RecordOf<'hatch'>, {birds, pens, incubationDays}: Rooms): void {
  const laying = layingOf(hatch, incubationDays)
  hatch.pens = (data.pen ?? []).flatMap(({pen: ref, eggs}) => {
    const pen = pens.find(ref)
    if (pen && !pen.hatches.includes(hatch)) pen.hatches = [...pen.hatches, hatch]
    return pen ? [{pen, eggs}] : []
  })
  hatch.eggsByDam = (data.eggs?.byDam ?? []).flatMap(({dam: ref, eggs}) => {
    const dam = birds.find(ref, laying, hatch.keeper, 'female')
    return dam ? [{dam, eggs}] : []
  })
  hatch.broody = data.broody ? birds.find(data.broody, laying, hatch.keeper, 'female') : null
}

function fillChicks(hatch: Open<Hatch>, {data, at}: RecordOf<'hatch'>, origin: Origin, rooms: Rooms): void {
  const chicks = hatch.chicks.map(bird => ({bird: bird as Open<Bird>, tellings: rooms.birds.tellings.get(bird) ?? []}))
  const ofChicks = chicks.map(({bird, tellings}) => ({family: bird.family, stated: statedIn(tellings, origin, rooms)}))
  const ofTallies = (data.tallies ?? []).map((line, index) =>
    ({family: line.family ?? null, stated: statedOf(line, {sire: inside(at, 'tallies', index), dam: inside(at, 'tallies', index)}, origin, rooms)}))
  const familyDams = damsOfFamilies([...ofChicks, ...ofTallies])
  const parentageOf = ({family, stated}: {family: string | null; stated: Stated}): Parentage => {
    if (hatch.strain) return FOUNDER
    const dam = stated.dam.candidates || family === null ? stated.dam : familyDams.get(family) ?? stated.dam
    return origin.of({...stated, dam})
  }
  hatch.tallies = (data.tallies ?? []).map((line, index): Open<Tally> => {
    const own = ofTallies[index]
    const sexings = (line.sex ?? []).map(({is, on, because}) => ({is, on: on ?? null, because: because ?? null}))
    return {
      kind: 'tally', at: line.at, count: line.chicks, written: line.chicks, mark: line.mark ?? null, sex: sexOf(sexings), hatched: hatch.on, hatch,
      parentage: own ? parentageOf(own) : hatch.parentage, step: UNPLACED, shares: new Map(), looks: new Map(), left: leavingOf(line.left), sexings,
    }
  })
  chicks.forEach(({bird, tellings}, index) => {
    const own = ofChicks[index]
    if (!own) return
    const tally = takeFromTally(bird, hatch, tellings, rooms)
    const stated = own.stated.sire.written || own.stated.dam.written || own.stated.pen !== null
    bird.parentage = tally && !stated ? tally.parentage : parentageOf(own)
    if (hatch.strain) bird.strain ??= hatch.strain
  })
  const listed = hatch.chicks.length + hatch.tallies.reduce((sum, tally) => sum + tally.count, 0)
  hatch.unlisted = hatch.hatched === null ? 0 : Math.max(0, hatch.hatched - listed)
}

/** What is said of a bird's own parents, wherever it is said. */
function statedIn(tellings: Told, origin: Origin, rooms: Rooms): Stated {
  const sire = told(tellings, 'sire'), dam = told(tellings, 'dam'), pen = told(tellings, 'pen')
  if (!sire && !dam && !pen) return NOTHING_STATED
  const spot = tellings[0]?.at ?? {file: '', path: []}
  return statedOf({sire: sire?.value, dam: dam?.value, pen: pen?.value}, {sire: sire?.by.at ?? spot, dam: dam?.by.at ?? spot}, origin, rooms)
}

/** A family has one dam: where one of its chicks names her, she is the dam of all. */
function damsOfFamilies(lines: readonly {readonly family: string | null; readonly stated: Stated}[]): ReadonlyMap<string, StatedParent> {
  const dams = new Map<string, StatedParent>()
  for (const {family, stated} of lines) {
    if (family !== null && stated.dam.candidates?.length === 1 && !dams.has(family)) dams.set(family, stated.dam)
  }
  return dams
}

/** The tally a bird was banded from later, which counts one chick less. */
function takeFromTally(bird: Open<Bird>, hatch: Hatch, tellings: Told, {bench}: Rooms): Tally | null {
  const outOf = told(tellings, 'out-of')
  if (!outOf || outOf.value.hatch.text !== hatch.id) return null
  const {mark} = outOf.value
  const unmarked = hatch.tallies.filter(tally => tally.mark === null)
  const fitting = mark !== undefined ? hatch.tallies.filter(tally => tally.mark === mark) : hatch.tallies.length === 1 ? hatch.tallies : unmarked.length === 1 ? unmarked : []
  const tally = (fitting.find(each => each.count > 0) ?? fitting[0]) as Open<Tally> | undefined
  if (!tally) {
    if (!bench.isFaulty(hatch.at.file)) {
      const marks = hatch.tallies.flatMap(each => each.mark ?? [])
      bench.note(unknownTally(hatch, mark, inside(outOf.by.at, 'out-of', ...(mark === undefined ? [] : ['mark'])), mark === undefined ? marks.slice(0, 3) : near(mark, marks)))
    }
    return null
  }
  bird.outOf = tally
  tally.count = Math.max(0, tally.count - 1)
  return tally
}

/** A bird that no hatch lists: a founder, or with parents of its own. */
function loneParentage(bird: Bird, rooms: Rooms): Parentage {
  const origin = loneOrigin(bird, rooms)
  const stated = statedIn(rooms.birds.tellings.get(bird) ?? [], origin, rooms)
  if (bird.strain && !stated.sire.written && !stated.dam.written && !stated.pen) return FOUNDER
  return stated === NOTHING_STATED ? UNKNOWN_PARENTS : origin.of(stated)
}
