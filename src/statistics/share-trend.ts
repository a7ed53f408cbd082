import {chiSquareTail} from './chi-square-tail.ts'
import {EXACT_UP_TO, SMALLEST_EXPECTATION} from './fit-of-counts.ts'
import type {Count} from './share-difference.ts'

/** Whether a share rises or falls over ordered steps. */
export interface ShareTrend {
  /** `none`: every chick alike, every score alike or fewer than two steps, so that nothing can rise · `exact`: by permutation · `asymptotic`: normal curve */
  readonly how: 'none' | 'exact' | 'asymptotic'
  /** true when the exact test was called for but is too large or the scores are no whole numbers, so that the normal curve stands in */
  readonly rough: boolean
  readonly n: number
  /** change of the share per unit of the score, by least squares; null when there is none to fit */
  readonly slope: number | null
  /** standard normal when there is no trend; above 0 when the share rises; null as `slope` */
  readonly z: number | null
  /** two-sided, 0 to 1; 1 when `none` */
  readonly p: number
}

/** Sums that differ by less than this share are alike: rounding must not break a tie. */
const TIE = 1e-9
/** Sums that the exact test may add up: a tenth of a second or so. */
const MOST_SUMS = 100_000_000

/**
 * Cochran–Armitage: does the share of true-bred chicks rise from step to step?
 *
 *     T = Σ w_i (k_i − n_i·p)        Var T = p(1 − p)·( Σ n_i w_i² − (Σ n_i w_i)²/n )        z = T / √Var        p = Σk / Σn
 *
 * Exact where any expectation is below 5 or there are 60 chicks or fewer: of all ways to deal the same trait-bearers over the same chicks,
 * the share with a T as far from its mean or farther (the permutation test, both sides together). Without continuity correction.
 *
 * @param steps count of each step, in order; steps without a chick are passed over
 * @param scores place of each step on the scale, w; default 0, 1, 2 … The exact test needs whole numbers; they may have any common factor
 * @returns slope, z and P, and how it was worked out
 * @throws RangeError when a count is none, or scores are not as many as the steps and finite
 * @see Cochran 1954, Biometrics 10:417–451. Armitage 1955, Biometrics 11:375–386. The exact sum by folding step into step: own.
 * @example shareTrend([{k: 19, n: 516}, {k: 29, n: 589}, {k: 24, n: 293}])  // z 2.6819, p 0.0073
 */
export function shareTrend(steps: readonly Count[], scores: readonly number[] = steps.map((_, place) => place)): ShareTrend {
  if (scores.length !== steps.length) throw new RangeError(`there is a score for every step: ${steps.length}, not ${scores.length}`)
  const rows = steps.map(({k, n}, place) => {
    const score = scores[place] ?? NaN
    if (!Number.isInteger(n) || n < 0) throw new RangeError(`n is a count of 0 or more, not ${n}`)
    if (!Number.isInteger(k) || k < 0 || k > n) throw new RangeError(`k is a count from 0 to ${n}, not ${k}`)
    if (!Number.isFinite(score)) throw new RangeError(`a score is a finite number, not ${score}`)
    return {k, n, score}
  }).filter(({n}) => n > 0)
  const n = rows.reduce((sum, row) => sum + row.n, 0), k = rows.reduce((sum, row) => sum + row.k, 0)
  const mean = rows.reduce((sum, row) => sum + row.n * row.score, 0) / n
  const spread = rows.reduce((sum, row) => sum + row.n * (row.score - mean) ** 2, 0)
  const apart = new Set(rows.map(({score}) => score)).size > 1
  if (!apart || !(spread > 0)) return {how: 'none', rough: false, n, slope: null, z: null, p: 1}
  const share = k / n
  const trend = rows.reduce((sum, row) => sum + (row.score - mean) * (row.k - row.n * share), 0)
  const steepest = steepestSlope(rows.map(({score}) => score)), slope = Math.max(-steepest, Math.min(steepest, trend / spread))
  if (k === 0 || k === n) return {how: 'none', rough: false, n, slope: 0, z: null, p: 1}
  const z = trend / Math.sqrt(share * (1 - share) * spread)
  const small = n <= EXACT_UP_TO || rows.some(row => row.n * Math.min(share, 1 - share) < SMALLEST_EXPECTATION)
  const exact = small ? byPermutation(rows, k, n) : null
  return exact === null
    ? {how: 'asymptotic', rough: small, n, slope, z, p: chiSquareTail(z ** 2, 1)}
    : {how: 'exact', rough: false, n, slope, z, p: exact}
}

/**
 * What is the most that a share can change per unit of the score? Of all pairs of steps from 0 to 1 between the two nearest: a fitted slope is a mean of such pairs, and passes it by
 * rounding alone.
 *
 *     1 / least distance between two scores that differ
 *
 * @param scores finite, two of them different or more
 * @returns per unit of the score; Infinity where no two differ
 * @see the slope of least squares as a weighted mean of the slopes of all pairs; own
 * @example steepestSlope([0, 1, 3])  // 1
 */
export function steepestSlope(scores: readonly number[]): number {
  const order = [...new Set(scores)].sort((a, b) => a - b)
  return 1 / Math.min(...order.slice(1).map((score, place) => score - (order[place] ?? 0)))
}

/**
 * Chance that Σ w_i·x_i lies as far from its mean as seen or farther, x the ways to draw k of n without putting back; null when there are too many sums or a score is not whole.
 * ways[x][t] grows step by step as Π C(n_i, x_i) p^x_i (1 − p)^(n_i − x_i): with one p for all, the powers are the same for every way and only keep the numbers within reach.
 */
function byPermutation(rows: readonly {readonly k: number; readonly n: number; readonly score: number}[], right: number, n: number): number | null {
  // whichever are fewer are dealt, the right or the wrong: one is as far from its mean as the other
  const least = Math.min(...rows.map(({score}) => score)), k = Math.min(right, n - right)
  const whole = rows.map(row => ({n: row.n, k: k === right ? row.k : row.n - row.k, score: row.score - least}))
  if (!whole.every(({score}) => Number.isInteger(score))) return null
  const top = k * Math.max(...whole.map(({score}) => score))
  if (whole.reduce((sum, row) => sum + (k + 1) * (Math.min(row.n, k) + 1) * (top + 1), 0) > MOST_SUMS) return null
  let ways = Array.from({length: k + 1}, () => new Float64Array(top + 1))
  ways[0]?.set([1])
  for (const row of whole) {
    const next = Array.from({length: k + 1}, () => new Float64Array(top + 1))
    const choose = binomialRow(row.n, k / n)
    ways.forEach((sums, drawn) => {
      for (let x = 0; x <= Math.min(row.n, k - drawn); x++) {
        const into = next[drawn + x], weight = choose[x] ?? 0, step = row.score * x
        if (into) for (let sum = 0; sum + step <= top; sum++) if (sums[sum]) into[sum + step] = (into[sum + step] ?? 0) + weight * (sums[sum] ?? 0)
      }
    })
    ways = next
  }
  const seen = whole.reduce((sum, row) => sum + row.score * row.k, 0)
  const mean = whole.reduce((sum, row) => sum + row.score * row.n, 0) * (k / n)
  const far = Math.abs(seen - mean) * (1 - TIE) - TIE
  let all = 0, extreme = 0
  ways[k]?.forEach((weight, sum) => {
    all += weight
    if (Math.abs(sum - mean) >= far) extreme += weight
  })
  return all > 0 && Number.isFinite(all) ? Math.min(1, extreme / all) : null
}

/** Chances of x = 0 … n by the binomial law. */
function binomialRow(n: number, share: number): number[] {
  let log = n * Math.log1p(-share)
  const chances = [Math.exp(log)]
  for (let x = 1; x <= n; x++) {
    log += Math.log((n - x + 1) / x) + Math.log(share) - Math.log1p(-share)
    chances.push(Math.exp(log))
  }
  return chances
}
