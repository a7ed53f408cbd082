/** Pens: who was mated to whom, and from when to when. */
import {inside} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {StayRead} from '../records/schema/parts.ts'
import type {Span} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Keeper, Pen, Stay} from './book.ts'
import {directory, type Directory} from './directory.ts'
import {chancesDoNotSum, SLACK} from './inspect/chances-do-not-sum.ts'
import {chancesWanting} from './inspect/chances-wanting.ts'
import {unknownPen} from './inspect/unknown-pen.ts'
import type {Keepers} from './keepers.ts'
import type {Open} from './open.ts'
import {penDays} from './pen-days.ts'

export interface Pens extends Directory<Open<Pen>> {
  readonly all: readonly Open<Pen>[]
  /** every stay of a bird, with the pen */
  readonly staysOf: ReadonlyMap<Bird, readonly {readonly pen: Pen; readonly stay: Stay}[]>
}

export function linkPens(bench: Bench, birds: Birds, keepers: Keepers): Pens {
  const staysOf = new Map<Bird, {pen: Pen; stay: Stay}[]>()
  const all = bench.records.pen.map(record => {
    const pen = penOf(record, birds, keepers)
    noteShares(record, bench)
    for (const stay of [...pen.males, ...pen.females]) staysOf.set(stay.bird, [...(staysOf.get(stay.bird) ?? []), {pen, stay}])
    return pen
  })
  const named = all.map(pen => ({name: pen.id, thing: pen, at: pen.at}))
  return {...directory(named, unknownPen, name => bench.isFaulty(`pens/${name}.md`), bench.note), all, staysOf}
}

function penOf({id, data, body, at}: RecordOf<'pen'>, birds: Birds, keepers: Keepers): Open<Pen> {
  const keeper = data.keeper ? keepers.find(data.keeper) : null
  const when = penDays(data)
  const stays = (read: readonly StayRead[], as: 'male' | 'female'): Stay[] => read.flatMap(stay => stayOf(stay, birds, when, keeper, as) ?? [])
  return {
    at, body, id, season: data.season, males: stays(data.males, 'male'), females: stays(data.females, 'female'), from: data.from ?? null, to: data.to ?? null,
    keeper, intends: data.intends ?? null, hatches: [],
  }
}

function stayOf(read: StayRead, birds: Birds, pen: Span, keeper: Keeper | null, as: 'male' | 'female'): Stay | null {
  const when = {from: read.from?.first ?? pen.from, to: read.to?.last ?? pen.to}
  const bird = birds.find(read.band, when, keeper, as)
  return bird ? {bird, from: read.from ?? null, to: read.to ?? null, chance: read.chance ?? null, at: read.band.at} : null
}

/** Stated shares of the males make a whole, or leave something to a bird outside the book; males that came or went are not held to it. */
function noteShares({data, at}: RecordOf<'pen'>, bench: Bench): void {
  const stated = data.males.filter(stay => stay.from === undefined && stay.to === undefined).flatMap(stay => stay.chance ?? [])
  const sum = stated.reduce((total, chance) => total + chance, 0)
  const wanting = stated.length > 0 && stated.length === data.males.length && sum < 1 - SLACK
  if (sum > 1 + SLACK) bench.note(chancesDoNotSum(inside(at, 'males'), sum, 'the males’ shares'))
  if (wanting) bench.note(chancesWanting(inside(at, 'males'), sum, 'the males’ shares'))
}
