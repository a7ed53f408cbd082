import {leastSquares, type Coefficient} from './least-squares.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'

/** A straight line through points. */
export type StraightLine =
  | {
      readonly kind: 'fitted'
      readonly n: number
      readonly intercept: Coefficient
      readonly slope: Coefficient
      /** what is left over, in the unit of y */
      readonly sd: number
      readonly freedom: number
      /** share of the squares of y that the line explains, 0 to 1; null when y does not vary */
      readonly rSquared: number | null
    }
  /** `few`: fewer than three points · `one-place`: x does not vary */
  | {readonly kind: 'few' | 'one-place'; readonly n: number}

/**
 * By how much does one figure rise when another rises by one?
 *
 *     y = intercept + slope·x        both by least squares
 *
 * @param x where, all finite
 * @param y what, one for each x
 * @param level above 0 and below 1; default 0.95
 * @returns intercept and slope with errors and intervals, or why there are none
 * @throws RangeError when x and y do not fit, one is not finite, or the level is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1. Held against NIST StRD.
 * @example straightLine([0, 1, 2, 3], [1, 3, 4, 8])  // slope 2.2, interval 0.3745 to 4.0255
 */
export function straightLine(x: readonly number[], y: readonly number[], level = 0.95): StraightLine {
  const fit = leastSquares(x.map(value => [1, value]), y, {level})
  if (fit.kind === 'few') return {kind: 'few', n: fit.n}
  const [intercept, slope] = fit.kind === 'fitted' ? fit.coefficients : []
  if (fit.kind === 'dependent' || !intercept || !slope) return {kind: 'one-place', n: fit.n}
  const total = (meanAndDeviation(y).sd ?? 0) ** 2 * (fit.n - 1)
  const rSquared = total > 0 ? Math.min(1, Math.max(0, 1 - fit.squares / total)) : null
  return {kind: 'fitted', n: fit.n, intercept, slope, sd: fit.sd, freedom: fit.freedom, rSquared}
}
