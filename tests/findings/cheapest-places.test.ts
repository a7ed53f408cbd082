import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {cheapestPlaces} from '../../src/findings/cheapest-places.ts'

const sum = (cost: readonly (readonly number[])[], placed: readonly (number | null)[]): number => placed.reduce<number>((total, column, row) => total + (column === null ? 0 : cost[row]?.[column] ?? NaN), 0)

/** Every way there is, one after another; the slow twin. */
function leastOfAll(cost: readonly (readonly number[])[], row = 0, taken: ReadonlySet<number> = new Set(), left = Math.max(0, cost.length - (cost[0]?.length ?? 0))): number {
  const columns = cost[row]
  if (!columns) return 0
  return Math.min(
    left > 0 ? leastOfAll(cost, row + 1, taken, left - 1) : Infinity,
    ...columns.flatMap((value, column) => (taken.has(column) ? [] : [value + leastOfAll(cost, row + 1, new Set([...taken, column]), left)])),
  )
}

describe('cheapestPlaces(cost)', () => {
  it('gives up the best of one place for the good of all', () => {
    expect(cheapestPlaces([[1, 2], [1, 5]])).toEqual([1, 0])
    // by hand, of the six ways: 1 + 3 + 8 = 12, the next 5 + 3 + 5 = 13
    expect(cheapestPlaces([[5, 9, 1], [10, 3, 2], [8, 7, 5]])).toEqual([2, 1, 0])
  })

  it('fills as many places as there are birds, and none of none', () => {
    expect(cheapestPlaces([])).toEqual([])
    expect(cheapestPlaces([[], []])).toEqual([null, null])
    expect(cheapestPlaces([[3], [1], [2]])).toEqual([null, 0, null])
  })

  it('is never dearer than any other way', () => {
    const costs = fc.tuple(fc.integer({min: 1, max: 5}), fc.integer({min: 1, max: 5})).chain(([rows, columns]) =>
      fc.array(fc.array(fc.integer({min: -5, max: 20}), {minLength: columns, maxLength: columns}), {minLength: rows, maxLength: rows}))
    fc.assert(fc.property(costs, cost => {
      const placed = cheapestPlaces(cost), used = placed.filter(column => column !== null)
      expect(new Set(used).size).toBe(used.length)
      expect(used.length).toBe(Math.min(cost.length, cost[0]?.length ?? 0))
      expect(sum(cost, placed)).toBe(leastOfAll(cost))
    }), {seed: 7, numRuns: 300})
  })

  it('takes no uneven table and nothing that is no number', () => {
    expect(() => cheapestPlaces([[1, 2], [1]])).toThrow(RangeError)
    expect(() => cheapestPlaces([[NaN]])).toThrow(RangeError)
  })
})
