import type {Hatch, Logbook} from '../logbook/book.ts'
import type {DifferenceOfEstimates} from '../statistics/difference-of-estimates.ts'
import {livabilityDifference} from '../statistics/livability-difference.ts'
import {livabilityOfFamilies, type FamilyLivability} from '../statistics/livability-of-families.ts'
import type {Watched} from '../statistics/livability.ts'
import type {CareTouching} from './care-touching.ts'
import type {HatchGroup, HatchGroups, HatchPair} from './hatch-groups.ts'
import type {Chick} from './ladder-chicks.ts'
import {FOLLOWED, watchedOf} from './life-watched.ts'
import {keptOfHatch, rearedAlike, type RearedAlike} from './reared-alike.ts'
import {isJudged} from './set-aside.ts'
import {sireFamilies} from './sire-families.ts'

/** The ages asked for, in days: eight weeks, when most that die of themselves have died, and twenty, when birds are grown. Common practice, no source. */
export const LIVABILITY_AGES = [FOLLOWED, 140] as const

/** How birds that did not die left, as counts of birds. */
export interface LeftAlive {
  readonly culled: number
  /** sold, given away or lent */
  readonly sold: number
  /** taken, as by a fox */
  readonly taken: number
  /** lost, nobody knows how */
  readonly lost: number
}

/** How the chicks of some hatches lived. */
export interface LifeOfChicks {
  /** chicks whose life can be followed */
  readonly n: number
  /** one entry an age of `LIVABILITY_AGES`; null where nobody was watched so long; and how many died up to it */
  readonly ages: readonly {readonly age: number; readonly found: FamilyLivability | null; readonly died: number}[]
  /** died at any age */
  readonly died: number
  readonly leftAlive: LeftAlive
  /** banded or tallied, but the day they hatched or left is not written */
  readonly undated: number
  /** hatched, and nothing more is written of them */
  readonly unlisted: number
}

export interface LifeOfGroup extends LifeOfChicks {
  readonly group: HatchGroup
}

export interface LifeComparison {
  readonly pair: HatchPair
  readonly age: number
  readonly one: FamilyLivability
  readonly other: FamilyLivability
  /** first less second */
  readonly difference: DifferenceOfEstimates
  readonly speaksOf: FamilyLivability['kind']
  readonly verdict: 'more' | 'less' | 'cannot-tell'
  readonly alike: RearedAlike
}

export interface LivabilityOfGroups {
  /** those of the ladder and pure strains alike */
  readonly hatches: ReadonlyMap<Hatch, LifeOfChicks>
  readonly groups: readonly LifeOfGroup[]
  /** to the first of the ages */
  readonly comparisons: readonly LifeComparison[]
}

/**
 * How many chicks live to an age, hatch by hatch, step by step, season by season, under hens and out of machines?
 *
 * A chick that was sold, culled, taken or lost counts for as long as it was there. Deaths are those the records call `died`; culls and what a fox took are told beside them. A chick of which nothing
 * is written any more is taken to live: what dies unwritten makes the figure too good. Chicks that nobody listed after the hatch, or whose days are not written, are left out and counted.
 * Hatches that the keeper has set aside are in no group. From five sire families on the limits draw these whole.
 *
 * @see `livabilityOfFamilies`, `livabilityDifference`
 */
export function livabilityOfGroups(book: Logbook, groups: HatchGroups, touching: CareTouching): LivabilityOfGroups {
  const chicksOf = new Map(book.hatches.map(hatch => [hatch, [...hatch.chicks, ...hatch.tallies]] as const))
  const all = [...groups.steps, ...groups.seasons, ...groups.ways, ...groups.pens].map((group): LifeOfGroup => ({group, ...lifeOf(group.hatches.filter(isJudged), chicksOf, book.asOf)}))
  const hatches = new Map(book.hatches.map(hatch => [hatch, lifeOf([hatch], chicksOf, book.asOf)] as const))
  const kept = new Map(book.hatches.map(hatch => [hatch, keptOfHatch(hatch, touching, FOLLOWED)] as const))
  const lives = new Map(all.map(life => [life.group, life] as const)), lifeOfGroup = (group: HatchGroup) => lives.get(group) ?? lifeOf(group.hatches.filter(isJudged), chicksOf, book.asOf)
  const keptOf = (group: HatchGroup) => group.hatches.filter(isJudged).flatMap(hatch => kept.get(hatch) ?? [])
  return {hatches, groups: all, comparisons: groups.pairs.flatMap(pair => comparison(pair, lifeOfGroup(pair.one), lifeOfGroup(pair.other), () => rearedAlike(keptOf(pair.one), keptOf(pair.other))))}
}

function comparison(pair: HatchPair, first: LifeOfChicks, second: LifeOfChicks, alike: () => RearedAlike): LifeComparison[] {
  const one = first.ages[0]?.found, other = second.ages[0]?.found
  if (!one || !other) return []
  const difference = livabilityDifference(one, other)
  return [{
    pair, age: FOLLOWED, one, other, difference, speaksOf: one.kind === 'families' && other.kind === 'families' ? 'families' : 'these-chicks',
    verdict: difference.low > 0 ? 'more' : difference.high < 0 ? 'less' : 'cannot-tell', alike: alike(),
  }]
}

function lifeOf(hatches: readonly Hatch[], chicksOf: ReadonlyMap<Hatch, readonly Chick[]>, asOf: number, ages: readonly number[] = LIVABILITY_AGES): LifeOfChicks {
  const followed: {readonly chick: Chick; readonly parentage: Chick['parentage']; readonly hatch: Hatch | null; readonly watched: Watched}[] = []
  const left = {culled: 0, sold: 0, taken: 0, lost: 0}
  let undated = 0, unlisted = 0, n = 0, died = 0
  for (const hatch of hatches) {
    unlisted += hatch.unlisted
    for (const chick of chicksOf.get(hatch) ?? []) {
      if (chick.count === 0) continue
      const watched = watchedOf(chick, asOf)
      if (watched === null) {
        undated += chick.count
        continue
      }
      n += chick.count
      if (watched.died) died += chick.count
      else if (chick.left) left[{culled: 'culled', sold: 'sold', given: 'sold', lent: 'sold', taken: 'taken', lost: 'lost', died: 'lost'}[chick.left.how] as keyof LeftAlive] += chick.count
      followed.push({chick, parentage: chick.parentage, hatch: chick.hatch, watched})
    }
  }
  const families = sireFamilies(followed).map(own => own.flatMap(({chick, watched}) => Array<Watched>(chick.count).fill(watched)))
  return {n, ages: ages.map(age => ({age, found: livabilityOfFamilies(families, age), died: followed.reduce((sum, {chick, watched}) => sum + (watched.died && watched.age <= age ? chick.count : 0), 0)})), died, leftAlive: left, undated, unlisted}
}
