import {aliveOn, breedersOn, pensOfSeason} from '../logbook/alive.ts'
import type {Bird, Keeper, Logbook, Pen, Sex} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {grouped} from './grouped.ts'

export interface Count {
  readonly male: number
  readonly female: number
  readonly unknown: number
  readonly all: number
}

/** Who is there on the book's day. */
export interface Census {
  readonly asOf: Day
  readonly alive: readonly Bird[]
  /** of the living: in a pen of the latest season begun, or kept for breeding on record */
  readonly breeders: readonly Bird[]
  /** breeders that are not of a pure strain: the new breed's own */
  readonly ownBreeders: readonly Bird[]
  readonly aliveCount: Count
  readonly breederCount: Count
  readonly ownBreederCount: Count
  /** by keeper, in the book's order; birds kept nobody knows where last, under null */
  readonly keepers: readonly {readonly keeper: Keeper | null; readonly alive: Count; readonly breeders: Count}[]
  /** unbanded chicks of tallies that nothing says have left */
  readonly unbanded: number
  /** the latest season with a pen begun; null while there is none */
  readonly season: number | null
  readonly pens: readonly Pen[]
}

/** Where a bird stands on a day: the last keeper written whose time has begun and not ended. */
export function keeperOn(bird: Bird, day: Day): Keeper | null {
  return bird.keptAt.findLast(stay => (stay.from === null || stay.from.first <= day) && (stay.to === null || stay.to.last >= day))?.keeper ?? null
}

export function countBySex(birds: Iterable<{readonly sex: Sex}>): Count {
  const count = {male: 0, female: 0, unknown: 0, all: 0}
  for (const {sex} of birds) {
    count[sex] += 1
    count.all += 1
  }
  return count
}

/**
 * How many are there to go on with? The living and the breeding birds on the book's day, by sex and keeper.
 *
 * A breeder is alive and stands in a pen of the latest season that has begun (from the day its stay begins), or is kept on
 * record. Pure-strain birds are among `breeders` and not among `ownBreeders`.
 */
export function census(book: Logbook): Census {
  const day = book.asOf
  const pens = pensOfSeason(book.pens, day), alive = aliveOn(book, day), breeders = breedersOn(book, day)
  const ownBreeders = breeders.filter(bird => bird.step.kind !== 'strain')
  const breeding = new Set(breeders)
  const places = grouped(alive, bird => keeperOn(bird, day))
  const nowhere = places.get(null)
  return {
    asOf: day, alive, breeders, ownBreeders, season: pens[0]?.season ?? null, pens, aliveCount: countBySex(alive), breederCount: countBySex(breeders),
    ownBreederCount: countBySex(ownBreeders),
    keepers: [...book.keepers.map(keeper => [keeper, places.get(keeper) ?? []] as const), ...(nowhere ? [[null, nowhere] as const] : [])].map(([keeper, birds]) =>
      ({keeper, alive: countBySex(birds), breeders: countBySex(birds.filter(bird => breeding.has(bird)))})),
    unbanded: book.hatches.reduce((sum, hatch) => sum + hatch.tallies.reduce((all, tally) => all + (tally.left === null ? tally.count : 0), 0), 0),
  }
}
