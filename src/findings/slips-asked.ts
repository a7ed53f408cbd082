import type {Bird, Logbook, Pen} from '../logbook/book.ts'
import {LIMITS, type Limits} from '../heredity/propagation.ts'
import type {Animal} from '../pedigree/pedigree.ts'
import type {Heredity} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import {otherParents} from './other-parents.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import type {ScoreDoubt} from './score-doubt.ts'
import {ofOtherPens, pensLikelier, timesLikelier, withoutLoop, writtenOtherwise} from './written-otherwise.ts'

/** A slip that could explain a chick's looks, its scores being right; `times` likelier all that was seen is with it than as written, null: as written it cannot be at all. */
export type Asked = {readonly times: number | null} & (
  | {readonly kind: 'sire' | 'dam'; readonly bird: Bird}
  | {readonly kind: 'egg'; readonly pen: Pen; readonly sires: readonly Bird[]; readonly dam: Bird}
  | {readonly kind: 'sex'; readonly is: 'male' | 'female'}
)

/** A slip with which all that was seen is less than so many times likelier explains nothing. */
export const EXPLAINS_FROM = 3
/** In flocks too wide to be worked exactly so many sweeps tell which slip explains more; all need not have settled to the last. */
export const BRIEF: Limits = {...LIMITS, sweeps: 20}
/** Scores taken to be wrong where the records of a trait allow for none. */
const DOUBT = 1e-3

/**
 * Of each doubted chick, every single slip beside a wrong score: first in the groups of loci where it is in doubt; then, where one explains it, in the rest, and the numbers multiply.
 *
 * @param doubtedIn of each group of loci the looks in doubt
 */
export function slipsAsked(book: Logbook, pedigree: PedigreeOfBook, heredity: Heredity, doubtedIn: ReadonlyMap<LocusGroup, readonly ScoreDoubt[]>): ReadonlyMap<Chick, readonly Asked[]> {
  const near = otherParents(book), all = new Map<Chick, Map<string, Asked>>()
  for (const {chick} of [...doubtedIn.values()].flat()) all.set(chick, new Map())
  const parents = new Set([...book.birds, ...book.hatches.flatMap(({tallies}) => tallies)].flatMap(({parentage}) => [...parentage.sires, ...parentage.dams].map(({bird}) => bird)))

  for (const group of heredity.groups) ask(group, (doubtedIn.get(group) ?? []).map(({chick}) => chick), () => true)
  for (const group of heredity.groups) {
    const own = new Set((doubtedIn.get(group) ?? []).map(({chick}) => chick))
    ask(group, [...all.keys()].filter(chick => !own.has(chick)), (chick, ...kinds) => [...all.get(chick)?.values() ?? []].some(({kind, times}) => kinds.includes(kind) && (times === null || times >= EXPLAINS_FROM)))
  }
  return new Map([...all].map(([chick, slips]) => [chick, [...slips.values()]]))

  function brief(group: LocusGroup): Limits {
    return {...BRIEF, tooWideFrom: heredity.worked(group).found.tooWideFrom}
  }

  function tell(chick: Chick, key: string, slip: Asked): void {
    const slips = all.get(chick), before = slips?.get(key)
    slips?.set(key, {...slip, times: slip.times === null || before?.times === null ? null : slip.times * (before?.times ?? 1)})
  }

  /** @param worth whether slips of these kinds are to be asked about of a chick */
  function ask(group: LocusGroup, chicks: readonly Chick[], worth: (chick: Chick, ...kinds: readonly Asked['kind'][]) => boolean): void {
    const {tallies, flock} = heredity.worked(group), doubt = (doubtedIn.get(group) ?? []).some(({impossible}) => impossible) ? DOUBT : 0
    const told = chicks.flatMap(chick => {
      const animals = chick.kind === 'bird' ? [pedigree.numberOf(chick)] : tallies.get(chick) ?? [], [first] = animals, animal = first === undefined ? undefined : flock.pedigree.animals[first]
      return first === undefined || !animal || animal.matings.length === 0 || !group.traits.some(trait => chick.looks.get(trait)?.counted) ? [] : [{chick, first, animals, animal}]
    })
    askParents(group, told.filter(({chick}) => worth(chick, 'sire', 'dam')), doubt)
    askPens(group, told.filter(({chick}) => worth(chick, 'egg')), doubt)
    askSexes(group, told.filter(({chick}) => worth(chick, 'sex')), doubt)
  }

  function askParents(group: LocusGroup, told: readonly Told[], doubt: number): void {
    const free = withoutLoop(pedigree.pedigree)
    const open = told.map(({chick, first, animals, animal}) => {
      const {sires, dams} = near(chick), numbers = (birds: readonly Bird[]) => free(first, birds.map(pedigree.numberOf))
      return {chick, first, animals, otherwise: writtenOtherwise(animal, numbers(sires), numbers(dams))}
    }).filter(({otherwise: {sires, dams}}) => sires.length + dams.length > 0)
    if (open.length === 0) return
    const {found} = heredity.workedOtherwise(group, {instead: instead(open.map(({animals, otherwise}) => ({animals, animal: otherwise.animal}))), doubt}, new Set(), brief(group))
    for (const {chick, first, otherwise} of open) {
      for (const {bird: number, role, times} of timesLikelier(otherwise, {sires: found.sires(first), dams: found.dams(first)})) {
        const bird = pedigree.birds[number]
        if (bird) tell(chick, `${role} ${number}`, {kind: role, bird, times})
      }
    }
  }

  function askPens(group: LocusGroup, told: readonly Told[], doubt: number): void {
    const free = withoutLoop(pedigree.pedigree)
    const open = told.map(({chick, first, animals, animal}) => {
      const {pens} = near(chick), numbers = (birds: readonly Bird[]) => free(first, birds.map(pedigree.numberOf))
      return {chick, first, animals, pens, otherwise: ofOtherPens(animal, pens.map(({sires, dams}) => ({sires: numbers(sires), dams: numbers(dams)})))}
    }).filter(({otherwise: {pens}}) => pens.some(hens => hens.length > 0))
    if (open.length === 0) return
    const {found} = heredity.workedOtherwise(group, {instead: instead(open.map(({animals, otherwise}) => ({animals, animal: otherwise.animal}))), doubt}, new Set(), brief(group))
    for (const {chick, first, pens, otherwise} of open) {
      pensLikelier(otherwise, found.dams(first)).forEach(({times, dam}, index) => {
        const other = pens[index], hen = dam === null ? undefined : pedigree.birds[dam]
        if (other && hen) tell(chick, `egg ${other.pen.id}`, {kind: 'egg', pen: other.pen, sires: other.sires, dam: hen, times})
      })
    }
  }

  /** At loci of the Z, of birds whose sex was told by look: one that bred is what it is said to be. Each is asked beside a twin of the other sex, who then has its looks in its place. */
  function askSexes(group: LocusGroup, told: readonly Told[], doubt: number): void {
    const open = told.flatMap(({chick, first, animal}) => {
      if (chick.kind !== 'bird' || animal.sex === 'unknown' || parents.has(chick) || group.loci.every(({on}) => on !== 'Z')) return []
      const is = animal.sex === 'male' ? 'female' as const : 'male' as const
      return [{chick, first, is, twin: {...animal, sex: is}}]
    })
    if (open.length === 0) return
    const {found, flock, firstMore} = heredity.workedOtherwise(group, {more: open.map(({twin}) => twin), doubt}, new Set(), brief(group))
    open.forEach(({chick, first, is}, index) => {
      const looks = {readings: flock.readings(first), tested: flock.tested(first)}
      const whole = found.supposing(new Map([[first, {readings: [], tested: null}], [firstMore + index, looks]]), (_, logLikelihood) => logLikelihood())
      tell(chick, 'sex', {kind: 'sex', is, times: Math.exp(whole - found.logLikelihood)})
    })
  }
}

interface Told {
  readonly chick: Chick
  /** its numbers in the flock, and the first of them */
  readonly animals: readonly number[]
  readonly first: number
  readonly animal: Animal
}

const instead = (open: readonly {readonly animals: readonly number[]; readonly animal: Animal}[]): ReadonlyMap<number, Animal> =>
  new Map(open.flatMap(({animals, animal}) => animals.map(number => [number, animal] as const)))
