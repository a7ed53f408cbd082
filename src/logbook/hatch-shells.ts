/** Hatches with what they say of themselves. Their pens, chicks and descent are filled in once birds and pens are known. */
import {isWhole} from '../records/dates.ts'
import type {RecordOf} from '../records/records.ts'
import type {Bench} from './bench.ts'
import {flockOf} from './life.ts'
import type {Hatch, Strain} from './book.ts'
import {directory, type Directory} from './directory.ts'
import {unknownHatch} from './inspect/unknown-hatch.ts'
import type {Keepers} from './keepers.ts'
import type {Open} from './open.ts'
import {FOUNDER} from './parentage.ts'
import {UNPLACED} from './steps.ts'

export interface Hatches extends Directory<Open<Hatch>> {
  readonly all: readonly Open<Hatch>[]
}

export function hatchShells(bench: Bench, strains: Directory<Strain>, keepers: Keepers): Hatches {
  const penKeepers = new Map(bench.records.pen.map(pen => [pen.id, pen.data.keeper]))
  const all = bench.records.hatch.map(record => shellOf(record, strains, keepers, penKeepers))
  const named = all.map(hatch => ({name: hatch.id, thing: hatch, at: hatch.at}))
  return {...directory(named, unknownHatch, name => bench.isFaulty(`hatches/${name}.md`), bench.note), all}
}

type KeeperRef = RecordOf<'pen'>['data']['keeper']

function shellOf({id, data, body, at}: RecordOf<'hatch'>, strains: Directory<Strain>, keepers: Keepers, penKeepers: ReadonlyMap<string, KeeperRef>): Open<Hatch> {
  const whose = [...new Set((data.pen ?? []).map(({pen}) => penKeepers.get(pen.text)?.text))]
  const ofPen = whose.length === 1 && data.pen?.[0] ? penKeepers.get(data.pen[0].pen.text) : undefined
  const keeper = data.keeper ?? ofPen
  return {
    at, body, id, pens: [], strain: data.strain ? strains.find(data.strain) : null, flock: data.flock ? flockOf(data.flock) : null,
    set: data.set ?? null, laid: data.laid ?? null, on: data.on ?? null, eggs: data.eggs?.total ?? null, eggsByDam: [], clear: data.clear ?? null,
    deadInGerm: data['dead-in-germ'] ?? null, deadInShell: data['dead-in-shell'] ?? null, bad: data.bad ?? null, hatched: data.hatched ?? null,
    machine: data.machine ?? null, broody: null, rearing: rearingOf(id, data), chicks: [], tallies: [], unlisted: 0, parentage: FOUNDER,
    step: UNPLACED, shares: new Map(), keeper: keeper ? keepers.find(keeper) : null,
  }
}

/** One machine and day, or one broody and day; else the hatch by itself. */
function rearingOf(id: string, {machine, broody, on, set}: RecordOf<'hatch'>['data']): string {
  const day = on && isWhole(on) ? `hatched ${on.text}` : set && isWhole(set) ? `set ${set.text}` : null
  if (day === null) return id
  if (machine !== undefined) return `${machine}, ${day}`
  return broody ? `broody ${broody.text}, ${day}` : id
}
