import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {entriesOver, Folding, keptFromVanishing, makeWhole, multiplyEach, multiplyInto, sumInto, total, WorkingTables} from '../../src/heredity/tables.ts'

/** sizes of one to seven variables, and some of these in any order */
const variables = fc.array(fc.integer({min: 1, max: 5}), {minLength: 1, maxLength: 6}).chain(sizes =>
  fc.record({sizes: fc.constant(sizes), some: fc.shuffledSubarray(sizes.map((_, variable) => variable))}))

/** the values of an entry, and the entry of values, reckoned without any `Onto` */
function entryOf(sizes: readonly number[], some: readonly number[], wide: number): number {
  const values: number[] = []
  let rest = wide
  for (let place = sizes.length - 1; place >= 0; place--) {
    values[place] = rest % sizes[place]!
    rest = Math.floor(rest / sizes[place]!)
  }
  return some.reduce((entry, variable) => entry * sizes[variable]! + values[variable]!, 0)
}

describe('Folding', () => {
  it('multiplies and sums as going entry by entry does, also past one run of entries', () => {
    fc.assert(fc.property(variables, ({sizes, some}) => {
      const of = sizes.map((_, variable) => variable), onto = new Folding(sizes).onto(of, some)
      const wide = Float64Array.from({length: entriesOver(of, sizes)}, (_, at) => 1 + (at % 7)), narrow = Float64Array.from({length: entriesOver(some, sizes)}, (_, at) => 1 + (at % 5))
      const sums = new Float64Array(narrow.length), expected = new Float64Array(narrow.length)
      wide.forEach((entry, at) => { expected[entryOf(sizes, some, at)]! += entry })
      sumInto(sums, onto, wide)
      expect(sums).toEqual(expected)
      const products = wide.map((entry, at) => entry * narrow[entryOf(sizes, some, at)]!)
      expect(multiplyInto(wide, onto, narrow)).toBe(products.reduce((most, entry) => Math.max(most, entry), 0))
      expect(wide).toEqual(products)
    }), {seed: 5, numRuns: 40})
  })

  it('makes like ones once', () => {
    const folding = new Folding([3, 2, 3, 2])
    expect(folding.onto([0, 1], [1])).toBe(folding.onto([2, 3], [3]))
    expect(folding.onto([0, 1], [1])).not.toBe(folding.onto([0, 1], [0]))
  })
})

describe('small things done to tables', () => {
  it('keep a product from vanishing, and say by how much', () => {
    const table = Float64Array.of(1e-200, 2e-200)
    const log = keptFromVanishing(table, 2e-200)
    expect([...table]).toEqual([0.5, 1])
    expect(log).toBeCloseTo(Math.log(2e-200), 12)
    expect(keptFromVanishing(Float64Array.of(0.2, 0.1), 0.2)).toBe(0)
    expect(keptFromVanishing(new Float64Array(2), 0)).toBe(0)
  })

  it('make shares of a table, and leave nothing but 0 as it is', () => {
    const table = Float64Array.of(1, 3), nothing = new Float64Array(2)
    makeWhole(table)
    makeWhole(nothing)
    expect([...table, ...nothing]).toEqual([0.25, 0.75, 0, 0])
    expect(total(table)).toBe(1)
    expect(multiplyEach(table, Float64Array.of(4, 2))).toBe(1.5)
  })
})

describe('WorkingTables', () => {
  it('gives the same table for the same place and length, and else another', () => {
    const room = new WorkingTables(), one = room.table(0, 9)
    expect(room.table(0, 9)).toBe(one)
    expect(new Set([one, room.table(1, 9), room.table(0, 3), room.message(0, 9)]).size).toBe(4)
  })
})
