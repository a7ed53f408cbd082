import type {Bird, Logbook, Pen, Stay} from '../logbook/book.ts'
import {YOUNGEST_BREEDER} from '../logbook/laying.ts'
import {seasonOf, type Chick} from './ladder-chicks.ts'

/** Birds that the records do not name as a chick's parents and that stood near enough, and were old enough, to be. */
export interface OtherParents {
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
}

/**
 * Who else could it have been? The birds of the pens that its eggs came from, whenever they stood there, and of the same keeper's other pens of that season.
 * Of a chick that no hatch lists: of the pens that one of its recorded parents stood in that season.
 */
export function otherParents({pens}: Pick<Logbook, 'pens'>): (chick: Chick) => OtherParents {
  const known = new Map<string, readonly Pen[]>()
  return chick => {
    const key = chick.hatch?.id ?? `bird ${chick.kind === 'bird' ? chick.id : ''}`
    const near = known.get(key) ?? pensNear(chick)
    known.set(key, near)
    const {sires, dams} = chick.parentage
    return {sires: others(near.flatMap(pen => pen.males), sires, chick), dams: others(near.flatMap(pen => pen.females), dams, chick)}
  }

  function pensNear(chick: Chick): readonly Pen[] {
    const season = seasonOf(chick), parents = [...chick.parentage.sires, ...chick.parentage.dams].map(({bird}) => bird)
    const own = chick.hatch ? chick.hatch.pens.map(({pen}) => pen)
      : pens.filter(pen => pen.season === season && [...pen.males, ...pen.females].some(({bird}) => parents.includes(bird)))
    const keepers = new Set([chick.hatch?.keeper ?? null, ...own.map(({keeper}) => keeper)].filter(keeper => keeper !== null))
    return [...new Set([...own, ...pens.filter(pen => pen.season === season && pen.keeper !== null && keepers.has(pen.keeper))])]
  }
}

const others = (stays: readonly Stay[], recorded: readonly {readonly bird: Bird}[], chick: Chick): readonly Bird[] =>
  [...new Set(stays.map(({bird}) => bird))].filter(bird => bird !== chick && isGrown(bird, chick) && recorded.every(parent => parent.bird !== bird))

/** A bird of unknown age is taken to be. */
const isGrown = ({hatched}: Bird, chick: Chick): boolean => hatched === null || chick.hatched === null || hatched.first + YOUNGEST_BREEDER <= chick.hatched.last
