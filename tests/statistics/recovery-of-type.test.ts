import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {recoveryOfType} from '../../src/statistics/recovery-of-type.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'

const group = fc.record({n: fc.integer({min: 2, max: 40}), mean: fc.integer({min: 500, max: 4000}), sd: fc.integer({min: 1, max: 200})})

describe('recoveryOfType(step, donor, recurrent)', () => {
  it('is where a second backcross stands when type follows the share of genes: 7/8', () => {
    // by hand: 1200 + 7/8 · 1600 = 2600
    const got = recoveryOfType({n: 20, mean: 2600, sd: 200}, {n: 10, mean: 1200, sd: 120}, {n: 20, mean: 2800, sd: 200})
    expectClose(got?.recovery ?? NaN, 0.875, 1e-12)
  })

  it('ends where the step is just t errors from its place on the line', () => {
    fc.assert(fc.property(group, group, group, (step, donor, recurrent) => {
      const got = recoveryOfType(step, donor, recurrent)
      if (!got?.interval) return
      const v = (birds: typeof step) => birds.sd ** 2 / birds.n, r = got.recovery
      const parts = [[v(step), step.n - 1], [(1 - r) ** 2 * v(donor), donor.n - 1], [r ** 2 * v(recurrent), recurrent.n - 1]] as const
      const freedom = parts.reduce((sum, [part]) => sum + part, 0) ** 2 / parts.reduce((sum, [part, own]) => sum + part ** 2 / own, 0)
      const t = studentQuantile(0.95, freedom)
      for (const at of [got.interval.low, got.interval.high]) {
        const off = step.mean - donor.mean - at * (recurrent.mean - donor.mean), error = Math.sqrt(v(step) + (1 - at) ** 2 * v(donor) + at ** 2 * v(recurrent))
        expectClose(Math.abs(off) / error, t, 1e-4 * t, {step, donor, recurrent})
      }
      expect(got.interval.low).toBeLessThanOrEqual(got.recovery + 1e-12)
      expect(got.interval.high).toBeGreaterThanOrEqual(got.recovery - 1e-12)
    }))
  })

  it('turns over with donor and recurrent strain, and knows no unit', () => {
    fc.assert(fc.property(group, group, group, (step, donor, recurrent) => {
      const got = recoveryOfType(step, donor, recurrent), back = recoveryOfType(step, recurrent, donor)
      expect(back === null).toBe(got === null)
      if (!got || !back) return
      const close = 1e-8 * Math.max(1, Math.abs(got.recovery))
      expectClose(back.recovery, 1 - got.recovery, close)
      if (got.interval && back.interval) expectClose(back.interval.low, 1 - got.interval.high, 1e-6 * Math.max(1, Math.abs(got.interval.high)))
    }))
  })

  it('covers the truth about 95 times in a hundred with ten birds a group', () => {
    const chance = chanceOf(41), share = () => (chance.next() + 0.5) / 2 ** 32
    const drawn = (mean: number, n: number) => meanAndDeviation(Array.from({length: n}, () => mean * (1 + 0.1 * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share()))))
    let held = 0
    for (let run = 0; run < 2000; run++) {
      const interval = recoveryOfType(drawn(2300, 10), drawn(1500, 10), drawn(2500, 10))?.interval
      if (interval && interval.low <= 0.8 && 0.8 <= interval.high) held += 1
    }
    expectClose(held / 2000, 0.95, 0.015)
  })

  it('has no interval where donor and recurrent strain do not differ clearly or nothing varies', () => {
    expect(recoveryOfType({n: 5, mean: 105, sd: 20}, {n: 5, mean: 100, sd: 20}, {n: 5, mean: 110, sd: 20})).toMatchObject({interval: null})
    expect(recoveryOfType({n: 5, mean: 105, sd: 0}, {n: 5, mean: 100, sd: 0}, {n: 5, mean: 110, sd: 0})).toEqual({recovery: 0.5, interval: null})
  })
  it('says nothing of a single bird and of one mean for both', () => {
    const birds = {n: 5, mean: 100, sd: 5}
    expect(recoveryOfType({n: 1, mean: 100, sd: null}, birds, {...birds, mean: 200})).toBeNull()
    expect(recoveryOfType(birds, birds, birds)).toBeNull()
  })
  it('gives the value of its example', () => {
    const got = recoveryOfType({n: 20, mean: 2300, sd: 200}, {n: 10, mean: 1200, sd: 120}, {n: 20, mean: 2500, sd: 200})
    expectClose(got?.recovery ?? NaN, 0.8462, 0.00005)
    expectClose(got?.interval?.low ?? NaN, 0.7576, 0.00005)
    expectClose(got?.interval?.high ?? NaN, 0.9419, 0.00005)
  })
  it('refuses a level of 0', () => expect(() => recoveryOfType({n: 2, mean: 1, sd: 1}, {n: 2, mean: 1, sd: 1}, {n: 2, mean: 1, sd: 1}, 0)).toThrow(RangeError))
})
