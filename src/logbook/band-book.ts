/** Who wears which band when. A band worn by several birds in turn is settled by the day it is spoken of and by the keeper. */
import type {Day} from '../records/dates.ts'
import type {Ref} from '../records/scalars.ts'
import type {Bench} from './bench.ts'
import type {Bird, Keeper} from './book.ts'
import {bandInDoubt} from './inspect/band-in-doubt.ts'
import {bandTwice} from './inspect/band-twice.ts'
import {inTurn, mayBeWorn, type Wearing} from './wearing.ts'

export interface Span {
  readonly from: Day
  readonly to: Day
}

/** The day or days a date may mean, as a span. */
export const spanOf = (date: {readonly first: Day; readonly last: Day} | null | undefined): Span | null => (date ? {from: date.first, to: date.last} : null)

/** A use of a band that no bird wears, and the side it stands on where it has one. */
export interface Missed {
  readonly ref: Ref
  readonly as: 'male' | 'female' | null
}

export interface BandBook<B extends Bird = Bird> {
  /** the bird a band names at a time, with a keeper; null when there is none (then it is among the missed) or several are left (then a slip is noted) */
  find(ref: Ref, when?: Span | null, keeper?: Keeper | null, as?: Missed['as']): B | null
  isWorn(band: string): boolean
  readonly birds: readonly B[]
  /** every use so far of a band that no bird wears */
  readonly missed: readonly Missed[]
  /** the birds that some use has named so far */
  readonly named: ReadonlySet<Bird>
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
  const missed: Missed[] = []
  const named = new Set<Bird>()
  return {
    birds,
    twice,
    missed,
    named,
    isWorn: band => wearers.has(band),
    find(ref, when, keeper, as) {
      const all = wearers.get(ref.text)
      const bird = all ? settle(ref, all, when ?? null, keeper ?? null) : byId.get(ref.text) ?? null
      if (bird) named.add(bird)
      else if (!all) missed.push({ref, as: as ?? null})
      return bird
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
