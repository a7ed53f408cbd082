import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {familyShare, varianceByFamilies} from '../../src/statistics/family-bootstrap.ts'
import type {Count} from '../../src/statistics/share-difference.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

const family = fc.integer({min: 1, max: 25}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))
const families = fc.array(family, {minLength: 5, maxLength: 12})
const sum = (rows: readonly Count[], what: 'k' | 'n') => rows.reduce((total, row) => total + row[what], 0)

describe('familyShare(families, resampling)', () => {
  it('has the bootstrap variance of the share, by going through every flock that can be drawn', () => {
    const rows = [{k: 9, n: 10}, {k: 12, n: 12}, {k: 5, n: 8}, {k: 11, n: 11}, {k: 9, n: 9}]
    const shares: number[] = []
    for (let flock = 0; flock < 5 ** 5; flock++) {
      const drawn = [0, 1, 2, 3, 4].map(place => rows[Math.floor(flock / 5 ** place) % 5] ?? {k: 0, n: 0})
      shares.push(sum(drawn, 'k') / sum(drawn, 'n'))
    }
    const mean = shares.reduce((total, share) => total + share, 0) / shares.length
    const variance = shares.reduce((total, share) => total + (share - mean) ** 2, 0) / shares.length
    // 20 000 draws: relative standard error of a variance about 1 %
    expectClose(varianceByFamilies(rows, {seed: 5, draws: 20_000}), (variance * 5) / 4, 0.04 * variance)
  })

  it('is near Σ(k − n·p)²/N² · m/(m − 1), the linear form of the same variance, for many families', () => {
    // Cochran 1977, Sampling Techniques, 3.12 (a share from clusters of unequal size; from memory)
    const rows = Array.from({length: 60}, (_, place) => ({k: (place * 7) % 9, n: 8 + (place % 5)}))
    const p = sum(rows, 'k') / sum(rows, 'n')
    const linear = (rows.reduce((total, {k, n}) => total + (k - n * p) ** 2, 0) / sum(rows, 'n') ** 2) * (60 / 59)
    expectClose(varianceByFamilies(rows, {seed: 11, draws: 8000}), linear, 0.08 * linear)
  })

  it('holds the share, stays between 0 and 1, tells no more than its chicks, and is the same for the same seed', () => {
    fc.assert(fc.property(families, fc.nat(1000), (rows, seed) => {
      const got = familyShare(rows, {seed, draws: 200})
      if (!got) throw new Error('no interval')
      const wilson = wilsonInterval(sum(rows, 'k'), sum(rows, 'n'))
      expect(got.kind).toBe('families')
      expect(got.low).toBeGreaterThanOrEqual(0)
      expect(got.low).toBeLessThanOrEqual(got.share)
      expect(got.high).toBeGreaterThanOrEqual(got.share)
      expect(got.high).toBeLessThanOrEqual(1)
      expect(got.high - got.low).toBeGreaterThan((wilson.high - wilson.low) * 0.999)
      expect(got.effective).toBeGreaterThanOrEqual(1)
      expect(got.effective).toBeLessThanOrEqual(got.n)
      expect(familyShare(rows, {seed, draws: 200})).toEqual(got)
    }), {numRuns: 60})
  })

  it('mirrors when failures are counted', () => {
    fc.assert(fc.property(families, rows => {
      const got = familyShare(rows, {seed: 1, draws: 100}), back = familyShare(rows.map(({k, n}) => ({k: n - k, n})), {seed: 1, draws: 100})
      expectClose(got?.low ?? NaN, 1 - (back?.high ?? NaN), 1e-9)
      expectClose(got?.high ?? NaN, 1 - (back?.low ?? NaN), 1e-9)
    }), {numRuns: 40})
  })

  it('speaks of these chicks alone under five families, with Wilson’s limits', () => {
    const got = familyShare([{k: 9, n: 10}, {k: 0, n: 0}, {k: 12, n: 12}, {k: 5, n: 8}, {k: 11, n: 11}], {seed: 1})
    expect(got).toMatchObject({kind: 'these-chicks', n: 41, families: 4, effective: 41, ...wilsonInterval(37, 41)})
  })

  it('does not take five clean families for 120 independent chicks', () => {
    const got = familyShare(Array.from({length: 5}, () => ({k: 24, n: 24})), {seed: 1})
    expect(got?.high).toBe(1)
    expect(got?.low).toBeLessThan(wilsonInterval(120, 120).low)
    expectClose(got?.effective ?? NaN, 120 / 3.3, 1e-12)
  })

  it('gives the value of its example', () => {
    const got = familyShare([{k: 9, n: 10}, {k: 12, n: 12}, {k: 5, n: 8}, {k: 11, n: 11}, {k: 9, n: 9}], {seed: 1})
    expectClose(got?.share ?? NaN, 0.92, 1e-12)
    expectClose(got?.low ?? NaN, 0.5971, 0.00005)
    expectClose(got?.high ?? NaN, 0.9889, 0.00005)
  })
  it('lies above the truth with its lower end oftener than 2.5 in a hundred where cocks are much unlike, as the methods page says, and not where they are a little', () => {
    const chance = chanceOf(9), happens = (probability: number): boolean => (chance.next() + 0.5) / 2 ** 32 < probability
    // a cock's chicks are all true, or a share `off` less of them: shares of 0.9 with a variance among cocks of likeness · 0.9 · 0.1
    const above = (likeness: number): number => {
      const odd = 1 / (1 + 9 * likeness), off = 0.1 / odd
      let count = 0
      for (let flock = 0; flock < 600; flock++) {
        const rows = Array.from({length: 12}, () => {
          const truth = happens(odd) ? 1 - off : 1, n = 4 + chance.whole(21)
          return {k: Array.from({length: n}, () => happens(truth)).filter(Boolean).length, n}
        })
        if ((familyShare(rows, {seed: 1, draws: 200})?.low ?? 0) > 0.9) count++
      }
      return count / 600
    }
    const alike = above(0.02), unlike = above(0.3)
    expect(alike).toBeLessThan(0.04)
    expect(unlike).toBeGreaterThan(0.04)
    expect(unlike).toBeLessThan(0.12)
  })
  it('says nothing of no chick', () => expect(familyShare([{k: 0, n: 0}], {seed: 1})).toBeNull())
  it('refuses what is no count, no seed, no level and too few draws', () => {
    const rows = Array.from({length: 5}, () => ({k: 1, n: 2}))
    expect(() => familyShare([{k: 3, n: 2}], {seed: 1})).toThrow(RangeError)
    expect(() => familyShare(rows, {seed: -1})).toThrow(RangeError)
    expect(() => familyShare(rows, {seed: 1, level: 1})).toThrow(RangeError)
    expect(() => familyShare(rows, {seed: 1, draws: 1})).toThrow(RangeError)
    expect(() => varianceByFamilies([{k: 1, n: 2}], {seed: 1})).toThrow(RangeError)
  })
})
