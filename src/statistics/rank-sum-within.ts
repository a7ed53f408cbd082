import {chiSquareTail} from './chi-square-tail.ts'
import {midRanks, waysToDeal, type RankSum} from './rank-sum.ts'

/** One bird's grade, and the sex or other group inside which alone it is held against others. */
export interface Graded {
  readonly group: string
  readonly grade: number
}

/** The grades of one group in both steps, and how much the group weighs; the weights of all groups add up to 1. */
export interface GroupOfBoth {
  readonly group: string
  readonly one: readonly number[]
  readonly other: readonly number[]
  readonly weight: number
}

/** Up to so many birds in all the ways to deal the ranks are counted, where groups do not make too many sums. */
const EXACT_UP_TO = 60
const MOST_SUMS = 400_000

/**
 * Van Elteren's test: do the grades of one step lie higher than those of another, when cocks are held against cocks and hens against hens?
 *
 *     T = Σ over groups of R_h / (n_h + 1)        R_h = sum of the mid-ranks of the first step's birds in the group, of n_h birds of both steps
 *     exact: share of all ways to deal the ranks inside the groups with T as far from Σ n₁ₕ/2 or farther
 *     else z = (|T − Σ n₁ₕ/2| − c)/σ        σ² = Σ n₁ₕn₂ₕ/12 · ( n_h + 1 − Σ(t³ − t)/(n_h(n_h − 1)) ) / (n_h + 1)²        c = ½ · least 1/(n_h + 1)
 *
 * The superiority is that of the groups, each weighed by n₁ₕn₂ₕ/(n_h + 1), as the test weighs them. Pooled, two sexes that are graded apart make a change of a mere change
 * in how many of each were graded. A group with birds in one step only is held against nothing and stands aside. With one group it is `rankSum`.
 *
 * @param one grades of the first step, all finite
 * @param other grades of the second
 * @returns as `rankSum`; `u` the sum over groups; `few` where no group has birds of both, `all-alike` where every group is graded alike
 * @throws RangeError when a grade is not finite
 * @see van Elteren 1960, Bull. Int. Stat. Inst. 37:351–361. Lehmann 1975, Nonparametrics, 3.3 (from memory). The halving of the continuity step is ours.
 * @example rankSumWithin([{group: 'male', grade: 8}, {group: 'female', grade: 5}], [{group: 'male', grade: 7}, {group: 'female', grade: 4}])  // superiority 1, p 0.5
 */
export function rankSumWithin(one: readonly Graded[], other: readonly Graded[]): RankSum {
  const groups = groupsOfBoth(one, other)
  if (groups.length === 0) return {kind: 'few'}
  const ranked = groups.map(group => ({...group, n: group.one.length + group.other.length, ...midRanks([...group.one, ...group.other])}))
  if (ranked.every(({ties, n}) => ties.includes(n))) return {kind: 'all-alike'}
  const seen = ranked.map(({doubled, one: own}) => doubled.slice(0, own.length).reduce((sum, rank) => sum + rank, 0))
  const u = ranked.reduce((sum, {one: own}, place) => sum + ((seen[place] ?? 0) - own.length * (own.length + 1)) / 2, 0)
  const superiority = ranked.reduce((sum, {one: own, other: theirs, weight}, place) => sum + (weight * ((seen[place] ?? 0) - own.length * (own.length + 1))) / 2 / (own.length * theirs.length), 0)
  const shape = {kind: 'compared', u, superiority} as const
  // whole numbers throughout: every doubled rank sum times all other (n_h + 1)
  const whole = ranked.reduce((product, {n}) => product * (n + 1), 1)
  const far = Math.abs(ranked.reduce((sum, {one: own, n}, place) => sum + ((seen[place] ?? 0) * whole) / (n + 1) - own.length * whole, 0))
  const p = exactP(ranked.map(({doubled, one: own, n}) => ({ways: waysOf(doubled, own.length, n), factor: whole / (n + 1), middle: own.length * whole})), far, ranked.reduce((sum, {n}) => sum + n, 0))
  if (p !== null) return {...shape, how: 'exact', p}
  const variance = ranked.reduce((sum, {one: own, other: theirs, n, ties}) => sum + ((own.length * theirs.length) / 12) * (n + 1 - ties.reduce((all, count) => all + (count ** 3 - count), 0) / (n * (n - 1))) / (n + 1) ** 2, 0)
  const step = 0.5 / Math.max(...ranked.map(({n}) => n + 1)), z = Math.max(0, far / whole / 2 - step) / Math.sqrt(variance)
  return {...shape, how: 'asymptotic', p: chiSquareTail(z ** 2, 1)}
}

/**
 * The groups with birds of both steps, and van Elteren's weights n₁n₂/(n₁ + n₂ + 1), which make up 1; by name.
 *
 * @throws RangeError when a grade is not finite
 */
export function groupsOfBoth(one: readonly Graded[], other: readonly Graded[]): readonly GroupOfBoth[] {
  for (const {grade} of [...one, ...other]) if (!Number.isFinite(grade)) throw new RangeError(`a grade is a finite number, not ${grade}`)
  const of = (birds: readonly Graded[], name: string): number[] => birds.filter(({group}) => group === name).map(({grade}) => grade)
  const both = [...new Set(one.map(({group}) => group))].sort().map(group => ({group, one: of(one, group), other: of(other, group)})).filter(each => each.other.length > 0)
  const weights = both.map(each => (each.one.length * each.other.length) / (each.one.length + each.other.length + 1)), all = weights.reduce((sum, weight) => sum + weight, 0)
  return both.map((each, place) => ({...each, weight: (weights[place] ?? 0) / all}))
}

interface Dealt {
  /** by doubled rank sum; null of too many birds */
  readonly ways: Float64Array | null
  readonly factor: number
  readonly middle: number
}

const waysOf = (doubled: readonly number[], taken: number, n: number): Float64Array | null => (n > EXACT_UP_TO ? null : waysToDeal(doubled, taken))

/** Every way to deal inside every group, group after group; null where these are too many. */
function exactP(groups: readonly Dealt[], far: number, birds: number): number | null {
  if (birds > EXACT_UP_TO) return null
  let sums = new Map([[0, 1]])
  for (const {ways, factor, middle} of groups) {
    const own = [...(ways ?? [])].flatMap((count, sum) => (count > 0 ? [[sum * factor - middle, count] as const] : []))
    if (sums.size * own.length > MOST_SUMS) return null
    const next = new Map<number, number>()
    for (const [sum, count] of sums) for (const [more, times] of own) next.set(sum + more, (next.get(sum + more) ?? 0) + count * times)
    sums = next
  }
  let all = 0, extreme = 0
  for (const [sum, count] of sums) {
    all += count
    if (Math.abs(sum) >= far) extreme += count
  }
  return Math.min(1, extreme / all)
}
