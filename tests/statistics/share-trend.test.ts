import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {shareTrend, steepestSlope} from '../../src/statistics/share-trend.ts'
import type {Count} from '../../src/statistics/share-difference.ts'
import {expectClose} from '../expect-close.ts'

/** Mills & Graubard 1987, malformation by maternal drinking, as in Agresti, Categorical Data Analysis, section 3.4. */
const MALFORMED: Count[] = [{k: 48, n: 17114}, {k: 38, n: 14502}, {k: 5, n: 793}, {k: 1, n: 127}, {k: 1, n: 38}]

/** Every way to say which chicks bear the trait, one chick after the other. */
function byEveryChick(steps: readonly Count[], scores: readonly number[]): number {
  const chicks = steps.flatMap(({n}, place) => Array<number>(n).fill(scores[place] ?? 0))
  const k = steps.reduce((sum, step) => sum + step.k, 0), mean = (k * chicks.reduce((sum, score) => sum + score, 0)) / chicks.length
  const seen = Math.abs(steps.reduce((sum, step, place) => sum + step.k * (scores[place] ?? 0), 0) - mean)
  let all = 0, extreme = 0
  for (let subset = 0; subset < 2 ** chicks.length; subset++) {
    let drawn = 0, sum = 0
    chicks.forEach((score, place) => {
      if ((subset >> place) & 1) [drawn, sum] = [drawn + 1, sum + score]
    })
    if (drawn !== k) continue
    all += 1
    if (Math.abs(sum - mean) >= seen - 1e-9) extreme += 1
  }
  return extreme / all
}

describe('shareTrend(steps, scores)', () => {
  it('children with large tonsils and carriers of streptococci', () => {
    // Armitage 1955, Biometrics 11:375, table 1: χ² for trend 7.19, P .0073 (from memory; counts agree with it)
    const {how, z, p} = shareTrend([{k: 19, n: 516}, {k: 29, n: 589}, {k: 24, n: 293}])
    expect(how).toBe('asymptotic')
    expectClose((z ?? NaN) ** 2, 7.19, 0.005)
    expectClose(p, 0.0073, 0.00005)
  })

  it('malformations: z² 6.57, P .010 by the normal curve, .0172 exactly; with the steps counted 0 to 4 z² 1.83, P .18', () => {
    // Agresti, Categorical Data Analysis, 3.4 (from memory). The scores 0, 0.5, 1.5, 4, 7 doubled are whole
    const bent = shareTrend(MALFORMED, [0, 0.5, 1.5, 4, 7])
    expect(bent).toMatchObject({how: 'asymptotic', rough: true})
    expectClose((bent.z ?? NaN) ** 2, 6.57, 0.005)
    expectClose(bent.p, 0.01, 0.0005)
    const exact = shareTrend(MALFORMED, [0, 1, 3, 8, 14])
    expect(exact).toMatchObject({how: 'exact', rough: false})
    expectClose(exact.z ?? NaN, bent.z ?? NaN, 1e-12)
    expectClose(exact.p, 0.0172, 0.00006)
    const even = shareTrend(MALFORMED)
    expectClose((even.z ?? NaN) ** 2, 1.83, 0.005)
    expectClose(even.p, 0.18, 0.005)
  })

  const step = fc.integer({min: 0, max: 4}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))

  it('is exactly the share of all ways to deal the trait', () => {
    fc.assert(fc.property(fc.array(step, {minLength: 2, maxLength: 4}), fc.array(fc.integer({min: -3, max: 9}), {minLength: 4, maxLength: 4}), (steps, places) => {
      const scores = places.slice(0, steps.length), got = shareTrend(steps, scores)
      if (got.how === 'none') expect(got.p).toBe(1)
      else {
        expect(got.how).toBe('exact')
        expectClose(got.p, byEveryChick(steps, scores), 1e-9, {steps, scores})
      }
    }), {numRuns: 40})
  })

  it('has the slope of a straight line through chicks of 0 and 1', () => {
    fc.assert(fc.property(fc.array(step, {minLength: 2, maxLength: 6}), steps => {
      const {slope} = shareTrend(steps)
      const dots = steps.flatMap(({k, n}, x) => Array.from({length: n}, (_, chick) => ({x, y: chick < k ? 1 : 0})))
      const mx = dots.reduce((sum, {x}) => sum + x, 0) / dots.length, my = dots.reduce((sum, {y}) => sum + y, 0) / dots.length
      const sxy = dots.reduce((sum, {x, y}) => sum + (x - mx) * (y - my), 0), sxx = dots.reduce((sum, {x}) => sum + (x - mx) ** 2, 0)
      if (slope !== null) expectClose(slope, sxy / sxx, 1e-12)
    }))
  })

  it('turns over with the order and with failures, and does not mind a longer scale', () => {
    const big = fc.integer({min: 1, max: 40}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))
    fc.assert(fc.property(fc.array(big, {minLength: 2, maxLength: 5}), steps => {
      const got = shareTrend(steps), back = shareTrend([...steps].reverse())
      const failures = shareTrend(steps.map(({k, n}) => ({k: n - k, n}))), longer = shareTrend(steps, steps.map((_, place) => 3 * place + 7))
      for (const other of [back, failures, longer]) expectClose(other.p, got.p, 1e-9)
      if (got.z !== null) {
        expectClose(back.z ?? NaN, -got.z, 1e-9)
        expectClose(failures.z ?? NaN, -got.z, 1e-9)
      }
      expect(got.p).toBeGreaterThanOrEqual(0)
      expect(got.p).toBeLessThanOrEqual(1)
    }), {numRuns: 60})
  })

  it.each([[[]], [[{k: 1, n: 3}]], [[{k: 0, n: 0}, {k: 1, n: 3}]]])('has none in %j', steps => {
    expect(shareTrend(steps)).toMatchObject({how: 'none', slope: null, z: null, p: 1})
  })
  it('is flat where every chick is alike', () => expect(shareTrend([{k: 4, n: 4}, {k: 5, n: 5}])).toMatchObject({how: 'none', slope: 0, z: null, p: 1}))
  it('never passes the steepest slope there is, not even by rounding', () => {
    expect(shareTrend([{k: 0, n: 1}, {k: 10, n: 10}]).slope).toBe(1)
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({min: 1, max: 30}), fc.integer({min: -5, max: 5}), fc.boolean()), {minLength: 1, maxLength: 6}), drawn => {
      const scores = drawn.map(([, score]) => score), {slope} = shareTrend(drawn.map(([n, , all]) => ({k: all ? n : 0, n})), scores)
      if (slope === null) return
      // the slowest way: every two steps apart
      const pairs = scores.flatMap(a => scores.filter(b => b > a).map(b => 1 / (b - a)))
      expect(steepestSlope(scores)).toBe(Math.max(...pairs))
      expect(Math.abs(slope)).toBeLessThanOrEqual(steepestSlope(scores))
    }))
  })
  it('refuses what is no count and scores that do not fit', () => {
    expect(() => shareTrend([{k: 2, n: 1}])).toThrow(RangeError)
    expect(() => shareTrend([{k: 1, n: 1}], [])).toThrow(RangeError)
    expect(() => shareTrend([{k: 1, n: 1}], [NaN])).toThrow(RangeError)
  })
})
