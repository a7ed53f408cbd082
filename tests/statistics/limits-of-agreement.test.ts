import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {limitsOfAgreement} from '../../src/statistics/limits-of-agreement.ts'
import {expectClose} from '../expect-close.ts'

/** First measurement of each of 17 people by a large and a small peak flow meter, l/min: Bland & Altman 1986, Lancet i:307–310, table (from memory; mean, SD and limits below are as printed). */
const LARGE = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427]
const SMALL = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451]

const marks = fc.array(fc.integer({min: -40, max: 40}), {minLength: 5, maxLength: 20})

describe('limitsOfAgreement(differences)', () => {
  it('gives the printed mean, spread, limits and interval of the two meters', () => {
    const found = limitsOfAgreement(LARGE.map((flow, place) => flow - (SMALL[place] ?? NaN)))
    expect(found.n).toBe(17)
    expectClose(found.mean, -2.1, 0.05)
    expectClose(found.sd ?? NaN, 38.8, 0.05)
    // printed as limits: d̄ ± 2 s, −79.7 to 75.5
    expectClose(found.mean - 2 * (found.sd ?? NaN), -79.7, 0.1)
    expectClose(found.mean + 2 * (found.sd ?? NaN), 75.5, 0.1)
    // ours, for the next person: t of 16 is 2.1199, and √(1 + 1/17) 1.0290; 1.09 times as wide as the printed ones
    expectClose(found.limits?.low ?? NaN, found.mean - 2.1199 * 1.029 * (found.sd ?? NaN), 0.01)
    expectClose(found.limits?.low ?? NaN, -86.7, 0.1)
    expectClose(found.limits?.high ?? NaN, 82.4, 0.1)
    // printed: −22.0 to 17.8
    expectClose(found.interval?.low ?? NaN, -22, 0.1)
    expectClose(found.interval?.high ?? NaN, 17.8, 0.1)
  })

  it('holds the next difference as often as it says, of five as of twelve', () => {
    const chance = chanceOf(11), runs = 4000, draw = () => Math.sqrt(-2 * Math.log((chance.next() + 1) / 2 ** 32)) * Math.cos((2 * Math.PI * chance.next()) / 2 ** 32)
    for (const n of [5, 12]) {
      let held = 0
      for (let run = 0; run < runs; run++) {
        const {limits} = limitsOfAgreement(Array.from({length: n}, draw)), next = draw()
        if (limits && next >= limits.low && next <= limits.high) held += 1
      }
      // three standard errors of 95 in 100 over 4000 runs; d̄ ± 2 s hold 86 and 92 in 100
      expectClose(held / runs, 0.95, 0.0105)
    }
  })

  it('is worked by hand of three', () => {
    // 1, 2, 3: mean 2, SD 1, t of 2 is 4.3027
    const found = limitsOfAgreement([1, 2, 3])
    expect(found).toMatchObject({n: 3, mean: 2, sd: 1, limits: null})
    expectClose(found.interval?.high ?? NaN, 2 + 4.3027 / Math.sqrt(3), 1e-4)
  })

  it('moves with a shift, grows with a scale, and turns round when the two change places', () => {
    fc.assert(fc.property(marks, fc.integer({min: -9, max: 9}), (all, shift) => {
      const found = limitsOfAgreement(all), moved = limitsOfAgreement(all.map(each => each + shift)), turned = limitsOfAgreement(all.map(each => -each)), doubled = limitsOfAgreement(all.map(each => 2 * each))
      if (found.sd === 0) return
      expectClose(moved.limits?.low ?? NaN, (found.limits?.low ?? NaN) + shift, 1e-9)
      expectClose(turned.limits?.low ?? NaN, -(found.limits?.high ?? NaN), 1e-9)
      expectClose(doubled.interval?.high ?? NaN, 2 * (found.interval?.high ?? NaN), 1e-9)
    }), {numRuns: 60})
  })

  it('has no spread of one, no limits where all are alike, and throws at none', () => {
    expect(limitsOfAgreement([3])).toEqual({n: 1, mean: 3, sd: null, interval: null, limits: null})
    expect(limitsOfAgreement([2, 2, 2, 2, 2, 2])).toEqual({n: 6, mean: 2, sd: 0, interval: null, limits: null})
    expect(() => limitsOfAgreement([])).toThrow(RangeError)
  })
})
