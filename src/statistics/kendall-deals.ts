/** What Kendall's score C − D comes to when only chance deals out the second's marks among the birds, each bird keeping what it is dealt through all its classes. */
import {chanceOf} from './chance.ts'
import {MOST_REMAINDERS, permutedScores, remaindersOf, type Ordered} from './kendall-orders.ts'

/** How often what score came up: `exact` chances adding up to 1, or counts of so many seeded draws. */
export type DealtScores = {readonly how: 'exact'; readonly scores: ReadonlyMap<number, number>} | {readonly how: 'drawn'; readonly scores: ReadonlyMap<number, number>; readonly draws: number}

/** Where there are too many orders to go through so many are drawn; of more than so many pairs fewer. */
export const KENDALL_DRAWS = {most: 1999, fewer: 499, abovePairs: 10_000} as const
/** Above so many pairs in all the classes the chances are not summed class by class, but drawn. */
const MOST_PAIRS = 2000
/** Up to so many pairs of birds are looked at while orders are gone through, of all families of classes together. */
const MOST_LOOKS = 1_000_000

/**
 * The chance of every score, over the ways to deal the second's marks out among birds.
 *
 * Birds that meet in a class, or are joined by others who do, exchange their marks as wholes: a bird that stands in three classes, or before two judges, has been dealt one lot, not three. Where a bird was marked
 * anew between two classes its marks go together, in turn; one who had no mark at the time of a class has the one before it there, else the next.
 *
 * @param classes two birds or more in each
 * @param seed of the draws, where there are too many ways to go through
 * @see Good 2005, Permutation, Parametric and Bootstrap Tests of Hypotheses (exchangeable units; from memory)
 */
export function dealtScores(classes: readonly (readonly Ordered[])[], seed: number): DealtScores {
  const groups = joined(classes), parts = groups.map(partOf), pairs = classes.reduce((sum, {length}) => sum + (length * (length - 1)) / 2, 0)
  const single = (group: readonly (readonly Ordered[])[]): boolean => group.length === 1 && new Set(group[0]?.map(keyOf)).size === group[0]?.length
  const remainders = groups.reduce((sum, group) => sum + (single(group) ? remaindersOf(group[0] ?? []) : 0), 0)
  const looks = groups.reduce((sum, group, place) => sum + (single(group) ? 0 : waysOf(parts[place]) * ((parts[place]?.pairs.length ?? 0) / 4)), 0)
  if (pairs > MOST_PAIRS || remainders > MOST_REMAINDERS || looks > MOST_LOOKS) return drawn(parts, seed, pairs > KENDALL_DRAWS.abovePairs ? KENDALL_DRAWS.fewer : KENDALL_DRAWS.most)
  return {how: 'exact', scores: groups.map((group, place) => (single(group) ? permutedScores(group[0] ?? []) : null) ?? everyDeal(parts[place])).reduce(added, new Map([[0, 1]]))}
}

/** Birds that exchange marks, and what the first says of every two of them in one class. */
interface Part {
  /** which lot each bird has; lots that are alike bear one number */
  readonly lots: readonly number[]
  /** different lots, and classes */
  readonly kinds: number
  readonly classes: number
  /** of lot l in class c at l · classes + c */
  readonly marks: Float64Array
  /** four numbers a pair that the first did not put level: the one's place among lots, the other's, the class, which of them is better by the first */
  readonly pairs: Int32Array
}

/** A bird that nothing else names is by itself. */
const keyOf = (ordered: Ordered): unknown => ordered[2] ?? ordered

/** Classes that share a bird, or are joined by others that do. */
function joined(classes: readonly (readonly Ordered[])[]): readonly (readonly (readonly Ordered[])[])[] {
  let groups: {birds: Set<unknown>; classes: (readonly Ordered[])[]}[] = []
  for (const birds of classes) {
    const keys = birds.map(keyOf), own = groups.filter(group => keys.some(key => group.birds.has(key)))
    groups = [...groups.filter(group => !own.includes(group)), {birds: new Set([...own.flatMap(group => [...group.birds]), ...keys]), classes: [...own.flatMap(group => group.classes), birds]}]
  }
  const turn = new Map(classes.map((birds, place) => [birds, place]))
  return groups.map(group => group.classes.sort((a, b) => (turn.get(a) ?? 0) - (turn.get(b) ?? 0)))
}

function partOf(classes: readonly (readonly Ordered[])[]): Part {
  const birds = [...new Set(classes.flatMap(each => each.map(keyOf)))], placeOf = new Map(birds.map((bird, place) => [bird, place]))
  const seen = birds.map(() => new Map<number, number>())
  classes.forEach((each, turn) => { for (const ordered of each) seen[placeOf.get(keyOf(ordered)) ?? 0]?.set(turn, ordered[1]) })
  const kept = seen.map(own => through(own, classes.length)), numbers = new Map<string, number>(), marks: (readonly number[])[] = []
  const lots = kept.map(own => {
    const key = own.join(' '), number = numbers.get(key) ?? marks.push(own) - 1
    numbers.set(key, number)
    return number
  })
  const pairs = classes.flatMap((each, turn) => each.flatMap((one, place) => each.slice(place + 1).flatMap(other => {
    const sign = Math.sign(one[0] - other[0])
    return sign === 0 ? [] : [placeOf.get(keyOf(one)) ?? 0, placeOf.get(keyOf(other)) ?? 0, turn, sign]
  })))
  return {lots, kinds: marks.length, classes: classes.length, marks: Float64Array.from(marks.flat()), pairs: Int32Array.from(pairs)}
}

/** A bird's mark in every class: where it was not shown the one before, else the first after. */
function through(seen: ReadonlyMap<number, number>, classes: number): readonly number[] {
  let last = seen.get(Math.min(...seen.keys())) ?? 0
  return Array.from({length: classes}, (_, turn) => (last = seen.get(turn) ?? last))
}

/** n! over those of lots that are alike. */
function waysOf(part: Part | undefined): number {
  const counts = new Map<number, number>()
  let ways = 1
  part?.lots.forEach((lot, place) => {
    const count = (counts.get(lot) ?? 0) + 1
    counts.set(lot, count)
    ways = (ways * (place + 1)) / count
  })
  return ways
}

function scoreOf({classes, marks, pairs}: Part, lots: readonly number[]): number {
  let score = 0
  for (let at = 0; at < pairs.length; at += 4) {
    const turn = pairs[at + 2] ?? 0, one = marks[(lots[pairs[at] ?? 0] ?? 0) * classes + turn] ?? 0, other = marks[(lots[pairs[at + 1] ?? 0] ?? 0) * classes + turn] ?? 0
    if (one !== other) score += (one > other ? 1 : -1) * (pairs[at + 3] ?? 0)
  }
  return score
}

/** Every different way to deal the lots out, each as likely as the other. */
function everyDeal(part: Part | undefined): ReadonlyMap<number, number> {
  if (!part) return new Map([[0, 1]])
  const left = Array.from({length: part.kinds}, (_, lot) => part.lots.filter(each => each === lot).length), dealt: number[] = [], chance = 1 / waysOf(part), found = new Map<number, number>()
  const deal = (): void => {
    if (dealt.length === part.lots.length) {
      const score = scoreOf(part, dealt)
      found.set(score, (found.get(score) ?? 0) + chance)
      return
    }
    left.forEach((count, lot) => {
      if (count === 0) return
      left[lot] = count - 1
      dealt.push(lot)
      deal()
      dealt.pop()
      left[lot] = count
    })
  }
  deal()
  return found
}

function drawn(parts: readonly Part[], seed: number, draws: number): DealtScores {
  const chance = chanceOf(seed), scores = new Map<number, number>(), decks = parts.map(({lots}) => [...lots])
  for (let draw = 0; draw < draws; draw++) {
    let score = 0
    parts.forEach((part, place) => {
      const deck = decks[place] ?? []
      for (let last = deck.length - 1; last > 0; last--) {
        const at = chance.whole(last + 1), lot = deck[last] ?? 0
        deck[last] = deck[at] ?? 0
        deck[at] = lot
      }
      score += scoreOf(part, deck)
    })
    scores.set(score, (scores.get(score) ?? 0) + 1)
  }
  return {how: 'drawn', scores, draws}
}

/** Chances of a sum of two scores that do not hang together. */
function added(one: ReadonlyMap<number, number>, other: ReadonlyMap<number, number>): ReadonlyMap<number, number> {
  const sums = new Map<number, number>()
  for (const [at, chance] of one) for (const [more, also] of other) sums.set(at + more, (sums.get(at + more) ?? 0) + chance * also)
  return sums
}
