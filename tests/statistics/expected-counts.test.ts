import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {expectedCounts} from '../../src/statistics/expected-counts.ts'
import {expectClose} from '../expect-close.ts'

describe('expectedCounts(counts, ratio)', () => {
  // Mendel 1866, two pairs: 556 seeds
  it('gives a sixteenth of 556 nine, three, three and one times', () => {
    expect(expectedCounts([315, 108, 101, 32], [9, 3, 3, 1])).toEqual({
      n: 556, shares: [9 / 16, 3 / 16, 3 / 16, 1 / 16], expected: [312.75, 104.25, 104.25, 34.75], freedom: 3, impossible: [],
    })
  })

  it('comes to all chicks, and does not mind in what the parts are told', () => {
    const classes = fc.array(fc.tuple(fc.integer({min: 0, max: 400}), fc.integer({min: 1, max: 27})), {minLength: 1, maxLength: 8})
    fc.assert(fc.property(classes, fc.double({min: 0.001, max: 1000, noNaN: true}), (rows, times) => {
      const counts = [...rows.map(([count]) => count), 1], ratio = [...rows.map(([, part]) => part), 1]
      const {n, expected} = expectedCounts(counts, ratio)
      expectClose(expected.reduce((sum, mean) => sum + mean, 0), n, 1e-9)
      expectedCounts(counts, ratio.map(part => part * times)).expected.forEach((mean, place) => expectClose(mean, expected[place] ?? NaN, 1e-9))
    }))
  })

  it('names the classes that should be empty and are not, and leaves those that are out of the freedom', () => {
    expect(expectedCounts([5, 2, 1, 0], [1, 1, 0, 0])).toMatchObject({freedom: 1, impossible: [2]})
  })

  it.each([[[1, 2], [1]], [[0, 0], [1, 1]], [[1, 2], [0, 0]], [[1.5, 2], [1, 1]], [[-1, 2], [1, 1]], [[1, 2], [1, -1]], [[1, 2], [1, NaN]], [[], []]])(
    'refuses %j against %j', (counts, ratio) => expect(() => expectedCounts(counts, ratio)).toThrow(RangeError))
})
