import type {Interval} from './interval.ts'
import {leastSquares} from './least-squares.ts'

/** What was chosen in one step and what came of it in the next. */
export interface SelectionStep {
  /** S, in the unit of the trait */
  readonly differential: number
  /** R: next step's mean less this one's, contemporaries or against a control, in the same unit */
  readonly response: number
}

/** Heritability as selection has realised it. */
export type RealisedHeritability =
  | {
      readonly kind: 'estimated'
      readonly steps: number
      /** may come out below 0 or above 1 */
      readonly value: number
      /** null with a single step, which has no error to tell */
      readonly error: number | null
      /** between 0 and 1, where alone heritability can lie; null as `error` */
      readonly interval: Interval | null
    }
  /** `no-selection`: no step, or nothing was chosen in any */
  | {readonly kind: 'no-selection'; readonly steps: number}

/**
 * How much of what we chose did we get?
 *
 *     h² = Σ ΣS·ΣR / Σ (ΣS)²        ΣS and ΣR cumulated from the first step; the line of ΣR on ΣS through 0
 *
 * Drift makes cumulated responses hang together, so that the error comes out too small; with fewer than five steps read the interval as the least that is open.
 *
 * @param steps in order, all finite
 * @param level above 0 and below 1; default 0.95
 * @returns h² with interval, or why there is none
 * @throws RangeError when a figure is not finite or the level is out of its range
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11; the error: Hill 1972, Biometrics 28:747–765 (both from memory)
 * @example realisedHeritability([{differential: 200, response: 80}, {differential: 150, response: 55}])  // value 0.3892
 */
export function realisedHeritability(steps: readonly SelectionStep[], level = 0.95): RealisedHeritability {
  let differential = 0, response = 0
  const points = steps.map(step => {
    differential += step.differential
    response += step.response
    return {differential, response}
  })
  const {coefficients: [line] = []} = fitThroughZero(points, level)
  if (line) {
    const share = (value: number) => Math.min(1, Math.max(0, value))
    return {kind: 'estimated', steps: steps.length, value: line.value, error: line.error, interval: {low: share(line.interval.low), high: share(line.interval.high)}}
  }
  const [only] = points
  if (points.length === 1 && only && only.differential !== 0) return {kind: 'estimated', steps: 1, value: only.response / only.differential, error: null, interval: null}
  return {kind: 'no-selection', steps: steps.length}
}

function fitThroughZero(points: readonly SelectionStep[], level: number) {
  const fit = leastSquares(points.map(({differential}) => [differential]), points.map(({response}) => response), {level})
  return fit.kind === 'fitted' ? fit : {coefficients: []}
}
