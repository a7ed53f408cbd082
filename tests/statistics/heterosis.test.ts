import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {heterosis} from '../../src/statistics/heterosis.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'

const group = fc.record({n: fc.integer({min: 2, max: 40}), mean: fc.integer({min: 500, max: 4000}), sd: fc.integer({min: 1, max: 400})})
function of(...args: Parameters<typeof heterosis>) {
  const got = heterosis(...args)
  if (!got) throw new Error('none')
  return got
}

describe('heterosis(cross, one, other)', () => {
  it('is a tenth of parents of 2000 and 2400 g and a cross of 2420 g', () => {
    // by hand from the definition, Falconer & Mackay 1996, ch. 14
    const got = of({n: 20, mean: 2420, sd: 200}, {n: 20, mean: 2000, sd: 180}, {n: 20, mean: 2400, sd: 220})
    expectClose(got.heterosis, 0.1, 1e-12)
    expect(got).toMatchObject({midParent: 2200, difference: 220})
    expectClose(got.error, 0.0258, 0.00005)
  })

  it('has the error that small changes of the three means come to', () => {
    fc.assert(fc.property(group, group, group, (cross, one, other) => {
      // a numeric derivative in place of the formula
      const value = (a: number, b: number, c: number) => (cross.mean + a) / ((one.mean + b + other.mean + c) / 2) - 1
      const step = 1e-3
      const slopes = [value(step, 0, 0) - value(-step, 0, 0), value(0, step, 0) - value(0, -step, 0), value(0, 0, step) - value(0, 0, -step)].map(difference => difference / (2 * step))
      const variance = [cross, one, other].reduce((sum, {n, sd}, place) => sum + ((slopes[place] ?? 0) * sd) ** 2 / n, 0)
      expectClose(of(cross, one, other).error, Math.sqrt(variance), 1e-5 * Math.sqrt(variance))
    }))
  })

  it('does not mind which parent is which, nor the unit, and holds its value', () => {
    fc.assert(fc.property(group, group, group, (cross, one, other) => {
      const got = of(cross, one, other), back = of(cross, other, one)
      const ounces = (birds: typeof cross) => ({...birds, mean: birds.mean / 28.35, sd: birds.sd / 28.35})
      expectClose(back.heterosis, got.heterosis, 1e-12)
      expectClose(back.p, got.p, 1e-9)
      expectClose(of(ounces(cross), ounces(one), ounces(other)).error, got.error, 1e-9)
      expect(got.interval.low).toBeLessThan(got.heterosis)
      expect(got.interval.high).toBeGreaterThan(got.heterosis)
    }))
  })

  it('covers the true heterosis about 95 times in a hundred with eight birds a group', () => {
    const chance = chanceOf(40), share = () => (chance.next() + 0.5) / 2 ** 32
    const drawn = (mean: number, n: number) => meanAndDeviation(Array.from({length: n}, () => mean * (1 + 0.12 * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share()))))
    let held = 0
    for (let run = 0; run < 2000; run++) {
      const {interval} = of(drawn(2420, 8), drawn(2000, 8), drawn(2400, 8))
      if (interval.low <= 0.1 && 0.1 <= interval.high) held += 1
    }
    // standard error 0.005
    expectClose(held / 2000, 0.95, 0.015)
  })

  it('says nothing of a single bird, of no spread, and of parents not above 0', () => {
    const birds = {n: 5, mean: 10, sd: 1}
    expect(heterosis({n: 1, mean: 10, sd: null}, birds, birds)).toBeNull()
    expect(heterosis({...birds, sd: 0}, {...birds, sd: 0}, {...birds, sd: 0})).toBeNull()
    expect(heterosis(birds, {...birds, mean: -10}, birds)).toBeNull()
  })
  it('refuses a level of 1', () => expect(() => heterosis({n: 2, mean: 1, sd: 1}, {n: 2, mean: 1, sd: 1}, {n: 2, mean: 1, sd: 1}, 1)).toThrow(RangeError))
})
