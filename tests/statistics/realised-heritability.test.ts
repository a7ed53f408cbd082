import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {realisedHeritability} from '../../src/statistics/realised-heritability.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'

const step = fc.record({differential: fc.integer({min: 1, max: 300}), response: fc.integer({min: -100, max: 300})})
function estimated(...args: Parameters<typeof realisedHeritability>) {
  const got = realisedHeritability(...args)
  if (got.kind !== 'estimated') throw new Error(got.kind)
  return got
}

describe('realisedHeritability(steps)', () => {
  it('is R/S of a single step, as the breeder’s equation turned round', () => {
    // Falconer & Mackay 1996, ch. 11 (from memory): h² = R/S; S 200 and R 80 give 0.4
    expect(estimated([{differential: 200, response: 80}])).toEqual({kind: 'estimated', steps: 1, value: 0.4, error: null, interval: null})
  })

  it('is the line of the sums through nought, worked by hand, with the error of a mixture of single steps', () => {
    fc.assert(fc.property(fc.array(step, {minLength: 2, maxLength: 8}), steps => {
      let s = 0, r = 0, cross = 0, square = 0
      const sums = steps.map(({differential, response}) => {
        s += differential
        r += response
        cross += s * r
        square += s * s
        return s
      })
      const b = cross / square, plain = steps.reduce((sum, each) => sum + each.differential * each.response, 0) / steps.reduce((sum, each) => sum + each.differential ** 2, 0)
      const variance = steps.reduce((sum, each) => sum + (each.response - plain * each.differential) ** 2, 0) / (steps.length - 1)
      // what one unit more of a step's response does to b, by trying
      const shares = steps.map((_, place) => sums.reduce((sum, at, later) => sum + (later >= place ? at : 0), 0) / square)
      const error = Math.sqrt(variance * shares.reduce((sum, share) => sum + share ** 2, 0)), got = estimated(steps), half = studentQuantile(0.95, steps.length - 1) * error
      expectClose(got.value, b, 1e-9 * Math.max(1, Math.abs(b)))
      expectClose(got.error ?? NaN, error, 1e-6 * Math.max(1, error))
      expectClose(got.interval?.low ?? NaN, Math.min(1, Math.max(0, b - half)), 1e-5)
      expectClose(got.interval?.high ?? NaN, Math.min(1, Math.max(0, b + half)), 1e-5)
      steps.forEach((_, place) => {
        const more = steps.map((each, at) => (at === place ? {...each, response: each.response + 1} : each))
        expectClose(estimated(more).value - got.value, shares[place] ?? NaN, 1e-9)
      })
    }))
  })

  it('finds the h² that every step answered with, whatever was chosen', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 1, max: 300}), {minLength: 2, maxLength: 8}), differentials => {
      const got = estimated(differentials.map(differential => ({differential, response: 0.25 * differential})))
      expectClose(got.value, 0.25, 1e-12)
      expect(got.error).toBe(0)
    }))
  })

  it('gives the value of its example', () => expectClose(estimated([{differential: 200, response: 80}, {differential: 150, response: 55}]).value, 0.3892, 0.00005))
  it('gives the error of its example, worked by hand', () => {
    // ΣS 200, 350: w = 550/162500, 350/162500; R on S through 0: b 24250/62500 = 0.388, left over 2.4² + 3.2² = 16, so s = 4; 4·√(550² + 350²)/162500 = 0.016047
    expectClose(estimated([{differential: 200, response: 80}, {differential: 150, response: 55}]).error ?? NaN, 0.0160, 0.00005)
  })
  it('has nothing to say where nothing was chosen', () => {
    expect(realisedHeritability([])).toEqual({kind: 'no-selection', steps: 0})
    expect(realisedHeritability([{differential: 0, response: 5}])).toEqual({kind: 'no-selection', steps: 1})
    expect(realisedHeritability([{differential: 0, response: 5}, {differential: 0, response: 2}])).toEqual({kind: 'no-selection', steps: 2})
  })
  it('refuses what is not finite', () => expect(() => realisedHeritability([{differential: NaN, response: 1}])).toThrow(RangeError))
})
