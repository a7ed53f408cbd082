import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {solveLeastSquares} from '../../src/statistics/householder.ts'
import {expectClose} from '../expect-close.ts'
import {LONGLEY, LONGLEY_CERTIFIED} from './longley.ts'

function solved(...args: Parameters<typeof solveLeastSquares>) {
  const got = solveLeastSquares(...args)
  if (got.kind !== 'solved') throw new Error(`dependent ${got.columns.join()}`)
  return got
}
const problem = fc.integer({min: 1, max: 4}).chain(width => fc.array(
  fc.tuple(fc.array(fc.integer({min: -9, max: 9}), {minLength: width, maxLength: width}), fc.integer({min: -99, max: 99})), {minLength: width + 1, maxLength: 12},
))

/** Gauss elimination on XᵀX, the schoolbook way. */
function normalEquations(rows: readonly (readonly number[])[], values: readonly number[]): number[] {
  const width = rows[0]?.length ?? 0
  const table = Array.from({length: width}, (_, i) => [
    ...Array.from({length: width}, (_unused, j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
    rows.reduce((sum, row, place) => sum + (row[i] ?? 0) * (values[place] ?? 0), 0),
  ])
  for (let step = 0; step < width; step++) {
    const best = table.slice(step).reduce((most, row, place) => (Math.abs(row[step] ?? 0) > Math.abs(table[most]?.[step] ?? 0) ? step + place : most), step)
    const [from, to] = [table[step] ?? [], table[best] ?? []]
    table[step] = to
    table[best] = from
    table.forEach((row, place) => {
      if (place !== step) table[place] = row.map((value, column) => value - ((row[step] ?? 0) / (to[step] ?? 1)) * (to[column] ?? 0))
    })
  }
  return table.map((row, place) => (row[width] ?? 0) / (row[place] ?? 1))
}

describe('solveLeastSquares(rows, values)', () => {
  it('has the certified coefficients of Longley’s nearly dependent columns', () => {
    const {coefficients} = solved(LONGLEY.map(row => [1, ...row.slice(1)]), LONGLEY.map(([y]) => y ?? NaN))
    coefficients.forEach((value, place) => {
      const certified = LONGLEY_CERTIFIED[place]?.[0] ?? NaN
      expectClose(value, certified, 1e-10 * Math.abs(certified))
    })
  })

  it('agrees with the normal equations where these are sound, and leaves nothing along any column', () => {
    fc.assert(fc.property(problem, lines => {
      const rows = lines.map(([row]) => row), values = lines.map(([, value]) => value)
      const got = solveLeastSquares(rows, values)
      if (got.kind === 'dependent') return
      normalEquations(rows, values).forEach((value, place) => expectClose(got.coefficients[place] ?? NaN, value, 1e-6 * Math.max(1, Math.abs(value)), {rows, values}))
      const left = rows.map((row, place) => (values[place] ?? 0) - row.reduce((sum, value, column) => sum + value * (got.coefficients[column] ?? 0), 0))
      rows[0]?.forEach((_, column) => expectClose(rows.reduce((sum, row, place) => sum + (row[column] ?? 0) * (left[place] ?? 0), 0), 0, 1e-7))
      expectClose(got.squares, left.reduce((sum, value) => sum + value ** 2, 0), 1e-8 * Math.max(1, got.squares))
      // (XᵀX)⁻¹·XᵀX is 1
      const product = got.inverse.map(line => rows[0]?.map((_, j) => line.reduce((sum, value, i) => sum + value * rows.reduce((part, row) => part + (row[i] ?? 0) * (row[j] ?? 0), 0), 0)) ?? [])
      product.forEach((line, i) => line.forEach((value, j) => expectClose(value, i === j ? 1 : 0, 1e-6)))
    }))
  })

  it('names the columns that depend on those before them', () => {
    expect(solveLeastSquares([[1, 2, 0], [1, 2, 1], [1, 2, 5]], [1, 2, 3])).toEqual({kind: 'dependent', columns: [1]})
    expect(solveLeastSquares([[1, 0], [1, 0]], [1, 2])).toEqual({kind: 'dependent', columns: [1]})
    expect(solveLeastSquares([[1, 0]], [1])).toEqual({kind: 'dependent', columns: [1]})
    expect(solveLeastSquares([[0.1, 0.3, 0.4], [0.2, 0.5, 0.7], [0.7, 0.1, 0.8], [0.4, 0.4, 0.8]], [1, 2, 3, 4])).toEqual({kind: 'dependent', columns: [2]})
  })
  it('has nothing to solve without columns', () => expect(solveLeastSquares([], [])).toEqual({kind: 'solved', coefficients: [], inverse: [], squares: 0, rank: 0}))
  it('gives the value of its example', () => {
    const [level, slope] = solved([[1, 0], [1, 1], [1, 2]], [1, 3, 5]).coefficients
    expectClose(level ?? NaN, 1, 1e-12)
    expectClose(slope ?? NaN, 2, 1e-12)
  })
  it('refuses rows that do not fit and what is not finite', () => {
    expect(() => solveLeastSquares([[1]], [])).toThrow(RangeError)
    expect(() => solveLeastSquares([[1], [1, 2]], [1, 2])).toThrow(RangeError)
    expect(() => solveLeastSquares([[NaN]], [1])).toThrow(RangeError)
  })
})
