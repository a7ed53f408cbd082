import {climb, type ClosedAncestry} from './closed-ancestry.ts'
import {LargestFirst} from './largest-first.ts'

/** One way in which two birds may have the same copy of a gene. */
export interface Path {
  /** animals from the first bird up to the common ancestor, and from the second: both end in it, and have nobody else in common */
  readonly up: readonly [first: readonly number[], second: readonly number[]]
  /** its part of the kinship */
  readonly kinship: number
}

/** How far paths are sought. */
export interface Search {
  /** paths listed at most */
  readonly limit: number
  /** longest way up from each bird */
  readonly generations: number
  /** pairs of unfinished ways led on at most */
  readonly steps: number
}

/**
 * The largest of all paths between two birds, without going through all of them.
 *
 * The unfinished pair of ways that promises most is led on by one step, the younger bird's, until enough have met. A pair promises its product so
 * far, times the best way on from each to any ancestor of the other, times the largest kinship of such an ancestor with itself: never less than what
 * comes of it. So the first to meet is the largest, and pairs that cannot come into the list are never led on.
 *
 * @param selves kinship with itself at each place of the ancestry
 * @param pair places of the two birds
 * @returns the largest first
 * @see Hart, Nilsson & Raphael 1968, IEEE Trans. Syst. Sci. Cybern. 4:100, for the order of search (from memory)
 */
export function largestPaths(
  ancestry: ClosedAncestry, selves: Float64Array, [a, b]: readonly [number, number], {limit, generations, steps}: Search,
): readonly Path[] {
  const {ancestors, first, way, share} = ancestry
  const aboveA = above(a), aboveB = above(b)
  const toB = best(ancestry, aboveB), toA = best(ancestry, aboveA)
  const highest = selves.reduce((most, self, place) => (aboveA[place] && aboveB[place] ? Math.max(most, self) : most), 0)
  const queue = new LargestFirst<Pair>()
  const found: Path[] = []
  begin({at: a, length: 0, below: null}, {at: b, length: 0, below: null}, 1)
  for (let step = 0; step < steps && found.length < limit; step++) {
    const pair = queue.take()
    if (!pair) break
    const {one, other, product} = pair
    if (one.at === other.at) {
      found.push({up: [animalsOf(one), animalsOf(other)], kinship: product * (selves[one.at] ?? 0)})
      continue
    }
    // the younger is no ancestor of the other
    const isFirst = !isOrigin(one.at) && (isOrigin(other.at) || one.at > other.at)
    const younger = isFirst ? one : other
    if (younger.length >= generations) continue
    for (let k = first[younger.at] ?? 0, end = first[younger.at + 1] ?? 0; k < end; k++) {
      const next: Way = {at: way[k] ?? 0, length: younger.length + 1, below: younger}
      if (isFirst) begin(next, other, product * (share[k] ?? 0))
      else begin(one, next, product * (share[k] ?? 0))
    }
  }
  return found

  function begin(one: Way, other: Way, product: number): void {
    const promise = product * (one.at === other.at ? selves[one.at] ?? 0 : (toB[one.at] ?? 0) * (toA[other.at] ?? 0) * highest)
    if (promise > 0) queue.add(promise, {one, other, product})
  }
  function above(place: number): Float64Array {
    const reach = new Float64Array(ancestors.length)
    reach[place] = 1
    return climb(ancestry, reach, place)
  }
  function isOrigin(place: number): boolean {
    return ancestors[place]?.isOrigin ?? true
  }
  function animalsOf(end: Way): readonly number[] {
    const list: number[] = []
    for (let here: Way | null = end; here; here = here.below) list.push(ancestors[here.at]?.animal ?? NaN)
    return list.reverse()
  }
}

/** A way up as far as it has come. */
interface Way {
  readonly at: number
  readonly length: number
  readonly below: Way | null
}

interface Pair {
  readonly one: Way
  readonly other: Way
  readonly product: number
}

/** For every place: product of the shares along the best way up to a known bird among these; 1 where it is one of them, 0 where there is none. */
function best({ancestors, first, way, share}: ClosedAncestry, goals: Float64Array): Float64Array {
  const product = new Float64Array(ancestors.length)
  ancestors.forEach(({unknown}, place) => {
    let most = goals[place] && unknown === null ? 1 : 0
    for (let k = first[place] ?? 0, end = first[place + 1] ?? 0; k < end; k++) most = Math.max(most, (share[k] ?? 0) * (product[way[k] ?? 0] ?? 0))
    product[place] = most
  })
  return product
}
