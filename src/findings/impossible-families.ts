import type {Bird, Logbook} from '../logbook/book.ts'
import type {Heredity} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import {otherParents} from './other-parents.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {scoreDoubts, type ScoreDoubt} from './score-doubt.ts'
import {QUESTIONED_BELOW, type MatingTest, type Segregation} from './segregation.ts'
import {timesLikelier, withoutLoop, writtenOtherwise, type WrittenOtherwise} from './written-otherwise.ts'

/** A score is listed when it is wrong with this chance or more … */
export const DOUBTED_FROM = 0.2
/** … and no more than this share of birds of its kin would be scored so, misscoring as the records state it taken in. */
export const HARDLY = 0.05
/** Another parent with which all that was seen is less than so many times likelier explains nothing. */
export const EXPLAINS_FROM = 3
/** Scores taken to be wrong where the records of a trait allow for none. */
const DOUBT = 1e-3

/** One doubt that explains a chick's looks by itself. */
export type Explanation =
  /** its doubted scores are wrong, and the parents as written */
  | {readonly kind: 'misscored'; readonly times: 1; readonly share: number}
  /** another bird that stood near is the parent, and the scores are right */
  | {
    readonly kind: 'sire' | 'dam'
    readonly bird: Bird
    /** how many times likelier all that was seen is than as written; null: as written it cannot be at all */
    readonly times: number | null
    /** of all the explanations, each thought alike beforehand */
    readonly share: number
  }

/** A chick whose look its parents cannot give, or hardly. */
export interface DoubtedChick {
  readonly chick: Chick
  /** of each trait in doubt, the likeliest to be wrong first */
  readonly doubts: readonly ScoreDoubt[]
  /** as written it cannot be, unless scores are wrong where the records allow for none: one in a thousand is then taken to be */
  readonly impossible: boolean
  /** the likeliest first */
  readonly explanations: readonly Explanation[]
  /** its parents, chicks and full siblings that are in doubt too: one slip may explain them all */
  readonly kin: readonly Chick[]
  /** tests in which its whole family strays from what the rules give: then a rule may be wrong */
  readonly rule: readonly MatingTest[]
}

/**
 * Which chicks look as their parents cannot make them, or hardly? And which single slip explains each: a wrong score, another sire or dam?
 *
 * Each group of loci with a doubt is worked once more, every doubted chick possibly of any one other parent that stood near; the chances of the parents then say how
 * many times likelier each is than as written. Where another parent explains a chick the other groups are asked too, and over the groups these numbers multiply. Where two doubted chicks are kin, each is asked with the other's parents open as well.
 *
 * @param segregation asked only where several chicks of a family are in doubt
 */
export function impossibleFamilies(book: Logbook, pedigree: PedigreeOfBook, heredity: Heredity, segregation: () => Segregation): readonly DoubtedChick[] {
  const doubts = new Map<Chick, ScoreDoubt[]>()
  const doubtedIn = new Map<LocusGroup, readonly ScoreDoubt[]>()
  for (const group of heredity.groups) {
    const worked = heredity.worked(group)
    const found = scoreDoubts(book, group, worked, chick => (chick.kind === 'bird' ? pedigree.numberOf(chick) : worked.tallies.get(chick)?.[0] ?? null))
      .filter(({wrong, scoredSo}) => wrong >= DOUBTED_FROM && scoredSo <= HARDLY)
    doubtedIn.set(group, found)
    for (const doubt of found) doubts.set(doubt.chick, [...doubts.get(doubt.chick) ?? [], doubt])
  }
  if (doubts.size === 0) return []

  const others = new Map([...doubts.keys()].map(chick => [chick, new Map<string, {bird: Bird; kind: 'sire' | 'dam'; times: number | null}>()] as const))
  // first where they are in doubt; then, of those that another parent explains, whether it agrees with the rest
  for (const group of heredity.groups) ask(group, (doubtedIn.get(group) ?? []).map(({chick}) => chick))
  for (const group of heredity.groups) {
    const own = new Set((doubtedIn.get(group) ?? []).map(({chick}) => chick))
    ask(group, [...doubts.keys()].filter(chick => !own.has(chick) && [...others.get(chick)?.values() ?? []].some(({times}) => times === null || times >= EXPLAINS_FROM)))
  }
  return [...doubts].map(([chick, own]): DoubtedChick => {
    const kin = [...doubts.keys()].filter(other => areKin(chick, other))
    return {
      chick, doubts: own.sort((a, b) => b.wrong - a.wrong), impossible: own.some(({impossible}) => impossible), kin,
      explanations: shared([...others.get(chick)?.values() ?? []]), rule: kin.some(other => other.parentage.pairs === chick.parentage.pairs || samePairs(other, chick)) ? strayingTests(chick, own) : [],
    }
  })

  function ask(group: LocusGroup, chicks: readonly Chick[]): void {
    const open = openParents(group, new Set(chicks))
    if (open.size === 0) return
    const {found} = heredity.workedOtherwise(group, {
      instead: new Map([...open.values()].flatMap(({animals, otherwise}) => animals.map(animal => [animal, otherwise.animal] as const))),
      doubt: (doubtedIn.get(group) ?? []).some(({impossible}) => impossible) ? DOUBT : 0,
    })
    for (const [chick, {animals: [first], otherwise}] of open) {
      if (first === undefined) continue
      for (const {bird: number, role, times} of timesLikelier(otherwise, {sires: found.sires(first), dams: found.dams(first)})) {
        const bird = pedigree.birds[number], all = others.get(chick), before = all?.get(`${role} ${number}`)
        if (bird) all?.set(`${role} ${number}`, {bird, kind: role, times: times === null || before?.times === null ? null : times * (before?.times ?? 1)})
      }
    }
  }

  /** those of the chicks that have parents in the book and were scored for a trait of the group, with their numbers in its flock */
  function openParents(group: LocusGroup, chicks: ReadonlySet<Chick>): ReadonlyMap<Chick, {readonly animals: readonly number[]; readonly otherwise: WrittenOtherwise}> {
    const {tallies, flock} = heredity.worked(group), near = otherParents(book), free = withoutLoop(pedigree.pedigree)
    const open = new Map<Chick, {animals: readonly number[]; otherwise: WrittenOtherwise}>()
    for (const chick of chicks) {
      const animals = chick.kind === 'bird' ? [pedigree.numberOf(chick)] : tallies.get(chick) ?? [], [first] = animals
      const animal = first === undefined ? undefined : flock.pedigree.animals[first]
      if (first === undefined || !animal || animal.matings.length === 0 || !group.traits.some(trait => chick.looks.get(trait)?.counted)) continue
      const {sires, dams} = near(chick), numbers = (birds: readonly Bird[]) => free(first, birds.map(bird => pedigree.numberOf(bird)))
      open.set(chick, {animals, otherwise: writtenOtherwise(animal, numbers(sires), numbers(dams))})
    }
    return open
  }

  function strayingTests(chick: Chick, own: readonly ScoreDoubt[]): readonly MatingTest[] {
    return segregation().matings.filter(test => test.adjusted < QUESTIONED_BELOW && test.chicks.includes(chick) && own.some(({trait}) => trait === test.trait))
  }
}

/** A wrong score, and the other parents that explain it as well. */
function shared(parents: readonly {readonly bird: Bird; readonly kind: 'sire' | 'dam'; readonly times: number | null}[]): readonly Explanation[] {
  const cannotBe = parents.some(({times}) => times === null)
  const likelier = parents.filter(({times}) => times === null || (!cannotBe && times >= EXPLAINS_FROM))
  const sum = cannotBe ? likelier.length : likelier.reduce((total, {times}) => total + (times ?? 0), 1)
  const all: Explanation[] = [{kind: 'misscored', times: 1, share: cannotBe ? 0 : 1 / sum}, ...likelier.map(each => ({...each, share: cannotBe ? 1 / sum : (each.times ?? 0) / sum}))]
  return all.sort((a, b) => b.share - a.share)
}

const samePairs = (one: Chick, other: Chick): boolean => one.parentage.pairs.length === other.parentage.pairs.length &&
  one.parentage.pairs.every(({sire, dam}, index) => sire === other.parentage.pairs[index]?.sire && dam === other.parentage.pairs[index]?.dam)

function areKin(one: Chick, other: Chick): boolean {
  if (one === other) return false
  const isParent = (parent: Chick, chick: Chick): boolean => chick.parentage.pairs.some(({sire, dam}) => sire === parent || dam === parent)
  return isParent(one, other) || isParent(other, one) || (one.parentage.pairs.length > 0 && samePairs(one, other))
}
