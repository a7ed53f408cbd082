import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chicksToReach, type SeasonReared} from '../../src/findings/chicks-to-reach.ts'
import {clopperPearson} from '../../src/statistics/clopper-pearson.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import '../seeded.ts'

const seasons = (...counts: readonly (readonly [number, number])[]): readonly SeasonReared[] => counts.map(([k, n], index) => ({season: 2024 + index, k, n, families: [{k, n}]}))

describe('chicksToReach(seasons, window, mark, by, next)', () => {
  it('is worked by hand for the share itself', () => {
    // next season the 2 of 10 drop out: (8 + m)/(20 + m) ≥ ½ at m = 4
    expect(chicksToReach(seasons([2, 10], [8, 20]), 2, 0.5, 'estimate', 2026)).toEqual({chicks: 4, season: 2026, seasons: 1, reared: 20, without: [2024], sires: 0})
    // ¾: 28 in one season are more than 20, in two seasons only new ones count: those of one are enough, if all are right
    expect(chicksToReach(seasons([2, 10], [8, 20]), 2, 0.75, 'estimate', 2026)).toMatchObject({chicks: 20, season: 2027, seasons: 2})
  })

  it('says that the rate is not enough where it is not', () => {
    // by Clopper and Pearson 36 of 36 are at 90.3%, 35 of 35 at 90.0% less a little (0.025^(1/35) = 0.8999)
    expect(chicksToReach(seasons([3, 3], [2, 4]), 2, 0.9, 'exact', 2026)).toEqual({chicks: 36, season: null, seasons: 2, reared: 4, without: [2024, 2025], sires: 0})
    expect(chicksToReach(seasons([0, 0]), 1, 0.9, 'estimate', 2026)).toMatchObject({chicks: 1, season: null, reared: 0})
    expect(chicksToReach(seasons([3, 4]), 1, 1, 'exact', 2026)).toMatchObject({chicks: null, season: null})
  })

  it('asks for more sires where there are under five', () => {
    const families = [{k: 8, n: 10}, {k: 9, n: 10}, {k: 7, n: 10}]
    expect(chicksToReach([{season: 2024, k: 24, n: 30, families}], 2, 0.6, 'families', 2025)).toMatchObject({sires: 2})
  })

  it('draws the families as they then are, by their slow twin', () => {
    const alike = Array.from({length: 6}, () => ({k: 9, n: 10})), kept = [{season: 2024, k: 54, n: 60, families: alike}]
    const {chicks, season, sires} = chicksToReach(kept, 2, 0.85, 'families', 2025), low = (more: number) => familyShare(alike.map(({k, n}, place) => ({k: k + Math.floor(more / 6) + (place < more % 6 ? 1 : 0), n: n + Math.floor(more / 6) + (place < more % 6 ? 1 : 0)})), {seed: 1})!.low
    expect([season, sires]).toEqual([2025, 0])
    expect(low(chicks!)).toBeGreaterThanOrEqual(0.85)
    expect(low(chicks! - 1)).toBeLessThan(0.85)
  })

  it('asks for the sires it takes where five tell too little however many chicks they have', () => {
    // all of them right, n* of m sires tends to 10m: with five and Student’s t of 4, 2.776, the lower limit to 50/(50 + 2.776²) = 86.6%; with six, 2.571, to 90.1%
    const kept = (rate: number) => [{season: 2024, k: rate, n: rate, families: Array.from({length: 5}, () => ({k: rate / 5, n: rate / 5}))}]
    expect(chicksToReach(kept(500), 1, 0.85, 'families', 2025)).toMatchObject({season: 2025, sires: 0})
    // a season’s 500, n* 500/(1 + (500/6 − 1)/10) = 54.2: 54.2/(54.2 + 2.571²) = 89.1%
    expect(chicksToReach(kept(500), 1, 0.88, 'families', 2025)).toMatchObject({chicks: 500, season: 2025, sires: 1})
    // fifteen tend to 97.02%, and 10,000 chicks of them leave 96.98%
    expect(chicksToReach(kept(20), 1, 0.97, 'families', 2025)).toMatchObject({season: null, sires: 11})
  })

  it('is what counting chick by chick finds, season by season', () => {
    const count = fc.integer({min: 0, max: 30}).chain(n => fc.tuple(fc.integer({min: 0, max: n}), fc.constant(n)))
    fc.assert(fc.property(fc.array(count, {minLength: 1, maxLength: 3}), fc.constantFrom(0.3, 0.5, 0.8, 0.9), fc.constantFrom('estimate', 'exact'), (counts, mark, by) => {
      const own = seasons(...counts), window = 3, rate = own.findLast(({n}) => n > 0)?.n ?? 0, found = chicksToReach(own, window, mark, by, 2030)
      let slow: {chicks: number; season: number} | null = null
      for (let after = 1; after <= window && !slow; after++) {
        const kept = own.slice(Math.min(own.length, Math.max(0, own.length + after - window)))
        for (let more = kept.length === 0 ? Math.max(1, rate) : 1; more <= after * rate && !slow; more++) {
          const k = kept.reduce((sum, each) => sum + each.k, more), n = kept.reduce((sum, each) => sum + each.n, more)
          if ((by === 'exact' ? clopperPearson(k, n).low : k / n) >= mark) slow = {chicks: more, season: 2030 + after - 1}
        }
      }
      expect(found.season).toBe(slow?.season ?? null)
      if (slow) expect(found.chicks).toBe(slow.chicks)
    }), {numRuns: 60})
  })
})
