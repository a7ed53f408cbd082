import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {holm} from '../../src/statistics/holm.ts'
import {expectClose} from '../expect-close.ts'

const chances = fc.array(fc.double({min: 0, max: 1, noNaN: true}), {maxLength: 12})

/** The step-down procedure as Holm writes it: at a level, reject from the smallest P on until one is above level/(tests left). */
function rejected(all: readonly number[], level: number): boolean[] {
  const left = all.map((p, place) => ({p, place})).sort((a, b) => a.p - b.p)
  const out = all.map(() => false)
  for (let next = left.shift(), tests = all.length; next && next.p * tests <= level; next = left.shift(), tests--) out[next.place] = true
  return out
}

describe('holm(chances)', () => {
  it('gives the figures of a published example', () => {
    // the four hypotheses of the encyclopaedia article on Holm's method (from memory): at 0.05 the first and the fourth are rejected
    const adjusted = [0.03, 0.06, 0.06, 0.02]
    holm([0.01, 0.04, 0.03, 0.005]).forEach((p, place) => expectClose(p, adjusted[place] ?? NaN, 1e-12))
  })

  it('calls remarkable what the step-down procedure rejects, at any level', () => {
    fc.assert(fc.property(chances, fc.double({min: 0, max: 0.999, noNaN: true}), (all, level) => {
      expect(holm(all).map(p => p <= level)).toEqual(rejected(all, level))
    }))
  })

  it('keeps the order, raises every P, and by no more than the number of tests', () => {
    fc.assert(fc.property(chances, all => {
      const adjusted = holm(all)
      all.forEach((p, place) => {
        const own = adjusted[place] ?? NaN
        expect(own).toBeGreaterThanOrEqual(p)
        expect(own).toBeLessThanOrEqual(Math.min(1, all.length * Math.max(p, ...all.filter(other => other <= p))))
        all.forEach((other, there) => { if (p < other) expect(own).toBeLessThanOrEqual(adjusted[there] ?? NaN) })
      })
    }))
  })

  it('leaves a single test as it is, and none as none', () => {
    expect(holm([0.03])).toEqual([0.03])
    expect(holm([])).toEqual([])
  })

  it.each([-0.1, 1.1, NaN])('refuses a P of %f', p => expect(() => holm([0.5, p])).toThrow(RangeError))
})
