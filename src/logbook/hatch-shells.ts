/** Hatches with what they say of themselves. Their pens, chicks and descent are filled in once birds and pens are known. */
import type {RecordOf} from '../records/records.ts'
import type {Bench} from './bench.ts'
import {flockOf} from './life.ts'
import type {Hatch, Keeper, Strain} from './book.ts'
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
  return {
    at, body, id, pens: [], strain: data.strain ? strains.find(data.strain) : null, flock: data.flock ? flockOf(data.flock) : null,
    set: data.set ?? null, laid: data.laid ?? null, on: data.on ?? null, eggs: data.eggs?.total ?? null, eggsByDam: [], clear: data.clear ?? null,
    deadInGerm: data['dead-in-germ'] ?? null, deadInShell: data['dead-in-shell'] ?? null, bad: data.bad ?? null, hatched: data.hatched ?? null, setAside: data['set-aside'] ?? null,
    machine: data.machine ?? null, broody: null, rearing: id, chicks: [], tallies: [], unlisted: 0, parentage: FOUNDER,
    step: UNPLACED, shares: new Map(), keeper: data.keeper ? keepers.find(data.keeper) : keeperOfPens(),
  }

  /** whose the pens are, where all of them are one keeper's */
  function keeperOfPens(): Keeper | null {
    const [one, another] = new Set((data.pen ?? []).map(({pen}) => {
      const ref = penKeepers.get(pen.text)
      return ref ? keepers.find(ref) : null
    }))
    return another === undefined ? one ?? null : null
  }
}
