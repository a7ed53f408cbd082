import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
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
    expectClose(found.limits?.low ?? NaN, -79.7, 0.1)
    expectClose(found.limits?.high ?? NaN, 75.5, 0.1)
    // printed: −22.0 to 17.8
    expectClose(found.interval?.low ?? NaN, -22, 0.1)
    expectClose(found.interval?.high ?? NaN, 17.8, 0.1)
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
