import type {Interval} from './interval.ts'
import {normalQuantile} from './normal-quantile.ts'
import {waysToDeal} from './rank-sum.ts'

/** Up to so many birds together the rank sums are counted out; beyond, the normal curve stands in. */
const EXACT_UP_TO = 60

/** By how much one group's grades lie above another's. */
export interface Shift {
  /** in the unit of the grades */
  readonly shift: number
  /** null when there are too few birds for any interval of this level */
  readonly interval: Interval | null
}

/**
 * Hodges and Lehmann's shift: by how much do the grades of one step lie above those of another? Of birds of several groups cocks are held against cocks and hens against
 * hens: the median of all differences inside the groups, and the interval by the sum of the groups' U.
 *
 *     shift = median of all Σ n₁·n₂ differences        interval from the cth smallest to the cth largest difference, c the greatest number with P(U ≤ c − 1) ≤ α/2
 *
 * Belongs to `rankSum` as the difference of means belongs to t. With ties it covers at least as often as it says.
 *
 * @param groups grades of both steps in each, all finite, the second taken off; a group with birds in one step only is passed over
 * @param level above 0 and below 1; default 0.95
 * @returns shift and interval, or null when no group has birds of both
 * @throws RangeError when a grade is not finite or the level is out of its range
 * @see Hodges & Lehmann 1963, Ann. Math. Stat. 34:598–611. Hollander & Wolfe 1973, Nonparametric Statistical Methods, ch. 4; over groups: Lehmann 1975, Nonparametrics, 3.3 (both from memory).
 * @example shiftWithin([{one: [8, 9], other: [7]}, {one: [4], other: [3, 3]}])  // shift 1, no interval
 */
export function shiftWithin(groups: readonly {readonly one: readonly number[]; readonly other: readonly number[]}[], level = 0.95): Shift | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const both = groups.filter(({one, other}) => one.length > 0 && other.length > 0), sizes = both.map(({one, other}) => ({n: one.length, m: other.length}))
  if (both.length === 0) return null
  const nth = differencesOf(both), pairs = sizes.reduce((sum, {n, m}) => sum + n * m, 0), c = depth(sizes, level)
  return {shift: nth(Math.floor((pairs - 1) / 2)) / 2 + nth(Math.floor(pairs / 2)) / 2, interval: c < 1 ? null : {low: nth(c - 1), high: nth(pairs - c)}}
}

/** The differences of all pairs, by their place from the least: counted by distinct grades, which are few however many the birds. */
function differencesOf(groups: readonly {readonly one: readonly number[]; readonly other: readonly number[]}[]): (place: number) => number {
  const counts = new Map<number, number>()
  for (const {one, other} of groups) {
    const others = tally(other)
    for (const [first, times] of tally(one)) for (const [second, again] of others) counts.set(first - second, (counts.get(first - second) ?? 0) + times * again)
  }
  const order = [...counts].sort(([a], [b]) => a - b)
  return place => {
    let passed = 0
    for (const [difference, count] of order) {
      passed += count
      if (place < passed) return difference
    }
    throw new RangeError(`there is no pair at place ${place}`)
  }
}

function tally(grades: readonly number[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>()
  for (const grade of grades) {
    if (!Number.isFinite(grade)) throw new RangeError(`a grade is a finite number, not ${grade}`)
    counts.set(grade, (counts.get(grade) ?? 0) + 1)
  }
  return counts
}

/** The greatest c with P(U ≤ c − 1) ≤ α/2, U the sum over the groups; 0 when there is none. */
function depth(sizes: readonly {readonly n: number; readonly m: number}[], level: number): number {
  const outside = (1 - level) / 2, of = (part: (n: number, m: number) => number): number => sizes.reduce((sum, {n, m}) => sum + part(n, m), 0)
  if (of((n, m) => n + m) > EXACT_UP_TO) return Math.max(0, Math.floor(of((n, m) => n * m) / 2 - normalQuantile(level) * Math.sqrt(of((n, m) => (n * m * (n + m + 1)) / 12))))
  const ways = sizes.map(({n, m}) => waysToDeal(Array.from({length: n + m}, (_, place) => place + 1), n).slice((n * (n + 1)) / 2)).reduce<Float64Array>(bothWays, new Float64Array([1]))
  const all = ways.reduce((sum, count) => sum + count, 0)
  let sum = 0, c = 0
  for (; c < ways.length; c++) {
    sum += ways[c] ?? 0
    if (sum > outside * all * (1 + 1e-12)) return c
  }
  return c
}

/** Ways to come to each sum by two groups together. */
function bothWays(one: Float64Array, other: Float64Array): Float64Array {
  const ways = new Float64Array(one.length + other.length - 1)
  one.forEach((count, u) => {
    if (count > 0) other.forEach((times, more) => { ways[u + more] = (ways[u + more] ?? 0) + count * times })
  })
  return ways
}
