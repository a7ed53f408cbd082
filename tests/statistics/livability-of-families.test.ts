import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {varianceByFamilies} from '../../src/statistics/family-bootstrap.ts'
import {livabilityOfFamilies} from '../../src/statistics/livability-of-families.ts'
import {livability, type Watched} from '../../src/statistics/livability.ts'
import {expectClose} from '../expect-close.ts'

/** Freireich et al. 1963, Blood 21:699, as in the test of `livability`. */
const REMISSION: Watched[] = [6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35].map(weeks => ({age: Math.abs(weeks), died: weeks > 0}))
const bird = fc.record({age: fc.integer({min: 0, max: 20}), died: fc.boolean()})
const flock = fc.array(fc.array(bird, {maxLength: 6}), {maxLength: 9})
const spread = ({share, effective}: {readonly share: number; readonly effective: number}) => (share * (1 - share)) / effective

describe('livabilityOfFamilies(families, age)', () => {
  // the printed errors of the product-limit table (as in the test of `livability`), times m/(m − 1)
  it.each([[6, 0.0764], [10, 0.0963], [23, 0.1346]])('has Greenwood’s error at %i weeks, of every patient by himself', (age, error) => {
    const got = livabilityOfFamilies(REMISSION.map(one => [one]), age)
    if (!got) throw new Error('nothing is known')
    expectClose(Math.sqrt((spread(got) * 20) / 21), error, 0.0001)
  })

  it('has the variance of families drawn anew where no bird left', () => {
    const counts = [{k: 9, n: 10}, {k: 12, n: 12}, {k: 5, n: 8}, {k: 11, n: 11}, {k: 7, n: 9}]
    const got = livabilityOfFamilies(counts.map(({k, n}) => Array.from({length: n}, (_, place) => (place < k ? {age: 60, died: false} : {age: 20, died: true}))), 56)
    if (!got) throw new Error('nothing is known')
    // the bootstrap is itself an estimate, and the other a first approximation to it
    expectClose(spread(got) / varianceByFamilies(counts, {seed: 1, draws: 20000}), 1, 0.08)
  })

  it('has the share of `livability`, and limits no narrower', () => {
    fc.assert(fc.property(flock, fc.integer({min: 1, max: 25}), (families, age) => {
      const got = livabilityOfFamilies(families, age), plain = livability(families.flat(), age)
      expect(got === null).toBe(plain === null)
      if (!got || !plain) return
      expect({share: got.share, n: got.n, deaths: got.deaths, left: got.left}).toEqual({share: plain.share, n: plain.n, deaths: plain.deaths, left: plain.left})
      expect(got.low).toBeLessThanOrEqual(plain.low + 1e-12)
      expect(got.high).toBeGreaterThanOrEqual(plain.high - 1e-12)
      expect(got.kind).toBe(families.filter(({length}) => length > 0).length < 5 ? 'these-chicks' : 'families')
    }))
  })

  it('covers the truth 95 times in a hundred or more where families differ, where the plain limits fall short', () => {
    const chance = chanceOf(8), share = () => chance.next() / 2 ** 32
    let held = 0, plainly = 0
    for (let run = 0; run < 1500; run++) {
      const families = Array.from({length: 10}, () => {
        // half of the families lose one in twenty, half seven in twenty: 0.2 on average
        const loss = share() < 0.5 ? 0.05 : 0.35
        return Array.from({length: 8}, () => {
          const death = share() < loss ? 56 * share() : Infinity, sold = share() < 0.2 ? 56 * share() : 56
          return {age: Math.min(death, sold), died: death < sold}
        })
      })
      const got = livabilityOfFamilies(families, 56), plain = livability(families.flat(), 56)
      if (got && got.low <= 0.8 && 0.8 <= got.high) held += 1
      if (plain && plain.low <= 0.8 && 0.8 <= plain.high) plainly += 1
    }
    expect(held / 1500).toBeGreaterThan(0.94)
    expect(plainly / 1500).toBeLessThan(0.92)
  })

  it('speaks of these chicks alone under five families, and of nothing without birds', () => {
    expect(livabilityOfFamilies([[{age: 60, died: false}, {age: 10, died: true}]], 56)).toMatchObject({kind: 'these-chicks', share: 0.5, families: 1})
    expect(livabilityOfFamilies([], 56)).toBeNull()
    expect(livabilityOfFamilies([[], []], 56)).toBeNull()
  })
})
