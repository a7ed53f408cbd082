import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chiSquareFit} from '../../src/statistics/chi-square-fit.ts'
import {expectClose} from '../expect-close.ts'

describe('chiSquareFit(counts, ratio)', () => {
  // Mendel 1866, seven pairs; the counts and the sum of chi-squares, 2.1389, in Fisher 1936, Ann. Sci. 1:115–137; single figures recomputed by independent code
  it.each([
    [5474, 1850, 0.26288, 0.608149], [6022, 2001, 0.014999, 0.902528], [705, 224, 0.390743, 0.531909], [882, 299, 0.063506, 0.801039],
    [428, 152, 0.450575, 0.502062], [651, 207, 0.34965, 0.554311], [787, 277, 0.606516, 0.436103],
  ])('holds %i : %i against 3 : 1', (dominant, recessive, chiSquare, p) => {
    const fit = chiSquareFit([dominant, recessive], [3, 1])
    expectClose(fit.chiSquare ?? NaN, chiSquare, 1e-6)
    expectClose(fit.p, p, 1e-6)
    expect(fit.freedom).toBe(1)
  })

  it.each([
    // Mendel 1866, two pairs
    [[315, 108, 101, 32], [9, 3, 3, 1], 0.470024, 3, 0.925426, 1e-6],
    // Davenport 1909, Inheritance of Characteristics in Domestic Fowl, table 58: pen 709, and both pens. The expectations printed there for the second are not 9 : 4 : 3 of 362.
    [[119, 55, 31], [9, 4, 3], 1.831436, 2, 0.400229, 1e-6], [[210, 95, 57], [9, 4, 3], 2.165746, 2, 0.338621, 1e-6],
    // Davenport 1909, split comb F2: a ratio that must be rejected
    [[471, 289, 226, 10], [9, 3, 3, 1], 122.307898, 3, 2.4567e-26, 1e-30],
    // Morgan 1910, Science 32:120–122: no white female, and none expected
    [[2459, 1011, 782, 0], [2, 1, 1, 0], 128.983537, 2, 9.808e-29, 1e-32],
    // Larget, Math 225 course notes 21
    [[99, 45], [3, 1], 3, 1, 0.083265, 1e-6],
  ])('holds %j against %j', (counts, ratio, chiSquare, freedom, p, tolerance) => {
    const fit = chiSquareFit(counts, ratio)
    expectClose(fit.chiSquare ?? NaN, chiSquare, 1e-6)
    expectClose(fit.p, p, tolerance)
    expect(fit.freedom).toBe(freedom)
    expect(fit.impossible).toEqual([])
  })

  const classes = fc.array(fc.tuple(fc.integer({min: 0, max: 900}), fc.integer({min: 1, max: 27})), {minLength: 2, maxLength: 7}).filter(rows => rows.some(([count]) => count > 0))

  it('is Σ seen²/expected less n, another way to the same number', () => {
    fc.assert(fc.property(classes, rows => {
      const counts = rows.map(([count]) => count), whole = rows.reduce((sum, [, part]) => sum + part, 0), n = counts.reduce((sum, count) => sum + count, 0)
      const short = rows.reduce((sum, [count, part]) => sum + (count ** 2 * whole) / (n * part), 0) - n
      expectClose(chiSquareFit(counts, rows.map(([, part]) => part)).chiSquare ?? NaN, short, 1e-8 * (short + n))
    }))
  })

  it('does not mind the order of the classes, nor an empty class that should be empty', () => {
    fc.assert(fc.property(classes, rows => {
      const fit = chiSquareFit(rows.map(([count]) => count), rows.map(([, part]) => part))
      const back = [...rows].reverse()
      const other = chiSquareFit([0, ...back.map(([count]) => count)], [0, ...back.map(([, part]) => part)])
      expectClose(other.chiSquare ?? NaN, fit.chiSquare ?? NaN, 1e-9 * (fit.chiSquare ?? 0) + 1e-12)
      expectClose(other.p, fit.p, 1e-9)
      expect(other.freedom).toBe(fit.freedom)
    }))
  })

  it('calls a chick in a class that cannot be impossible: P is 0, χ² not said', () => {
    expect(chiSquareFit([10, 9, 1], [1, 1, 0])).toEqual({chiSquare: null, freedom: 1, p: 0, impossible: [2]})
  })

  it('finds nothing amiss where one class alone can be, and all are in it', () => {
    expect(chiSquareFit([7, 0], [1, 0])).toEqual({chiSquare: 0, freedom: 0, p: 1, impossible: []})
  })
})
