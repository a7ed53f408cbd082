import {solveLeastSquares} from './householder.ts'
import {leastSquares, type Regression} from './least-squares.ts'
import {studentQuantile, studentTail} from './student-t.ts'

/** A bird in its class. */
export interface ClassedRow {
  /** name of the class: hatch, hatch × sex, season … */
  readonly group: string
  /** the columns' values, all finite; no column of 1s, since every class has a level of its own */
  readonly x: readonly number[]
  readonly y: number
  /** what is of one pair, in whichever class: pairs are heavy or light as a whole, and tell of a column that goes with the pair once each. All rows name one, or none does */
  readonly family?: string
}

/**
 * How much does a value change with each column inside hatches, so that a good hatch cannot pass for a good line?
 *
 *     y − ȳ_class = Σ b_j (x_j − x̄_j,class) + rest        ν = n − columns − classes
 *
 * Where families are named the error is the greater of that and of one by family sums:
 *
 *     s²_F = Σ (Σ rest over the family's rows)² / rows of it / ν_F        ν_F = F − Σ eᵀHe, e the family's rows scaled to 1, H of classes and columns        ν the lesser of the two
 *
 * ν_F is what the sums have left: a column that goes with the family costs one, and two classes of the same families cost no more than one. Right where families have about as many rows each.
 *
 * Taking off the class means is the same as a level for every class (analysis of covariance), without the columns. A class of one bird says nothing and costs nothing.
 *
 * @param rows birds, at least one column each, all of one length
 * @param level above 0 and below 1; default 0.95
 * @returns as `leastSquares`; `dependent` names columns that do not vary inside any class; `few` where less than one degree of freedom is left, of families too
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
    return members.map(row => ({row, among: members.length, y: settled(row.y - y, row.y), x: row.x.map((value, place) => settled(value - (x[place] ?? NaN), value))}))
  })
  const fit = leastSquares(centred.map(({x}) => x), centred.map(({y}) => y), {level, classes: groups.size})
  return fit.kind === 'fitted' && rows.every(({family}) => family !== undefined) ? byFamilies(fit, centred, level) : fit
}

interface CentredRow {
  readonly row: ClassedRow
  /** rows of its class */
  readonly among: number
  readonly x: readonly number[]
  readonly y: number
}

function byFamilies(fit: Regression & {readonly kind: 'fitted'}, centred: readonly CentredRow[], level: number): Regression {
  const solution = solveLeastSquares(centred.map(({x}) => x), centred.map(({y}) => y)), families = new Map<string, CentredRow[]>()
  if (solution.kind === 'dependent') return fit
  for (const each of centred) {
    const own = families.get(each.row.family ?? '')
    if (own) own.push(each)
    else families.set(each.row.family ?? '', [each])
  }
  let squares = 0, left = 0
  for (const own of families.values()) {
    const inClass = new Map<string, {count: number; among: number}>(), x = fit.coefficients.map((_, place) => own.reduce((sum, each) => sum + (each.x[place] ?? 0), 0))
    for (const {row: {group}, among} of own) inClass.set(group, {count: (inClass.get(group)?.count ?? 0) + 1, among})
    const rest = own.reduce((sum, {y}) => sum + y, 0) - x.reduce((sum, value, place) => sum + value * (fit.coefficients[place]?.value ?? 0), 0)
    const byClass = [...inClass.values()].reduce((sum, {count, among}) => sum + count ** 2 / among, 0)
    const byColumns = x.reduce((sum, value, i) => sum + value * x.reduce((part, other, j) => part + other * (solution.inverse[i]?.[j] ?? 0), 0), 0)
    squares += rest ** 2 / own.length
    left += 1 - (byClass + byColumns) / own.length
  }
  if (left < 1 - 1e-9) return {kind: 'few', n: fit.n}
  const freedom = Math.min(fit.freedom, left), times = fit.sd > 0 ? Math.max(1, Math.sqrt(squares / left) / fit.sd) : 1, t = studentQuantile(level, freedom)
  return {
    ...fit, freedom,
    coefficients: fit.coefficients.map(({value, error: alone, p}) => {
      const error = alone * times
      return {value, error, interval: {low: value - t * error, high: value + t * error}, p: p === null ? null : studentTail(value / error, freedom)}
    }),
  }
}

/** Rounding leaves a hair where a figure is the same throughout a class. */
const settled = (left: number, value: number): number => (Math.abs(left) <= 1e-13 * Math.abs(value) ? 0 : left)
