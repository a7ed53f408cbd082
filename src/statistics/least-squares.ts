import {solveLeastSquares} from './householder.ts'
import type {Interval} from './interval.ts'
import {studentQuantile, studentTail} from './student-t.ts'

/** One coefficient of a regression. */
export interface Coefficient {
  /** change of the value per unit of its column */
  readonly value: number
  /** standard error, 0 or more */
  readonly error: number
  readonly interval: Interval
  /** two-sided, 0 to 1; null when nothing is left over, so that there is no error to hold it against */
  readonly p: number | null
}

/** A regression by least squares. */
export type Regression =
  | {
      readonly kind: 'fitted'
      readonly n: number
      /** in the order of the columns */
      readonly coefficients: readonly Coefficient[]
      /** what is left over, in the unit of the values; 0 or more */
      readonly sd: number
      /** Σ of the squared residues */
      readonly squares: number
      /** degrees of freedom of what is left, 1 or more */
      readonly freedom: number
    }
  /** `few`: no degree of freedom is left · `dependent`: the columns named say nothing that those before them (or the classes) do not */
  | {readonly kind: 'few'; readonly n: number}
  | {readonly kind: 'dependent'; readonly n: number; readonly columns: readonly number[]}

/**
 * Least squares with several columns: how much does a value change with each, the others held?
 *
 *     b = (XᵀX)⁻¹Xᵀy        s² = Σ(y − Xb)²/ν        error of b_j = s·√((XᵀX)⁻¹)_jj        ν = n − columns − classes taken off
 *
 * @param rows the columns' values for each bird, all finite; put 1 in the first column for a level
 * @param values y, one for each row
 * @param options `level` above 0 and below 1, default 0.95; `classes` already taken off the rows and values, default 0 (see `withinClasses`)
 * @returns coefficients with errors and intervals, or why there are none
 * @throws RangeError when rows and values do not fit, one is not finite, or the level is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 4.4.3.1. Held against NIST StRD.
 * @example leastSquares([[1, 0], [1, 1], [1, 2], [1, 3]], [1, 3, 4, 8])  // coefficients 0.7 and 2.2, sd 0.9487
 */
export function leastSquares(rows: readonly (readonly number[])[], values: readonly number[], options: {readonly level?: number; readonly classes?: number} = {}): Regression {
  const {level = 0.95, classes = 0} = options
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const n = rows.length, solution = solveLeastSquares(rows, values)
  const freedom = n - (rows[0]?.length ?? 0) - classes
  if (freedom < 1) return {kind: 'few', n}
  if (solution.kind === 'dependent') return {kind: 'dependent', n, columns: solution.columns}
  // what rounding leaves of a perfect fit is nothing
  const size = values.reduce((sum, value) => sum + value ** 2, 0), squares = solution.squares <= 1e-26 * size ? 0 : solution.squares
  const sd = Math.sqrt(squares / freedom), t = studentQuantile(level, freedom)
  return {
    kind: 'fitted',
    n,
    sd,
    squares,
    freedom,
    coefficients: solution.coefficients.map((value, place) => {
      const error = sd * Math.sqrt(Math.max(0, solution.inverse[place]?.[place] ?? 0)), ratio = value / error
      return {value, error, interval: {low: value - t * error, high: value + t * error}, p: Number.isFinite(ratio ** 2) ? studentTail(ratio, freedom) : null}
    }),
  }
}
