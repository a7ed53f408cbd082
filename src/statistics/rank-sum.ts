import {chiSquareTail} from './chi-square-tail.ts'

/** Up to so many birds in both groups together every way to deal their ranks is counted. */
const EXACT_UP_TO = 60

/** Whether one group's grades lie higher than another's. */
export type RankSum =
  | {
      readonly kind: 'compared'
      /** `exact`: every way to deal the same grades · `asymptotic`: normal curve, corrected for ties and for continuity */
      readonly how: 'exact' | 'asymptotic'
      /** pairs of one bird of each group in which the first is the higher, ties counting half; 0 to n₁·n₂ */
      readonly u: number
      /** the same as a share: how often a bird of the first group beats one of the second; ½ when neither does */
      readonly superiority: number
      /** two-sided, 0 to 1 */
      readonly p: number
    }
  /** `few`: a group without a bird · `all-alike`: one grade for all */
  | {readonly kind: 'few' | 'all-alike'}

/**
 * Mann–Whitney, or Wilcoxon's rank sum: do the grades of one step lie higher than those of another? Asks for an order only, not for a unit.
 *
 *     U = R − n₁(n₁ + 1)/2        R = sum of the mid-ranks of the first group among all
 *     exact: share of all C(n, n₁) ways to deal the ranks with U as far from n₁n₂/2 or farther
 *     else z = (|U − n₁n₂/2| − ½)/σ        σ² = n₁n₂/12 · ( n + 1 − Σ(t³ − t)/(n(n − 1)) )        t birds of one grade
 *
 * @param one grades of the first group: scores, or the places of ordered states; all finite
 * @param other grades of the second
 * @returns U, how often the first beats the second, and P
 * @throws RangeError when a grade is not finite
 * @see Wilcoxon 1945, Biometrics Bull. 1:80–83. Mann & Whitney 1947, Ann. Math. Stat. 18:50–60. Ties: Lehmann 1975, Nonparametrics (from memory).
 * @example rankSum([7, 8, 8, 9], [5, 6, 7, 7, 8])  // u 17, superiority 0.85, p 0.1111
 */
export function rankSum(one: readonly number[], other: readonly number[]): RankSum {
  for (const grade of [...one, ...other]) if (!Number.isFinite(grade)) throw new RangeError(`a grade is a finite number, not ${grade}`)
  if (one.length === 0 || other.length === 0) return {kind: 'few'}
  const {doubled, ties} = midRanks([...one, ...other])
  const n = doubled.length, pairs = one.length * other.length
  if (ties.some(count => count === n)) return {kind: 'all-alike'}
  const seen = doubled.slice(0, one.length).reduce((sum, rank) => sum + rank, 0)
  const u = (seen - one.length * (one.length + 1)) / 2
  const shape = {kind: 'compared', u, superiority: u / pairs} as const
  if (n <= EXACT_UP_TO) {
    const ways = waysToDeal(doubled, one.length), mean = one.length * (n + 1), far = Math.abs(seen - mean)
    let all = 0, extreme = 0
    ways.forEach((count, sum) => {
      all += count
      if (Math.abs(sum - mean) >= far) extreme += count
    })
    return {...shape, how: 'exact', p: Math.min(1, extreme / all)}
  }
  const tied = ties.reduce((sum, count) => sum + (count ** 3 - count), 0) / (n * (n - 1))
  const deviation = Math.sqrt((pairs / 12) * (n + 1 - tied))
  const z = Math.max(0, Math.abs(u - pairs / 2) - 0.5) / deviation
  return {...shape, how: 'asymptotic', p: chiSquareTail(z ** 2, 1)}
}

/**
 * Twice the mid-rank of each value, so that it is whole, and how many share each place.
 *
 * @param values grades, all finite
 * @returns `doubled` in the order given, 2 to 2n; `ties` the sizes of the groups of equal values
 * @see Lehmann 1975, as above
 * @example midRanks([5, 7, 7]).doubled  // 2, 5, 5
 */
export function midRanks(values: readonly number[]): {readonly doubled: readonly number[]; readonly ties: readonly number[]} {
  const order = values.map((value, place) => ({value, place})).sort((a, b) => a.value - b.value)
  const doubled = values.map(() => 0), ties: number[] = []
  for (let first = 0; first < order.length;) {
    let next = first + 1
    while (next < order.length && order[next]?.value === order[first]?.value) next += 1
    for (const {place} of order.slice(first, next)) doubled[place] = first + next + 1
    ties.push(next - first)
    first = next
  }
  return {doubled, ties}
}

/**
 * In how many ways can so many of these whole numbers be taken, by their sum?
 *
 * @param ranks whole, 0 or more
 * @param taken how many are taken; whole, 0 to their number
 * @returns ways for each sum from 0 to the sum of all
 * @see the recursion of Mann & Whitney 1947, as above, for any numbers
 * @example waysToDeal([1, 2, 3], 2)  // 0, 0, 0, 1, 1, 1, 0
 */
export function waysToDeal(ranks: readonly number[], taken: number): Float64Array {
  const top = ranks.reduce((sum, rank) => sum + rank, 0)
  const ways = Array.from({length: taken + 1}, () => new Float64Array(top + 1))
  ways[0]?.set([1])
  let reached = 0
  for (const rank of ranks) {
    reached += rank
    for (let count = taken; count >= 1; count--) {
      const into = ways[count], from = ways[count - 1]
      if (into && from) for (let sum = reached; sum >= rank; sum--) into[sum] = (into[sum] ?? 0) + (from[sum - rank] ?? 0)
    }
  }
  return ways[taken] ?? new Float64Array(top + 1)
}
