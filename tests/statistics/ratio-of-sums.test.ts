import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {ratioOfSums} from '../../src/statistics/ratio-of-sums.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'

const part = fc.record({of: fc.nat(40), per: fc.nat(40)})

describe('ratioOfSums(parts)', () => {
  // hen-day and hen-housed by the formula of the Indian Council of Agricultural Research, example as worked at thebigbookproject.org, "Hen-day vs. hen-housed egg production": 10,000 housed, 100 died, 9,108 eggs in a day
  it('has the printed hen-day and hen-housed rate', () => {
    expectClose(ratioOfSums([{of: 9108, per: 9900}])?.ratio ?? NaN, 0.92, 1e-12)
    expectClose(ratioOfSums([{of: 9108, per: 10000}])?.ratio ?? NaN, 0.9108, 1e-12)
  })

  it('is the mean with Student’s interval where all parts are of one size', () => {
    fc.assert(fc.property(fc.array(fc.nat(30), {minLength: 2, maxLength: 12}), fc.integer({min: 1, max: 30}), (counts, days) => {
      const got = ratioOfSums(counts.map(of => ({of, per: days}))), {n, mean, sd} = meanAndDeviation(counts.map(of => of / days))
      const half = (studentQuantile(0.95, n - 1) * (sd ?? NaN)) / Math.sqrt(n)
      expectClose(got?.ratio ?? NaN, mean, 1e-12)
      expect(got?.interval === null).toBe(new Set(counts).size === 1)
      if (got?.interval === null) return
      expectClose(got?.interval?.high ?? NaN, mean + half, 1e-9)
      expectClose(got?.interval?.low ?? NaN, Math.max(0, mean - half), 1e-9)
    }))
  })

  it('holds the rate between its limits, none below nought, whatever the order of the parts', () => {
    fc.assert(fc.property(fc.array(part, {maxLength: 10}), parts => {
      const got = ratioOfSums(parts), turned = ratioOfSums([...parts].reverse())
      if (got === null) {
        expect(parts.every(({per}) => per === 0)).toBe(true)
        return
      }
      expectClose(turned?.ratio ?? NaN, got.ratio, 1e-12)
      if (got.parts < 2) expect(got.interval).toBeNull()
      if (got.interval) {
        expect(got.interval.low).toBeGreaterThanOrEqual(0)
        expect(got.interval.low).toBeLessThanOrEqual(got.ratio + 1e-12)
        expect(got.interval.high).toBeGreaterThanOrEqual(got.ratio - 1e-12)
      }
    }))
  })

  it('holds the truth 92 to 95 times in a hundred in flocks of five hens that differ', () => {
    const chance = chanceOf(31), share = () => chance.next() / 2 ** 32
    let held = 0
    for (let flock = 0; flock < 2000; flock++) {
      const hens = Array.from({length: 5}, () => {
        const rate = 0.6 + 0.3 * (share() + share() + share() - 1.5), days = 10 + chance.whole(30)
        let eggs = 0
        for (let day = 0; day < days; day++) if (share() < rate) eggs += 1
        return {of: eggs, per: days}
      })
      const got = ratioOfSums(hens)?.interval
      if (got && got.low <= 0.6 && 0.6 <= got.high) held += 1
    }
    expectClose(held / 2000, 0.935, 0.015)
  })

  it('gives the value of its example', () => {
    const got = ratioOfSums([{of: 10, per: 15}, {of: 7, per: 15}, {of: 9, per: 10}])
    expect(got?.ratio).toBe(0.65)
    expectClose(got?.interval?.low ?? NaN, 0.1593, 5e-5)
    expectClose(got?.interval?.high ?? NaN, 1.1407, 5e-5)
  })
  it('gives no limits where all are of one rate, and nothing can be seen of how they differ', () => {
    expect(ratioOfSums([{of: 0, per: 5}, {of: 0, per: 9}])).toEqual({ratio: 0, interval: null, parts: 2})
    expect(ratioOfSums([{of: 0.1, per: 1}, {of: 0.3, per: 3}, {of: 0.7, per: 7}])?.interval).toBeNull()
  })
  it('says nothing of no days, and no limits of one hen', () => {
    expect(ratioOfSums([])).toBeNull()
    expect(ratioOfSums([{of: 3, per: 0}])).toBeNull()
    expect(ratioOfSums([{of: 3, per: 6}])).toEqual({ratio: 0.5, interval: null, parts: 1})
  })
  it.each([-1, NaN, Infinity])('refuses %f eggs', of => expect(() => ratioOfSums([{of, per: 1}])).toThrow(RangeError))
})
