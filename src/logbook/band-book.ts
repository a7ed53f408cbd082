/** Who wears which band when. A band worn by several birds in turn is settled by the day it is spoken of and by the keeper. */
import type {Day} from '../records/dates.ts'
import type {Ref} from '../records/scalars.ts'
import type {Bench} from './bench.ts'
import type {Bird, Keeper} from './book.ts'
import {nearPlaces} from './directory.ts'
import {bandInDoubt} from './inspect/band-in-doubt.ts'
import {bandTwice} from './inspect/band-twice.ts'
import {unknownBand} from './inspect/unknown-band.ts'
import {inTurn, mayBeWorn, type Wearing} from './wearing.ts'

export interface Span {
  readonly from: Day
  readonly to: Day
}

/** The day or days a date may mean, as a span. */
export const spanOf = (date: {readonly first: Day; readonly last: Day} | null | undefined): Span | null => (date ? {from: date.first, to: date.last} : null)

export interface BandBook<B extends Bird = Bird> {
  /** the bird a band names at a time, with a keeper; null, and a slip, when there is none or several are left */
  find(ref: Ref, when?: Span | null, keeper?: Keeper | null): B | null
  readonly birds: readonly B[]
  /** birds that wear a band at the same time as another does: their records are at fault already */
  readonly twice: ReadonlySet<Bird>
}

interface Wearer<B> {
  readonly bird: B
  readonly worn: Wearing
}

/** @param worn the bands of each bird, in the order of `birds` */
export function bandBook<B extends Bird>(birds: readonly B[], worn: readonly (readonly Wearing[])[], bench: Bench): BandBook<B> {
  const wearers = new Map<string, Wearer<B>[]>()
  birds.forEach((bird, index) => {
    for (const wearing of worn[index] ?? []) {
      const others = wearers.get(wearing.band)
      if (others) others.push({bird, worn: wearing})
      else wearers.set(wearing.band, [{bird, worn: wearing}])
    }
  })
  const twice = noteTwice(wearers, bench)
  const byId = new Map(birds.map(bird => [bird.id, bird]))
  return {
    birds,
    twice,
    find(ref, when, keeper) {
      const all = wearers.get(ref.text)
      if (!all) {
        const named = byId.get(ref.text)
        if (named) return named
        if (!bench.mayStandInFaulty(ref.text)) bench.note(unknownBand(ref, nearPlaces(ref.text, new Map([...wearers].map(([band, [first]]) => [band, first?.worn.at ?? ref.at])))))
        return null
      }
      const [only, second] = all
      return only && !second ? only.bird : settle(ref, all, when ?? null, keeper ?? null)
    },
  }

  function settle(ref: Ref, all: readonly Wearer<B>[], when: Span | null, keeper: Keeper | null): B | null {
    const distinct = (some: readonly Wearer<B>[]) => [...new Set(some.map(wearer => wearer.bird))]
    const [only, second] = distinct(all)
    if (only && !second) return only
    const then = when ? all.filter(wearer => mayBeWorn(wearer.worn, when)) : all
    const left = distinct(then.length > 0 ? then : all)
    const kept = left.length > 1 && keeper ? left.filter(bird => bird.keptAt.some(stay => stay.keeper === keeper)) : left
    const [bird, another] = kept.length > 0 ? kept : left
    if (bird && another && !twice.has(bird)) {
      bench.note(bandInDoubt(ref, left.map(each => ({name: each.id, at: each.at}))))
      return null
    }
    return bird ?? null
  }
}

function noteTwice<B extends Bird>(wearers: ReadonlyMap<string, readonly Wearer<B>[]>, bench: Bench): ReadonlySet<Bird> {
  const twice = new Set<Bird>()
  for (const [band, all] of wearers) {
    if (all.length < 2) continue
    const inOrder = [...all].sort((a, b) => (a.worn.start?.first ?? -Infinity) - (b.worn.start?.first ?? -Infinity) || 0)
    inOrder.forEach((second, index) => {
      const first = inOrder.slice(0, index).find(earlier => earlier.bird !== second.bird && !inTurn(earlier.worn, second.worn))
      if (!first) return
      bench.note(bandTwice(band, second.worn.at, first.worn.at))
      twice.add(first.bird).add(second.bird)
    })
  }
  return twice
}
