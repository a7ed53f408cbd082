/** What solving a least-squares problem leaves behind. */
export type LeastSquaresSolution =
  | {
      readonly kind: 'solved'
      readonly coefficients: readonly number[]
      /** (XᵀX)⁻¹, row by row */
      readonly inverse: readonly (readonly number[])[]
      /** Σ of the squared residues, 0 or more */
      readonly squares: number
      readonly rank: number
    }
  /** `dependent`: the columns named are, but for rounding, a mixture of those before them (a column of zeros too) */
  | {readonly kind: 'dependent'; readonly columns: readonly number[]}

/** A column is dependent when less than this part of its length is left after those before it. */
const LEAST_LEFT = 1e-11

/**
 * Which coefficients bring a mixture of columns nearest to the values?
 *
 *     min Σ (y − X·b)²        X = Q·R by Householder's reflections, R·b = Qᵀy
 *
 * Columns are brought to length 1 first, and XᵀX is never formed: squaring would lose half of the digits.
 *
 * @param rows of X, all as long as the first; as many as values
 * @param values y
 * @returns coefficients, (XᵀX)⁻¹ and the squares left, or the dependent columns; a problem of fewer rows than columns has dependent ones
 * @throws RangeError when rows and values do not fit or one is not finite
 * @see Householder 1958, J. ACM 5:339–342. Golub & Van Loan, Matrix Computations, 5.3. Held against NIST StRD.
 * @example solveLeastSquares([[1, 0], [1, 1], [1, 2]], [1, 3, 5])  // coefficients 1, 2
 */
export function solveLeastSquares(rows: readonly (readonly number[])[], values: readonly number[]): LeastSquaresSolution {
  const count = rows[0]?.length ?? 0, n = rows.length
  if (values.length !== n || rows.some(row => row.length !== count)) throw new RangeError('there is a row for every value, and all rows are of one length')
  for (const entry of [...rows.flat(), ...values]) if (!Number.isFinite(entry)) throw new RangeError(`an entry is a finite number, not ${entry}`)
  const lengths = Array.from({length: count}, (_, place) => Math.hypot(...rows.map(row => row[place] ?? 0)))
  // column by column, the values last
  const columns = lengths.map((length, place) => Float64Array.from(rows, row => (length > 0 ? (row[place] ?? 0) / length : 0)))
  const right = Float64Array.from(values)
  const dependent: number[] = []
  columns.forEach((column, place) => {
    const step = place - dependent.length
    const left = Math.hypot(...column.subarray(Math.min(step, n)))
    if (!(left > LEAST_LEFT)) dependent.push(place)
    else reflect(column, step, left, [...columns.slice(place + 1), right])
  })
  if (dependent.length > 0) return {kind: 'dependent', columns: dependent}
  const scaled = backwards(columns, right)
  const inverse = inverted(columns)
  return {
    kind: 'solved',
    coefficients: scaled.map((value, place) => value / (lengths[place] ?? 1)),
    inverse: inverse.map((row, i) => row.map((value, j) => value / ((lengths[i] ?? 1) * (lengths[j] ?? 1)))),
    squares: right.subarray(count).reduce((sum, value) => sum + value ** 2, 0),
    rank: count,
  }
}

/** Turns what a column has left, from `step` on, onto its first place, and the others with it. */
function reflect(column: Float64Array, step: number, length: number, others: readonly Float64Array[]): void {
  const first = column[step] ?? 0, turned = first > 0 ? -length : length
  const mirror = column.slice(step)
  mirror[0] = first - turned
  const square = mirror.reduce((sum, value) => sum + value ** 2, 0)
  for (const other of others) {
    let along = 0
    mirror.forEach((value, place) => { along += value * (other[step + place] ?? 0) })
    const twice = (2 * along) / square
    mirror.forEach((value, place) => { other[step + place] = (other[step + place] ?? 0) - twice * value })
  }
  column.fill(0, step)
  column[step] = turned
}

/** R·b = right, from the last row up; the columns hold R. */
function backwards(columns: readonly Float64Array[], right: ArrayLike<number>): number[] {
  const solution = columns.map(() => 0)
  for (let row = columns.length - 1; row >= 0; row--) {
    let left = right[row] ?? 0
    for (let column = row + 1; column < columns.length; column++) left -= (columns[column]?.[row] ?? 0) * (solution[column] ?? 0)
    solution[row] = left / (columns[row]?.[row] ?? 1)
  }
  return solution
}

/** R⁻¹·R⁻ᵀ. */
function inverted(columns: readonly Float64Array[]): number[][] {
  const ofUnit = columns.map((_, place) => backwards(columns, columns.map((_, other) => (other === place ? 1 : 0))))
  return columns.map((_, i) => columns.map((_, j) => ofUnit.reduce((sum, unit) => sum + (unit[i] ?? 0) * (unit[j] ?? 0), 0)))
}
