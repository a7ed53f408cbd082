import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {familyTrend} from '../../src/statistics/family-trend.ts'
import {shareTrend} from '../../src/statistics/share-trend.ts'
import {expectClose} from '../expect-close.ts'

const family = fc.integer({min: 1, max: 15}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))
const steps = fc.array(fc.array(family, {minLength: 2, maxLength: 6}), {minLength: 2, maxLength: 5})

describe('familyTrend(steps, resampling)', () => {
  it('has the slope of the plain trend, and stands between its limits', () => {
    fc.assert(fc.property(steps, all => {
      const got = familyTrend(all, {seed: 2, draws: 100})
      if (got.kind !== 'families') return
      const plain = shareTrend(all.map(rows => ({k: rows.reduce((sum, {k}) => sum + k, 0), n: rows.reduce((sum, {n}) => sum + n, 0)})))
      expectClose(got.slope, plain.slope ?? NaN, 1e-12)
      expect(got.interval.low).toBeLessThanOrEqual(got.slope + 1e-12)
      expect(got.interval.high).toBeGreaterThanOrEqual(got.slope - 1e-12)
      expect(got.p).toBeGreaterThanOrEqual(0)
      expect(got.p).toBeLessThanOrEqual(1)
      const back = familyTrend([...all].reverse(), {seed: 2, draws: 100})
      if (back.kind === 'families') expectClose(back.slope, -got.slope, 1e-12)
    }), {numRuns: 60})
  })

  it('finds a rise where there is one, and where sires only differ calls one in about 5 of a hundred; the plain test in many more', () => {
    const chance = chanceOf(21), share = () => chance.next() / 2 ** 32
    const flock = (middle: number) => Array.from({length: 6}, () => {
      const own = middle - 0.2 + 0.4 * share()
      let k = 0
      for (let chick = 0; chick < 15; chick++) if (share() < own) k += 1
      return {k, n: 15}
    })
    const runs = 600
    const called = (rise: number) => {
      let family = 0, plain = 0
      for (let run = 0; run < runs; run++) {
        const all = [0, 1, 2, 3].map(step => flock(0.5 + rise * step)), got = familyTrend(all, {seed: run, draws: 100})
        if (got.kind === 'families' && got.p <= 0.05) family += 1
        if (shareTrend(all.map(rows => ({k: rows.reduce((sum, {k}) => sum + k, 0), n: 90}))).p <= 0.05) plain += 1
      }
      return {family: family / runs, plain: plain / runs}
    }
    const none = called(0), some = called(0.1)
    expect(none.family).toBeLessThan(0.075)
    expect(none.family).toBeGreaterThan(0.02)
    expect(none.plain).toBeGreaterThan(0.1)
    expect(some.family).toBeGreaterThan(0.8)
  })

  it('says why there is none', () => {
    expect(familyTrend([[{k: 3, n: 10}], [{k: 6, n: 10}]], {seed: 1}).kind).toBe('few-families')
    expect(familyTrend([], {seed: 1}).kind).toBe('no-trend')
    expect(familyTrend([[{k: 1, n: 2}, {k: 1, n: 2}]], {seed: 1}).kind).toBe('no-trend')
    const clean = Array.from({length: 5}, () => ({k: 4, n: 4}))
    expect(familyTrend([clean, clean], {seed: 1})).toEqual({kind: 'no-trend', families: 10, steps: 2})
  })
  it('refuses scores that do not fit', () => expect(() => familyTrend([[]], {seed: 1}, [1, 2])).toThrow(RangeError))
})
