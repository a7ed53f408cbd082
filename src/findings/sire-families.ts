import type {Chicks, Hatch, Parentage} from '../logbook/book.ts'
import type {Count} from '../statistics/share-difference.ts'
import {grouped} from './grouped.ts'

/** What may have a sire: a bird, a tally, or a hatch of which some were weighed without bands. */
export interface OfASire {
  readonly parentage: Parentage
  readonly hatch: Pick<Hatch, 'id'> | null
}

/** Seed of every drawing of families anew: same records, same intervals. */
export const FAMILY_SEED = 1

/**
 * Which chicks are of one family, by their sire?
 *
 * Sires that may both have had one chick make one family of all their chicks together, since nobody can say whose is whose. Chicks of which no sire is in the book
 * stand by their dams, else by their hatch, else all together: too few families are the safer error, and widen the interval.
 *
 * @param chicks in any order
 * @returns the families, in an order that the records' own order does not change
 */
export function sireFamilies<Chick extends OfASire>(chicks: readonly Chick[]): readonly (readonly Chick[])[] {
  const above = new Map<string, string>()
  const rootOf = (name: string): string => {
    const next = above.get(name)
    return next === undefined ? name : rootOf(next)
  }
  const join = (a: string, b: string): void => {
    // the first by name stands for all
    const [one, other] = [rootOf(a), rootOf(b)].sort()
    if (one !== undefined && other !== undefined && one !== other) above.set(other, one)
  }
  const placed = chicks.map(chick => {
    const [first = '', ...more] = namesOf(chick)
    for (const name of more) join(first, name)
    return {chick, first}
  })
  return [...grouped(placed, ({first}) => rootOf(first))].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, members]) => members.map(({chick}) => chick))
}

function namesOf({parentage: {sires, dams}, hatch}: OfASire): readonly string[] {
  if (sires.length > 0) return sires.map(({bird}) => `sire ${bird.id}`)
  if (dams.length > 0) return dams.map(({bird}) => `dam ${bird.id}`)
  return [hatch ? `hatch ${hatch.id}` : 'unknown']
}

/**
 * So many of so many in every family; families with nobody judged are passed over.
 *
 * @param is null where a chick cannot be judged
 */
export function countByFamily<Chick extends OfASire & Pick<Chicks, 'count'>>(chicks: readonly Chick[], is: (chick: Chick) => boolean | null): readonly Count[] {
  return sireFamilies(chicks).flatMap(members => {
    let k = 0, n = 0
    for (const chick of members) {
      const judged = is(chick)
      if (judged !== null) n += chick.count
      if (judged === true) k += chick.count
    }
    return n === 0 ? [] : [{k, n}]
  })
}
