/** How the eggs of a setting fall to its pens and their hens. A hen who stood in several of the pens laid her eggs once. */
import type {Bird, Pen} from './book.ts'

export interface EggsOfPen {
  /** eggs known by hen */
  readonly byHen: ReadonlyMap<Bird, number>
  /** eggs of this pen's hens that are not known by hen */
  readonly others: number
}

interface Given {
  readonly pens: readonly {readonly pen: Pen; readonly eggs: number | null; /** hens that can have laid in it then */ readonly hens: readonly Bird[]}[]
  readonly eggs: number | null
  readonly eggsByDam: readonly {readonly dam: Bird; readonly eggs: number}[]
}

/**
 * A hen's eggs fall to the pens she can have laid in: where the pens' own numbers are given, in proportion to the room that the eggs of hens
 * with fewer pens leave there; else evenly. Eggs of no known hen fill up the pens' numbers, or go evenly to all pens.
 */
export function eggsByHen({pens, eggs, eggsByDam}: Given): readonly EggsOfPen[] {
  const given = pens.map(each => each.eggs ?? (pens.length === 1 ? eggs : null))
  const byHen = pens.map(() => new Map<Bird, number>())
  const laid = eggsByDam.map(each => ({...each, pens: pensOf(each.dam)}))
  for (let several = 1; several <= pens.length; several++) {
    const room = given.map((count, index) => (count === null ? null : Math.max(0, count - sumOf(byHen[index]))))
    for (const each of laid) if (each.pens.length === several) spread(each, room)
  }
  const spare = Math.max(0, (eggs ?? 0) - byHen.reduce((sum, own) => sum + sumOf(own), 0)) / Math.max(1, pens.length)
  return byHen.map((own, index) => {
    const count = given[index] ?? null
    return {byHen: own, others: count === null ? spare : Math.max(0, count - sumOf(own))}
  })

  /** where she can have laid then; else where she stood at all; else anywhere */
  function pensOf(dam: Bird): readonly number[] {
    const those = (holds: (each: Given['pens'][number]) => boolean) => pens.flatMap((each, index) => (holds(each) ? [index] : []))
    const then = those(({hens}) => hens.includes(dam))
    if (then.length > 0) return then
    const ever = those(({pen}) => pen.females.some(stay => stay.bird === dam))
    return ever.length > 0 ? ever : those(() => true)
  }

  function spread({dam, eggs: count, pens: hers}: (typeof laid)[number], room: readonly (number | null)[]): void {
    const rooms = hers.map(index => room[index] ?? null)
    const inAll = rooms.reduce<number>((sum, each) => sum + (each ?? 0), 0)
    const even = inAll === 0 || rooms.includes(null)
    hers.forEach((index, place) => {
      const own = byHen[index]
      own?.set(dam, (own.get(dam) ?? 0) + (even ? count / hers.length : (count * (rooms[place] ?? 0)) / inAll))
    })
  }
}

const sumOf = (eggs: ReadonlyMap<Bird, number> | undefined): number => [...eggs?.values() ?? []].reduce((sum, count) => sum + count, 0)
