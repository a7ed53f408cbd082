import {chiSquareTail} from './chi-square-tail.ts'
import {midRanks} from './rank-sum.ts'

/** Up to so many seasons without ties every order is counted. */
const EXACT_UP_TO = 40

/** Whether a figure rises or falls from season to season. */
export type MannKendall =
  | {
      readonly kind: 'tested'
      /** `exact`: all orders counted, without ties only · `asymptotic`: normal curve, corrected for ties and for continuity */
      readonly how: 'exact' | 'asymptotic'
      readonly n: number
      /** pairs that rise less pairs that fall; whole */
      readonly s: number
      /** of S when there is no trend */
      readonly variance: number
      /** Kendall's τ_b, −1 to 1 */
      readonly tau: number
      /** two-sided, 0 to 1 */
      readonly p: number
      /** the smallest P that so many seasons can give: ⅓ with three, so that three can never show a trend */
      readonly smallestP: number
    }
  /** `few`: fewer than three seasons · `all-alike`: the same figure every season */
  | {readonly kind: 'few' | 'all-alike'; readonly n: number}

/**
 * Mann–Kendall: does a figure go one way over the seasons, straight or bent?
 *
 *     S = Σ_{i<j} sign(x_j − x_i)        Var S = ( n(n − 1)(2n + 5) − Σ t(t − 1)(2t + 5) )/18        z = (S ∓ 1)/√Var        τ_b = S/√( N·(N − Σ t(t − 1)/2) )
 *
 * t the sizes of groups of equal figures, N = n(n − 1)/2. Without ties and up to 40 seasons P is exact: the share of all n! orders with |S| as great or greater.
 *
 * @param values one figure a season, in the order of time; all finite
 * @returns S, τ and P, or why there is none
 * @throws RangeError when a value is not finite
 * @see Mann 1945, Econometrica 13:245–259. Kendall 1975, Rank Correlation Methods. Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, ch. 16.
 * @example mannKendall([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15])  // s 22, variance 155.33, p 0.0920
 */
export function mannKendall(values: readonly number[]): MannKendall {
  for (const value of values) if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
  const n = values.length
  if (n < 3) return {kind: 'few', n}
  const {ties} = midRanks(values)
  if (ties.length === 1) return {kind: 'all-alike', n}
  let s = 0
  values.forEach((later, place) => {
    for (const earlier of values.slice(0, place)) s += Math.sign(later - earlier)
  })
  const tied = (of: (t: number) => number) => ties.reduce((sum, t) => sum + of(t), 0)
  const pairs = (n * (n - 1)) / 2
  const variance = (n * (n - 1) * (2 * n + 5) - tied(t => t * (t - 1) * (2 * t + 5))) / 18
  const tau = Math.max(-1, Math.min(1, s / Math.sqrt(pairs * (pairs - tied(t => (t * (t - 1)) / 2)))))
  const byCurve = (sum: number) => chiSquareTail(Math.max(0, Math.abs(sum) - 1) ** 2 / variance, 1)
  const shape = {kind: 'tested', n, s, variance, tau} as const
  if (ties.length < n || n > EXACT_UP_TO) return {...shape, how: 'asymptotic', p: byCurve(s), smallestP: byCurve(pairs)}
  const orders = ordersByFalls(n), all = orders.reduce((sum, count) => sum + count, 0)
  const exact = (sum: number) => orders.reduce((total, count, falls) => (Math.abs(pairs - 2 * falls) >= Math.abs(sum) ? total + count : total), 0) / all
  return {...shape, how: 'exact', p: Math.min(1, exact(s)), smallestP: Math.min(1, exact(pairs))}
}

/** Share of the orders of n different numbers by how many of their pairs fall. */
function ordersByFalls(n: number): number[] {
  let orders = [1]
  for (let length = 2; length <= n; length++) {
    // the newest number is put before none to all of the others; in shares, so that n! does not overflow
    const next = Array<number>(orders.length + length - 1).fill(0)
    orders.forEach((share, falls) => {
      for (let more = 0; more < length; more++) next[falls + more] = (next[falls + more] ?? 0) + share / length
    })
    orders = next
  }
  return orders
}
