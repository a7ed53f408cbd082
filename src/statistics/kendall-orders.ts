/** What Kendall's score C − D comes to when only chance deals out the second's marks among the birds of a class. */

/** What two who order the same birds gave one of them, more being better with both; and which bird it is, where it may stand in several classes. */
export type Ordered = readonly [one: number, other: number, bird?: unknown]

/** Up to so many different remainders of marks are gone through: 14 birds with 14 marks, more where marks are shared. */
export const MOST_REMAINDERS = 20_000

/** By how many share each mark, with the first and with the second, from the least: the chances hang on nothing else, so that classes alike are gone through once. */
const worked = new Map<string, ReadonlyMap<number, number>>()

/** How many different remainders of the second's marks there are: what it takes to go through a class. */
export const remaindersOf = (birds: readonly Ordered[]): number => countsOf(birds.map(([, other]) => other)).reduce((product, count) => product * (count + 1), 1)

/**
 * The chance of every score C − D, over all ways to deal the second's marks out among the birds.
 *
 * The birds are gone through from the first's least; what a bird adds depends only on its mark and on how many of each mark are left for those above it, so that what is left is
 * all that has to be remembered.
 *
 * @param birds of one class; 1 or more
 * @returns chances by score, adding up to 1; null where there are too many remainders to go through
 */
export function permutedScores(birds: readonly Ordered[]): ReadonlyMap<number, number> | null {
  if (remaindersOf(birds) > MOST_REMAINDERS) return null
  const shape = [birds.map(([one]) => one), birds.map(([, other]) => other)].map(marks => countsOf(marks).join(' ')).join(' | '), found = worked.get(shape) ?? goneThrough(birds)
  worked.set(shape, found)
  return found
}

function goneThrough(birds: readonly Ordered[]): ReadonlyMap<number, number> {
  const counts = countsOf(birds.map(([, other]) => other)), groups = countsOf(birds.map(([one]) => one))
  const places = counts.map((_, place) => counts.slice(0, place).reduce((product, count) => product * (count + 1), 1))
  let states = new Map([[codeOf(counts, places), {left: counts, chances: new Map([[0, 1]])}]])
  let remaining = birds.length
  for (const size of groups) {
    const next: typeof states = new Map(), ways = choose(remaining, size)
    for (const {left, chances} of states.values()) for (const taken of takings(left, size)) {
      const after = left.map((count, place) => count - (taken[place] ?? 0)), code = codeOf(after, places)
      const chance = left.reduce((product, count, place) => product * choose(count, taken[place] ?? 0), 1) / ways, gain = gainOf(taken, after)
      const own = next.get(code) ?? {left: after, chances: new Map<number, number>()}
      for (const [score, before] of chances) own.chances.set(score + gain, (own.chances.get(score + gain) ?? 0) + before * chance)
      next.set(code, own)
    }
    states = next
    remaining -= size
  }
  return states.get(0)?.chances ?? new Map([[0, 1]])
}

/** How many share each mark, from the least mark. */
function countsOf(marks: readonly number[]): number[] {
  const counts = new Map<number, number>()
  for (const mark of [...marks].sort((a, b) => a - b)) counts.set(mark, (counts.get(mark) ?? 0) + 1)
  return [...counts.values()]
}

const codeOf = (left: readonly number[], places: readonly number[]): number => left.reduce((sum, count, place) => sum + count * (places[place] ?? 0), 0)

/** Every way to take so many out of what is left, by how many of each mark. */
function takings(left: readonly number[], size: number): number[][] {
  const [first, ...others] = left
  if (first === undefined) return size === 0 ? [[]] : []
  const ways: number[][] = []
  for (let taken = Math.min(first, size); taken >= 0; taken--) for (const rest of takings(others, size - taken)) ways.push([taken, ...rest])
  return ways
}

/** Pairs of those taken now with those that come above them: a higher mark above agrees, a lower one does not. */
function gainOf(taken: readonly number[], after: readonly number[]): number {
  let gain = 0
  taken.forEach((count, place) => {
    if (count > 0) after.forEach((left, other) => {
      gain += count * left * Math.sign(other - place)
    })
  })
  return gain
}

function choose(of: number, taken: number): number {
  let ways = 1
  for (let step = 1; step <= taken; step++) ways = (ways * (of - taken + step)) / step
  return ways
}
