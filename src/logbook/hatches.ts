/** Hatches filled in: their pens, the hens of their eggs, their chicks and tallies, and the descent of each. */
import type {RecordOf} from '../records/records.ts'
import type {TallyRecord} from '../records/schema/hatch.ts'
import {near} from '../records/near.ts'
import {inside} from '../records/problem.ts'
import {leavingOf, sexOf} from './life.ts'
import type {Bird, Hatch, Tally} from './book.ts'
import {filledIn, loneParentage, parentages, toldOfBird, toldOfTally} from './chick-parents.ts'
import type {Hatches} from './hatch-shells.ts'
import {unknownTally} from './inspect/unknown-tally.ts'
import {layingOf} from './laying.ts'
import type {Matings} from './matings.ts'
import type {Open} from './open.ts'
import {hatchOrigin, NOTHING_STATED, type Origin, type Rooms} from './origins.ts'
import {FOUNDER, UNKNOWN_PARENTS} from './parentage.ts'
import {UNPLACED} from './steps.ts'
import {told} from './tellings.ts'

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
  hatch.pens = []
  for (const {pen: ref, eggs} of data.pen ?? []) {
    const pen = pens.find(ref)
    // one that is named twice is one pen still
    if (!pen || hatch.pens.some(each => each.pen === pen)) continue
    hatch.pens = [...hatch.pens, {pen, eggs}]
    pen.hatches = [...pen.hatches, hatch]
  }
  hatch.eggsByDam = (data.eggs?.byDam ?? []).flatMap(({dam: ref, eggs}) => {
    const dam = birds.find(ref, laying, hatch.keeper, 'female')
    return dam ? [{dam, eggs}] : []
  })
  hatch.broody = data.broody ? birds.find(data.broody, laying, hatch.keeper, 'female') : null
}

function fillChicks(hatch: Open<Hatch>, {data}: RecordOf<'hatch'>, origin: Origin, rooms: Rooms): void {
  const lines = data.tallies ?? []
  const tallies = lines.map(line => tallyOf(line, hatch))
  hatch.tallies = tallies
  const ofTallies = lines.map(line => toldOfTally(line, origin, rooms))
  const chicks: readonly Open<Bird>[] = hatch.chicks
  const ofChicks = chicks.map(bird => {
    const own = toldOfBird(bird, origin, rooms)
    const tally = takeFromTally(bird, hatch, rooms)
    const ofTally = tally ? ofTallies[tallies.indexOf(tally)] : undefined
    return ofTally ? filledIn(own, ofTally) : own
  })
  const settled = parentages(hatch, [...ofChicks, ...ofTallies], origin)
  for (const [index, each] of [...chicks, ...tallies].entries()) each.parentage = settled[index] ?? hatch.parentage
  chicks.forEach((bird, index) => {
    bird.family = ofChicks[index]?.family ?? null
    if (hatch.strain) bird.strain ??= hatch.strain
  })
  const listed = chicks.length + tallies.reduce((sum, tally) => sum + tally.count, 0)
  hatch.unlisted = hatch.hatched === null ? 0 : Math.max(0, hatch.hatched - listed)
}

function tallyOf({at, chicks, mark, sex, left}: TallyRecord, hatch: Hatch): Open<Tally> {
  const sexings = (sex ?? []).map(({is, on, because}) => ({is, on: on ?? null, because: because ?? null}))
  return {
    kind: 'tally', at, count: chicks, written: chicks, mark: mark ?? null, sex: sexOf(sexings), hatched: hatch.on, hatch,
    parentage: hatch.parentage, step: UNPLACED, shares: new Map(), looks: new Map(), left: leavingOf(left), sexings,
  }
}

/** The tally a bird was banded from later, which counts one chick less. */
function takeFromTally(bird: Open<Bird>, hatch: Hatch, {bench, birds}: Rooms): Open<Tally> | null {
  const outOf = told(birds.tellings.get(bird) ?? [], 'out-of')
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
