import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {familyDifference} from '../../src/statistics/family-difference.ts'
import {scoreInterval} from '../../src/statistics/score-interval.ts'
import {shareDifference} from '../../src/statistics/share-difference.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'

const family = fc.integer({min: 1, max: 25}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))

describe('familyDifference(one, other, resampling)', () => {
  it('is Newcombe’s printed interval where there are too few families', () => {
    // Newcombe 1998, Stat. Med. 17:873–890, table II, method 10: 56/70 − 48/80 gives .0524 to .3339
    const got = familyDifference([{k: 30, n: 35}, {k: 26, n: 35}], [{k: 48, n: 80}], {seed: 1})
    expect(got?.kind).toBe('these-chicks')
    expectClose(got?.low ?? NaN, 0.0524, 0.00005)
    expectClose(got?.high ?? NaN, 0.3339, 0.00005)
  })

  it('holds the difference, stays between −1 and 1, is wider than the plain one, and turns over', () => {
    fc.assert(fc.property(fc.array(family, {minLength: 5, maxLength: 8}), fc.array(family, {minLength: 5, maxLength: 8}), (one, other) => {
      const got = familyDifference(one, other, {seed: 4, draws: 100})
      if (!got) throw new Error('no interval')
      const of = (rows: typeof one) => ({k: rows.reduce((sum, {k}) => sum + k, 0), n: rows.reduce((sum, {n}) => sum + n, 0)})
      const plain = shareDifference(of(one), of(other))
      expect(got.kind).toBe('families')
      expectClose(got.difference, plain.difference, 1e-15)
      expect(got.low).toBeLessThanOrEqual(got.difference)
      expect(got.high).toBeGreaterThanOrEqual(got.difference)
      expect(got.low).toBeGreaterThanOrEqual(-1)
      expect(got.high).toBeLessThanOrEqual(1)
      expect(got.high - got.low).toBeGreaterThan((plain.high - plain.low) * 0.999)
    }), {numRuns: 50})
  })

  it('is Newcombe’s of the two families’ sizes with one t for both, of Satterthwaite’s degrees of freedom', () => {
    fc.assert(fc.property(fc.array(family, {minLength: 5, maxLength: 8}), fc.array(family, {minLength: 5, maxLength: 8}), (one, other) => {
      const got = familyDifference(one, other, {seed: 4, draws: 100})
      if (!got) throw new Error('no interval')
      const v = [got.one, got.other].map(({share, effective}) => (share * (1 - share)) / effective), [a = 0, b = 0] = v, m = one.length, k = other.length
      const freedom = a + b > 0 ? (a + b) ** 2 / (a ** 2 / (m - 1) + b ** 2 / (k - 1)) : m + k - 2, t = studentQuantile(0.95, freedom)
      expect(freedom).toBeGreaterThanOrEqual(Math.min(m, k) - 1 - 1e-9)
      expect(freedom).toBeLessThanOrEqual(m + k - 2 + 1e-9)
      const of = ({share, effective}: {readonly share: number; readonly effective: number}) => scoreInterval(share, effective, t), first = of(got.one), second = of(got.other)
      expectClose(got.low, Math.max(-1, got.difference - Math.sqrt((got.one.share - first.low) ** 2 + (second.high - got.other.share) ** 2)), 1e-9)
      expectClose(got.high, Math.min(1, got.difference + Math.sqrt((first.high - got.one.share) ** 2 + (got.other.share - second.low) ** 2)), 1e-9)
    }), {numRuns: 50})
  })

  it('covers a true difference of nought where sires differ, and the plain one does not', () => {
    const chance = chanceOf(8), share = () => chance.next() / 2 ** 32
    const flock = () => Array.from({length: 8}, () => {
      const own = 0.6 + 0.4 * share()
      let k = 0
      for (let chick = 0; chick < 15; chick++) if (share() < own) k += 1
      return {k, n: 15}
    })
    let held = 0, plain = 0
    const runs = 1500
    for (let run = 0; run < runs; run++) {
      const one = flock(), other = flock(), got = familyDifference(one, other, {seed: run, draws: 150})
      const bare = shareDifference({k: one.reduce((sum, {k}) => sum + k, 0), n: 120}, {k: other.reduce((sum, {k}) => sum + k, 0), n: 120})
      if (got && got.low <= 0 && got.high >= 0) held += 1
      if (bare.low <= 0 && bare.high >= 0) plain += 1
    }
    expect(held / runs).toBeGreaterThan(0.935)
    expect(held / runs).toBeLessThan(0.985)
    expect(plain / runs).toBeLessThan(0.9)
  })

  it('says nothing where a step has no chick', () => expect(familyDifference([], [{k: 1, n: 2}], {seed: 1})).toBeNull())
  it('takes the last seed there is', () => expect(familyDifference([{k: 1, n: 2}], [{k: 1, n: 2}], {seed: 0xffffffff})?.difference).toBe(0))
})
