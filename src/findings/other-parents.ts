import type {Bird, Logbook, Pen, Stay} from '../logbook/book.ts'
import {femalesAt, layingOf, malesAt, YOUNGEST_BREEDER} from '../logbook/laying.ts'
import {seasonOf, type Chick} from './ladder-chicks.ts'

/** Another pen that laid when a chick's egg was laid: were the egg from there, both its parents would be others. */
export interface OtherPen {
  readonly pen: Pen
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
}

/** Birds that the records do not name as a chick's parents and that stood near enough, and were old enough, to be. */
export interface OtherParents {
  /** any of them with the recorded dam: a cock may have been in the wrong pen for a while */
  readonly sires: readonly Bird[]
  /** with the recorded sire: hens of the pens that the egg is written to be of and he stood in, since no other met him */
  readonly dams: readonly Bird[]
  /** where its egg may be from, should it have been taken for another */
  readonly pens: readonly OtherPen[]
}

/**
 * Who else could it have been? The birds of the pens that its eggs came from, whenever they stood there, and of the same keeper's other pens of that season.
 * Of a chick that no hatch lists: of the pens that one of its recorded parents stood in that season.
 *
 * A hen of another pen never met the recorded sire. She comes in with the males of her own pen, as they stood there when the egg was laid.
 */
export function otherParents({pens, project}: Pick<Logbook, 'pens' | 'project'>): (chick: Chick) => OtherParents {
  const known = new Map<string, {readonly own: readonly Pen[]; readonly near: readonly Pen[]}>()
  return chick => {
    const key = chick.hatch?.id ?? `bird ${chick.kind === 'bird' ? chick.id : ''}`, {own, near} = known.get(key) ?? pensNear(chick), {sires, dams} = chick.parentage
    known.set(key, {own, near})
    // eggs of several pens in one setting may be mixed up too
    const met = own.filter(pen => sires.length === 0 || pen.males.some(({bird}) => sires.some(sire => sire.bird === bird)))
    const hens = others(met.flatMap(pen => pen.females), dams, chick), laying = layingOf(chick.hatch ?? {on: chick.hatched}, project.incubationDays)
    return {
      sires: others([...own, ...near].flatMap(pen => pen.males), sires, chick), dams: hens,
      pens: [...own, ...near].filter(pen => !met.includes(pen)).map(pen => ({pen, sires: others(malesAt(pen, laying, project.spermStoreDays), [], chick), dams: others(femalesAt(pen, laying), dams, chick).filter(hen => !hens.includes(hen))}))
        .filter(other => other.sires.length > 0 && other.dams.length > 0),
    }
  }

  function pensNear(chick: Chick): {readonly own: readonly Pen[]; readonly near: readonly Pen[]} {
    const season = seasonOf(chick), parents = [...chick.parentage.sires, ...chick.parentage.dams].map(({bird}) => bird)
    const own = chick.hatch ? chick.hatch.pens.map(({pen}) => pen)
      : pens.filter(pen => pen.season === season && [...pen.males, ...pen.females].some(({bird}) => parents.includes(bird)))
    const keepers = new Set([chick.hatch?.keeper ?? null, ...own.map(({keeper}) => keeper)].filter(keeper => keeper !== null))
    return {own, near: pens.filter(pen => pen.season === season && pen.keeper !== null && keepers.has(pen.keeper) && !own.includes(pen))}
  }
}

const others = (stays: readonly Stay[], recorded: readonly {readonly bird: Bird}[], chick: Chick): readonly Bird[] =>
  [...new Set(stays.map(({bird}) => bird))].filter(bird => bird !== chick && isGrown(bird, chick) && recorded.every(parent => parent.bird !== bird))

/** A bird of unknown age is taken to be. */
const isGrown = ({hatched}: Bird, chick: Chick): boolean => hatched === null || chick.hatched === null || hatched.first + YOUNGEST_BREEDER <= chick.hatched.last
