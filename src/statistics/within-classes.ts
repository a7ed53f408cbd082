import {leastSquares, type Regression} from './least-squares.ts'

/** A bird in its class. */
export interface ClassedRow {
  /** name of the class: hatch, hatch × sex, season … */
  readonly group: string
  /** the columns' values, all finite; no column of 1s, since every class has a level of its own */
  readonly x: readonly number[]
  readonly y: number
}

/**
 * How much does a value change with each column inside hatches, so that a good hatch cannot pass for a good line?
 *
 *     y − ȳ_class = Σ b_j (x_j − x̄_j,class) + rest        ν = n − columns − classes
 *
 * Taking off the class means is the same as a level for every class (analysis of covariance), without the columns. A class of one bird says nothing and costs nothing.
 *
 * @param rows birds, at least one column each, all of one length
 * @param level above 0 and below 1; default 0.95
 * @returns as `leastSquares`; `dependent` names columns that do not vary inside any class
 * @throws RangeError when rows do not fit, one is not finite, or the level is out of its range
 * @see Snedecor & Cochran, Statistical Methods, analysis of covariance (from memory, no page)
 * @example withinClasses([{group: 'a', x: [0], y: 1}, {group: 'a', x: [1], y: 3}, {group: 'b', x: [0], y: 11}, {group: 'b', x: [1], y: 14}])  // coefficient 2.5
 */
export function withinClasses(rows: readonly ClassedRow[], level = 0.95): Regression {
  const groups = new Map<string, ClassedRow[]>()
  for (const row of rows) {
    const members = groups.get(row.group)
    if (members) members.push(row)
    else groups.set(row.group, [row])
  }
  const centred = [...groups.values()].flatMap(members => {
    const mean = (of: (row: ClassedRow) => number) => members.reduce((sum, row) => sum + of(row), 0) / members.length
    const y = mean(row => row.y), x = (members[0]?.x ?? []).map((_, place) => mean(row => row.x[place] ?? NaN))
    return members.map(row => ({y: settled(row.y - y, row.y), x: row.x.map((value, place) => settled(value - (x[place] ?? NaN), value))}))
  })
  return leastSquares(centred.map(({x}) => x), centred.map(({y}) => y), {level, classes: groups.size})
}

/** Rounding leaves a hair where a figure is the same throughout a class. */
const settled = (left: number, value: number): number => (Math.abs(left) <= 1e-13 * Math.abs(value) ? 0 : left)
