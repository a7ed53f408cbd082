import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {selectionIntensity, selectionIntensityOfShare} from '../../src/statistics/selection-intensity.ts'
import {expectClose} from '../expect-close.ts'

describe('selectionIntensity(kept, of)', () => {
  // expected values of normal order statistics, Becker 1984, Manual of Quantitative Genetics (from memory; recomputed by independent code)
  it.each([[1, 10, 1.5388], [2, 10, 1.2701], [1, 5, 1.163], [2, 8, 1.1379], [3, 12, 1.1793], [1, 20, 1.8675], [4, 20, 1.3318], [5, 50, 1.7055], [3, 30, 1.6744]])(
    'the best %i of %i', (kept, of, expected) => expectClose(selectionIntensity(kept, of), expected, 0.00005))

  it('has closed forms: 1/√π of two, 3/(2√π) the best of three', () => {
    expectClose(selectionIntensity(1, 2), 1 / Math.sqrt(Math.PI), 1e-12)
    expectClose(selectionIntensity(1, 3), 1.5 / Math.sqrt(Math.PI), 1e-12)
    expectClose(selectionIntensity(2, 3), 0.75 / Math.sqrt(Math.PI), 1e-12)
  })

  it('is the mean of the best of drawn hatches', () => {
    const chance = chanceOf(5), share = () => (chance.next() + 0.5) / 2 ** 32
    let sum = 0
    for (let hatch = 0; hatch < 20_000; hatch++) {
      const birds = Array.from({length: 12}, () => Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())).sort((a, b) => b - a)
      sum += ((birds[0] ?? 0) + (birds[1] ?? 0) + (birds[2] ?? 0)) / 3
    }
    expectClose(sum / 20_000, selectionIntensity(3, 12), 0.015)
  })

  it('weighs up: kept and left lie on two sides of the mean, and it comes to the table of shares', () => {
    fc.assert(fc.property(fc.integer({min: 2, max: 60}).chain(n => fc.tuple(fc.integer({min: 1, max: n - 1}), fc.constant(n))), ([k, n]) => {
      expectClose(k * selectionIntensity(k, n), (n - k) * selectionIntensity(n - k, n), 1e-9, {k, n})
      expect(selectionIntensity(k, n)).toBeLessThan(selectionIntensityOfShare(k / n))
    }), {numRuns: 40})
    expectClose(selectionIntensity(400, 2000), selectionIntensityOfShare(0.2), 0.001)
  })

  it('is 0 when all are kept', () => expect(selectionIntensity(4, 4)).toBe(0))
  it('gives the value of its example', () => expectClose(selectionIntensity(2, 10), 1.2701, 0.00005))
  it.each([[0, 3], [4, 3], [1.5, 3], [1, 0], [NaN, 2]])('refuses %f of %f', (kept, of) => expect(() => selectionIntensity(kept, of)).toThrow(RangeError))
})

describe('selectionIntensityOfShare(share)', () => {
  // Falconer & Mackay 1996, appendix table A (from memory)
  it.each([[0.5, 0.7979], [0.4, 0.9659], [0.3, 1.159], [0.25, 1.2711], [0.2, 1.3998], [0.1, 1.755], [0.05, 2.0627], [0.01, 2.6652]])('%f kept', (share, expected) => {
    expectClose(selectionIntensityOfShare(share), expected, 0.00005)
  })
  it('weighs up: p·i = (1 − p)·i of the rest', () => {
    fc.assert(fc.property(fc.double({min: 0.001, max: 0.999, noNaN: true}), share => {
      expectClose(share * selectionIntensityOfShare(share), (1 - share) * selectionIntensityOfShare(1 - share), 1e-9)
    }))
  })
  it('is 0 when all are kept', () => expect(selectionIntensityOfShare(1)).toBe(0))
  it.each([0, -1, 1.1, NaN])('refuses %f', share => expect(() => selectionIntensityOfShare(share)).toThrow(RangeError))
})
