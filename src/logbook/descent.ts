/** Birds in order of descent, and what descent gives each: its step and its strain shares. */
import {inside} from '../records/problem.ts'
import {parentsFirst} from '../pedigree/parents-first.ts'
import type {Birds} from './birds.ts'
import type {Bench} from './bench.ts'
import type {Bird, Chicks, Hatch, Strain} from './book.ts'
import {loopInDescent, type Link} from './inspect/loop-in-descent.ts'
import type {Open} from './open.ts'
import {UNKNOWN_PARENTS} from './parentage.ts'
import {told, type Told} from './tellings.ts'
import type {Steps} from './steps.ts'
import {pureShares, strainShares, type Shares} from './strain-shares.ts'

/** The birds, parents before their chicks. Birds on a loop are reported, and left without parents. */
export function inOrderOfDescent({birds, tellings}: Birds, bench: Bench): {readonly birds: readonly Open<Bird>[]; readonly looped: ReadonlySet<Bird>} {
  const byAge = [...birds].sort((a, b) => (a.hatched?.first ?? -Infinity) - (b.hatched?.first ?? -Infinity) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  const place = new Map<Bird, number>(byAge.map((bird, index) => [bird, index]))
  const known = new Map<Bird['parentage'], readonly number[]>()
  const parentsOf = (index: number): readonly number[] => {
    const bird = byAge[index]
    if (!bird) return []
    const {parentage} = bird
    // a bird that may be one of several descends from them
    if (bird.maybe.length > 0) return [...placesOf(parentage), ...bird.maybe.flatMap(other => place.get(other) ?? [])]
    return placesOf(parentage)
  }
  const placesOf = (parentage: Bird['parentage']): readonly number[] => {
    const parents = known.get(parentage) ?? [...parentage.sires, ...parentage.dams].flatMap(({bird}) => place.get(bird) ?? [])
    known.set(parentage, parents)
    return parents
  }
  const {order, loops} = parentsFirst(byAge.length, parentsOf)
  const looped = new Set<Bird>()
  for (const loop of loops) {
    const onIt = loop.flatMap(index => byAge[index] ?? [])
    if (onIt.every(bird => looped.has(bird))) continue
    bench.note(loopInDescent(onIt, (chick, parent) => writtenAt(chick, parent, tellings.get(chick) ?? [])))
    for (const bird of onIt) looped.add(bird)
  }
  if (looped.size === 0) return {birds: order.flatMap(index => byAge[index] ?? []), looped}
  for (const bird of byAge) {
    if (!looped.has(bird)) continue
    bird.parentage = UNKNOWN_PARENTS
    bird.maybe = []
  }
  return {birds: parentsFirst(byAge.length, parentsOf).order.flatMap(index => byAge[index] ?? []), looped}
}

/** Steps and shares, parents first; chicks of the same parents share the same objects. */
export function placeByDescent(birds: readonly Open<Bird>[], hatches: readonly Open<Hatch>[], steps: Steps): void {
  const known = new WeakMap<Chicks['parentage'], Shares>()
  const pure = new Map<Strain, Shares>()
  const sharesOf = ({parentage}: Pick<Chicks, 'parentage'>): Shares => {
    const shares = known.get(parentage) ?? strainShares(parentage)
    known.set(parentage, shares)
    return shares
  }
  const pureOf = (strain: Strain): Shares => {
    const shares = pure.get(strain) ?? pureShares(strain)
    pure.set(strain, shares)
    return shares
  }
  const place = (chicks: Open<Pick<Chicks, 'parentage' | 'step' | 'shares'>>, strain: Strain | null): void => {
    const founder = chicks.parentage.kind === 'founder' ? strain : null
    chicks.step = founder ? steps.ofStrain(founder) : steps.of(chicks.parentage)
    chicks.shares = founder ? pureOf(founder) : sharesOf(chicks)
  }
  for (const bird of birds) place(bird, bird.strain)
  for (const hatch of hatches) {
    place(hatch, hatch.strain)
    for (const tally of hatch.tallies) place(tally, hatch.strain)
  }
}

/** Where a bird is written to be the chick of another: as its sire or dam, or by standing in the pen of its hatch; or to be perhaps the other itself. */
function writtenAt(chick: Bird, parent: Bird, tellings: Told): Link {
  const {sires, dams} = chick.parentage
  const side = sires.some(({bird}) => bird === parent) ? 'sire' : dams.some(({bird}) => bird === parent) ? 'dam' : null
  if (side === null) {
    const maybe = told(tellings, 'maybe')
    return {at: maybe && inside(maybe.by.at, 'maybe'), by: 'maybe'}
  }
  const written = told(tellings, side)
  if (written) return {at: inside(written.by.at, side), by: 'word'}
  const pens = (chick.hatch?.pens ?? []).map(({pen}) => pen)
  const stay = pens.flatMap(pen => (side === 'sire' ? pen.males : pen.females)).find(({bird}) => bird === parent)
  return {at: stay?.at ?? null, by: stay ? 'pen' : 'word'}
}
