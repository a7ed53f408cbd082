import {describe, expect, it} from 'vitest'
import {donorSegment} from '../../src/pedigree/donor-segment.ts'

describe('donorSegment(backcrosses, arm)', () => {
  // source: Stam & Zeven 1981, Euphytica 30:227 (32 cM in BC6); the others by the formula
  it.each([[1, 78.69], [2, 63.21], [3, 51.79], [4, 43.23], [5, 36.72], [6, 31.67], [8, 24.54], [10, 19.87], [20, 10]])(
    'gene in the middle of 100 cM, %d backcrosses: %d cM', (n, expected) => expect(200 * donorSegment(n, 0.5)).toBeCloseTo(expected, 2))

  it.each([[1, 63.21], [2, 43.23], [3, 31.67], [4, 24.54], [5, 19.87], [6, 16.63]])(
    'gene at the end, %d backcrosses: %d cM', (n, expected) => expect(100 * donorSegment(n, 1)).toBeCloseTo(expected, 2))

  it('is the whole arm before any backcross, 1/n of a very long one after n, and nothing at the tip', () => {
    expect([donorSegment(0, 0.7), donorSegment(4, Infinity), donorSegment(3, 0)]).toEqual([0.7, 0.25, 0])
  })

  it('refuses what cannot be', () => {
    expect(() => donorSegment(1.5, 1)).toThrow(RangeError)
    expect(() => donorSegment(1, -1)).toThrow(RangeError)
    expect(() => donorSegment(1, NaN)).toThrow(RangeError)
  })
})
