import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {leastSquares} from '../../src/statistics/least-squares.ts'
import {parentOffspring} from '../../src/statistics/parent-offspring.ts'
import {expectClose} from '../expect-close.ts'

/** Galton 1886, J. Anthropol. Inst. 15:246: 928 grown children by height and the mean height of their parents, inches. */
const MID_PARENTS = [64, 64.5, 65.5, 66.5, 67.5, 68.5, 69.5, 70.5, 71.5, 72.5, 73]
const CHILDREN: readonly (readonly [number, readonly number[]])[] = [
  [61.7, [1, 1, 1, 0, 0, 1, 0, 1, 0, 0, 0]], [62.2, [0, 1, 0, 3, 3, 0, 0, 0, 0, 0, 0]], [63.2, [2, 4, 9, 3, 5, 7, 1, 1, 0, 0, 0]], [64.2, [4, 4, 5, 5, 14, 11, 16, 0, 0, 0, 0]],
  [65.2, [1, 1, 7, 2, 15, 16, 4, 1, 1, 0, 0]], [66.2, [2, 5, 11, 17, 36, 25, 17, 1, 3, 0, 0]], [67.2, [2, 5, 11, 17, 38, 31, 27, 3, 4, 0, 0]], [68.2, [1, 0, 7, 14, 28, 34, 20, 12, 3, 1, 0]],
  [69.2, [1, 2, 7, 13, 38, 48, 33, 18, 5, 2, 0]], [70.2, [0, 0, 5, 4, 19, 21, 25, 14, 10, 1, 0]], [71.2, [0, 0, 2, 0, 11, 18, 20, 7, 4, 2, 0]], [72.2, [0, 0, 1, 0, 4, 4, 11, 4, 9, 7, 1]],
  [73.2, [0, 0, 0, 0, 0, 3, 4, 3, 2, 2, 3]], [73.7, [0, 0, 0, 0, 0, 0, 5, 3, 2, 4, 0]],
]
const GALTON = CHILDREN.flatMap(([offspring, counts]) => counts.flatMap((count, place) => Array.from({length: count}, () => ({parent: MID_PARENTS[place] ?? NaN, offspring}))))

function estimated(...args: Parameters<typeof parentOffspring>) {
  const got = parentOffspring(...args)
  if (got.kind !== 'estimated') throw new Error(got.kind)
  return got
}
const pair = fc.record({parent: fc.integer({min: 900, max: 3000}), offspring: fc.integer({min: 900, max: 3000}), group: fc.constantFrom('a', 'b')})

describe('parentOffspring(pairs, parents)', () => {
  it('of Galton’s families: 0.6463 with an error of 0.0411', () => {
    // R: lm(child ~ parent, Galton) of package HistData prints 0.64629 and 0.04114
    expect(GALTON).toHaveLength(928)
    const {slope, heritability} = estimated(GALTON, 'both')
    expectClose(slope.value, 0.646290582, 5e-10)
    expectClose(slope.error, 0.041135882, 5e-10)
    expect(heritability.value).toBe(slope.value)
  })

  it('is twice the slope on one parent', () => {
    fc.assert(fc.property(fc.array(pair, {minLength: 4, maxLength: 20}), pairs => {
      const both = parentOffspring(pairs, 'both'), one = parentOffspring(pairs, 'one')
      expect(one.kind).toBe(both.kind)
      if (both.kind !== 'estimated' || one.kind !== 'estimated') return
      expectClose(one.heritability.value, 2 * both.slope.value, 1e-12)
      for (const {interval} of [both.heritability, one.heritability]) {
        expect(interval.low).toBeGreaterThanOrEqual(0)
        expect(interval.low).toBeLessThanOrEqual(interval.high)
        expect(interval.high).toBeLessThanOrEqual(1)
      }
    }))
  })

  it('is the straight line where all are one group, and does not see a good season', () => {
    fc.assert(fc.property(fc.array(pair, {minLength: 6, maxLength: 20}), pairs => {
      const alike = pairs.map(({parent, offspring}) => ({parent, offspring}))
      const got = parentOffspring(alike, 'both'), line = leastSquares(alike.map(({parent}) => [1, parent]), alike.map(({offspring}) => offspring))
      if (got.kind === 'estimated' && line.kind === 'fitted') expectClose(got.slope.value, line.coefficients[1]?.value ?? NaN, 1e-8 * Math.max(1, Math.abs(line.coefficients[1]?.value ?? NaN)))
      const apart = parentOffspring(pairs, 'both'), fed = parentOffspring(pairs.map(each => (each.group === 'b' ? {...each, offspring: each.offspring + 400} : each)), 'both')
      if (apart.kind === 'estimated' && fed.kind === 'estimated') expectClose(fed.slope.value, apart.slope.value, 1e-7 * Math.max(1, Math.abs(apart.slope.value)))
    }))
  })

  it('has a wider error where pairs share a cock, as every two rows of the table of likeness add up to', () => {
    const shared = fc.record({parent: fc.integer({min: -300, max: 300}), offspring: fc.integer({min: -300, max: 300}), cock: fc.constantFrom('a', 'b', 'c', 'd')})
    fc.assert(fc.property(fc.array(shared, {minLength: 6, maxLength: 16}), rows => {
      const plain = parentOffspring(rows, 'both'), wide = parentOffspring(rows.map(({parent, offspring, cock}, hen) => ({parent, offspring, shared: [cock, String(hen)]})), 'both')
      expect(wide.kind).toBe(plain.kind)
      if (plain.kind !== 'estimated' || wide.kind !== 'estimated') return
      const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
      const x = rows.map(({parent}) => parent - mean(rows.map(each => each.parent))), left = rows.map(({offspring}, place) => offspring - mean(rows.map(each => each.offspring)) - plain.slope.value * (x[place] ?? 0))
      const cocks = [...new Set(rows.map(({cock}) => cock))].map(cock => rows.flatMap((row, place) => (row.cock === cock ? [place] : []))), n = rows.length, m = cocks.length
      let rho = 0.25
      if (m > 1 && n > m) {
        const among = cocks.reduce((sum, own) => sum + own.length * mean(own.map(place => left[place] ?? 0)) ** 2, 0) / (m - 1)
        const inside = cocks.reduce((sum, own) => sum + own.reduce((all, place) => all + ((left[place] ?? 0) - mean(own.map(each => left[each] ?? 0))) ** 2, 0), 0) / (n - m)
        const size = (n - cocks.reduce((sum, own) => sum + own.length ** 2, 0) / n) / (m - 1), all = among + (size - 1) * inside
        if (all > 1e-9) rho = Math.max(0.25, (among - inside) / all)
      }
      const squares = x.reduce((sum, value) => sum + value ** 2, 0)
      const doubled = rows.reduce((sum, one, i) => sum + rows.reduce((part, other, j) => part + (x[i] ?? 0) * (x[j] ?? 0) * (i === j ? 1 : one.cock === other.cock ? rho : 0), 0), 0)
      expectClose(wide.slope.value, plain.slope.value, 1e-12)
      expectClose(wide.slope.error, plain.slope.error * Math.sqrt(Math.max(1, doubled / squares)), 1e-6 * Math.max(1, plain.slope.error))
      expect(wide.slope.interval.low).toBeLessThanOrEqual(plain.slope.interval.low)
    }))
  })

  it('takes rows as apart where every bird has one', () => {
    fc.assert(fc.property(fc.array(pair, {minLength: 4, maxLength: 20}), pairs => {
      expect(parentOffspring(pairs.map((each, place) => ({...each, shared: [`c${place}`, `h${place}`]})), 'both')).toEqual(parentOffspring(pairs, 'both'))
    }))
  })

  it('says why there is none', () => {
    expect(parentOffspring([], 'both')).toEqual({kind: 'few', pairs: 0})
    expect(parentOffspring([{parent: 1, offspring: 1}, {parent: 2, offspring: 2}], 'both').kind).toBe('few')
    expect(parentOffspring([1, 2, 3].map(offspring => ({parent: 5, offspring})), 'one')).toEqual({kind: 'parents-alike', pairs: 3})
  })
  it('gives the value of its example', () => {
    expectClose(estimated([{parent: 1, offspring: 2}, {parent: 2, offspring: 2}, {parent: 3, offspring: 3}], 'both').heritability.value, 0.5, 1e-12)
  })
})
