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

  it('is the line through nought, worked by hand', () => {
    fc.assert(fc.property(fc.array(step, {minLength: 2, maxLength: 8}), steps => {
      let s = 0, r = 0, cross = 0, square = 0
      const points = steps.map(({differential, response}) => {
        s += differential
        r += response
        cross += s * r
        square += s * s
        return [s, r] as const
      })
      const b = cross / square, left = points.reduce((sum, [x, y]) => sum + (y - b * x) ** 2, 0)
      const error = Math.sqrt(left / (steps.length - 1) / square), got = estimated(steps), half = studentQuantile(0.95, steps.length - 1) * error
      expectClose(got.value, b, 1e-9 * Math.max(1, Math.abs(b)))
      expectClose(got.error ?? NaN, error, 1e-6 * Math.max(1, error))
      expectClose(got.interval?.low ?? NaN, Math.min(1, Math.max(0, b - half)), 1e-5)
      expectClose(got.interval?.high ?? NaN, Math.min(1, Math.max(0, b + half)), 1e-5)
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
  it('has nothing to say where nothing was chosen', () => {
    expect(realisedHeritability([])).toEqual({kind: 'no-selection', steps: 0})
    expect(realisedHeritability([{differential: 0, response: 5}])).toEqual({kind: 'no-selection', steps: 1})
    expect(realisedHeritability([{differential: 0, response: 5}, {differential: 0, response: 2}])).toEqual({kind: 'no-selection', steps: 2})
  })
  it('refuses what is not finite', () => expect(() => realisedHeritability([{differential: NaN, response: 1}])).toThrow(RangeError))
})
