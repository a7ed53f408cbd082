import {FEWEST_FAMILIES, varianceByFamilies, type Resampling} from './family-bootstrap.ts'
import type {Interval} from './interval.ts'
import type {Count} from './share-difference.ts'
import {steepestSlope} from './share-trend.ts'
import {studentQuantile, studentTail} from './student-t.ts'

/** Rise or fall of a share over ordered steps, when families were drawn and not chicks. */
export type FamilyTrend =
  | {
      /** `families`: said of birds bred like these */
      readonly kind: 'families'
      /** change of the share per unit of the score */
      readonly slope: number
      readonly interval: Interval
      /** two-sided, 0 to 1 */
      readonly p: number
      readonly families: number
      readonly steps: number
    }
  | {
      /** `few-families`: a step has one family alone, or all together have fewer than five over one a step · `no-trend`: fewer than two steps apart, or no family differs from any other */
      readonly kind: 'few-families' | 'no-trend'
      readonly families: number
      readonly steps: number
    }

/**
 * Does the share rise from step to step by more than the families' own differences explain?
 *
 *     slope = Σ N_i (w_i − w̄) p_i / Σ N_i (w_i − w̄)²        Var = Σ ( N_i (w_i − w̄) / Σ N(w − w̄)² )² · v_i        ν = Σ (m_i − 1)
 *
 * with v_i the variance of a step's share by drawing its m_i families anew (never less than p(1 − p)/N at the pooled p), and Student's t of ν.
 * No limit is steeper than from a share of 0 to one of 1.
 *
 * @param steps the families of each step, in order; steps without a chick are passed over
 * @param resampling as `familyShare`; each step is drawn with a seed one higher
 * @param scores place of each step on the scale, w; default 0, 1, 2 …
 * @returns slope, interval and P, or why there is none
 * @throws RangeError as `familyShare`, or when scores are not as many as the steps and finite
 * @see Davison & Hinkley 1997, Bootstrap Methods and their Application, 3.8 (from memory); the weights are those of Cochran 1954, Biometrics 10:417–451
 * @example familyTrend([[{k: 3, n: 10}], [{k: 6, n: 10}]], {seed: 1}).kind  // 'few-families'
 */
export function familyTrend(steps: readonly (readonly Count[])[], resampling: Resampling, scores: readonly number[] = steps.map((_, place) => place)): FamilyTrend {
  if (scores.length !== steps.length) throw new RangeError(`there is a score for every step: ${steps.length}, not ${scores.length}`)
  for (const score of scores) if (!Number.isFinite(score)) throw new RangeError(`a score is a finite number, not ${score}`)
  const rows = steps.map((families, place) => {
    const own = families.filter(({n}) => n > 0)
    const n = own.reduce((sum, family) => sum + family.n, 0), k = own.reduce((sum, family) => sum + family.k, 0)
    return {families: own, n, k, score: scores[place] ?? 0, seed: (resampling.seed + place) % 0x100000000}
  }).filter(({n}) => n > 0)
  const families = rows.reduce((sum, row) => sum + row.families.length, 0)
  const freedom = families - rows.length
  const shape = {families, steps: rows.length}
  const n = rows.reduce((sum, row) => sum + row.n, 0)
  const mean = rows.reduce((sum, row) => sum + row.n * row.score, 0) / n
  const spread = rows.reduce((sum, row) => sum + row.n * (row.score - mean) ** 2, 0)
  if (new Set(rows.map(({score}) => score)).size < 2 || !(spread > 0)) return {kind: 'no-trend', ...shape}
  if (freedom < FEWEST_FAMILIES || rows.some(row => row.families.length < 2)) return {kind: 'few-families', ...shape}
  const pooled = rows.reduce((sum, row) => sum + row.k, 0) / n
  let slope = 0, variance = 0, steepest = 0
  for (const row of rows) {
    const weight = (row.n * (row.score - mean)) / spread
    slope += weight * (row.k / row.n)
    steepest += Math.max(0, weight)
    variance += weight ** 2 * Math.max((pooled * (1 - pooled)) / row.n, varianceByFamilies(row.families, {...resampling, seed: row.seed}))
  }
  if (!(variance > 0)) return {kind: 'no-trend', ...shape}
  const most = steepestSlope(rows.map(({score}) => score)), within = (change: number): number => Math.max(-most, Math.min(most, change))
  const half = studentQuantile(resampling.level ?? 0.95, freedom) * Math.sqrt(variance)
  return {kind: 'families', slope: within(slope), interval: {low: within(Math.max(-steepest, slope - half)), high: within(Math.min(steepest, slope + half))}, p: studentTail(slope / Math.sqrt(variance), freedom), ...shape}
}
