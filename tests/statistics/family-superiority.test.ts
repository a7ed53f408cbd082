import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {familySuperiority as ofGroups, ofOneSex} from '../../src/statistics/family-superiority.ts'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {expectClose} from '../expect-close.ts'

const familySuperiority = (one: readonly (readonly number[])[], other: readonly (readonly number[])[], level?: number) => ofGroups(ofOneSex(one), ofOneSex(other), level)
const single = (grades: readonly number[]): number[][] => grades.map(grade => [grade])
const families = fc.array(fc.array(fc.integer({min: 1, max: 6}), {minLength: 1, maxLength: 5}), {minLength: 5, maxLength: 9})

/** Every pair written out; the spread of the two sums of placements, family by family. */
function slow(one: readonly (readonly number[])[], other: readonly (readonly number[])[]) {
  const win = (a: number, b: number): number => (a > b ? 1 : a === b ? 0.5 : 0), n = one.flat().length, m = other.flat().length
  const centre = one.flat().reduce((sum, a) => sum + other.flat().reduce((own, b) => own + win(a, b), 0), 0) / (n * m)
  const piece = (own: readonly number[], all: readonly number[], sign: number): number => own.reduce((sum, a) => sum + all.reduce((inner, b) => inner + (sign > 0 ? win(a, b) : win(b, a)), 0) / all.length - centre, 0)
  const of = (pieces: readonly (readonly number[])[], all: readonly number[], size: number, sign: number): number => (pieces.length / (pieces.length - 1)) * pieces.reduce((sum, own) => sum + piece(own, all, sign) ** 2, 0) / size ** 2
  const worst = (own: readonly (readonly number[])[], all: readonly number[], size: number, sign: number): number => Math.max(of(own, all, size, sign), of(single(own.flat()), all, size, sign))
  return {centre, variance: worst(one, other.flat(), n, 1) + worst(other, one.flat(), m, -1)}
}

describe('familySuperiority(one, other)', () => {
  it('is the placement variance of single chicks where every family is one', () => {
    // by hand: 7 8 8 9 9 against 5 6 7 7 8: 22 of 25 pairs won, ties half; placements 0.6 (7: 2 + 2·½ of 5), 0.9, 0.9, 1, 1 of mean 0.88,
    // squares 0.0784 + 0.0008 + 0.0144·2 …: Σ(V − 0.88)² = 0.108, v = 5/4 · 0.108/25 = 0.0054; the other side 1, 1, 0.9, 0.9, 0.6 alike
    const found = familySuperiority(single([7, 8, 8, 9, 9]), single([5, 6, 7, 7, 8]))
    expectClose(found?.superiority ?? NaN, 0.88, 1e-12)
    // t = 0.38/√0.0108 = 3.6566 of 8 degrees; t of 8 at 97.5 % is 2.306004 in every table
    expectClose(found?.interval?.low ?? NaN, 0.88 - 2.306004 * Math.sqrt(0.0108), 1e-5)
    expect(found?.interval?.high).toBe(1)
    // above the least that five and five families can give, 2/252
    expectClose(found?.p ?? NaN, Math.max(2 / 252, 0.00644), 5e-5)
  })

  it('agrees with every pair written out', () => {
    fc.assert(fc.property(families, families, (one, other) => {
      const found = familySuperiority(one, other), {centre, variance} = slow(one, other)
      expectClose(found?.superiority ?? NaN, centre, 1e-12)
      if (variance < 1e-15) expect(found?.interval).toBeNull()
      else expect(found?.interval).not.toBeNull()
    }))
  })

  it('turns round when the steps do, and is the share of the rank test', () => {
    fc.assert(fc.property(families, families, (one, other) => {
      const there = familySuperiority(one, other), back = familySuperiority(other, one), ranks = rankSum(one.flat(), other.flat())
      expectClose((there?.superiority ?? NaN) + (back?.superiority ?? NaN), 1, 1e-12)
      expectClose(there?.p ?? NaN, back?.p ?? NaN, 1e-9)
      if (ranks.kind === 'compared') expectClose(there?.superiority ?? NaN, ranks.superiority, 1e-12)
      if (there?.interval) expect(there.interval.low <= there.superiority && there.superiority <= there.interval.high && there.interval.low >= 0 && there.interval.high <= 1).toBe(true)
      expect((there?.p ?? NaN) > 0 && (there?.p ?? NaN) <= 1).toBe(true)
    }), {numRuns: 50})
  })

  it('has no interval where all of one step stand above all of the other, and a P of dealing the families', () => {
    expect(familySuperiority(single([9, 9, 9, 9, 9]), single([1, 2, 3, 4, 5]))).toEqual({superiority: 1, interval: null, p: 2 / 252})
    expect(familySuperiority(single([5, 5, 5, 5, 5]), single([5, 5, 5, 5, 5]))).toEqual({superiority: 0.5, interval: null, p: 1})
  })

  it('says nothing under five families, and refuses what is no grade', () => {
    expect(familySuperiority(single([1, 2, 3, 4]), single([1, 2, 3, 4, 5]))).toBeNull()
    expect(familySuperiority([...single([1, 2, 3, 4]), []], single([1, 2, 3, 4, 5]))).toBeNull()
    expect(() => familySuperiority(single([1, 2, 3, 4, NaN]), single([1, 2, 3, 4, 5]))).toThrow(RangeError)
    expect(() => familySuperiority(single([1, 2, 3, 4, 5]), single([1, 2, 3, 4, 5]), 1)).toThrow(RangeError)
  })

  it('tells a change of alike families where there is none about once in twenty, and one there is; the rank test far oftener', () => {
    const chance = chanceOf(3), share = (): number => (chance.next() + 0.5) / 2 ** 32, normal = (): number => Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())
    const step = (shift: number) => Array.from({length: 6}, () => {
      const sire = normal() * 0.6
      return Array.from({length: 8}, () => Math.round((shift + sire + normal()) / 0.75))
    })
    const told = {none: 0, some: 0, ranks: 0}, runs = 400
    for (let run = 0; run < runs; run++) {
      const [one, other, higher] = [step(0), step(0), step(1.6)]
      if ((familySuperiority(one, other)?.p ?? 1) < 0.05) told.none++
      if ((familySuperiority(higher, other)?.p ?? 1) < 0.05) told.some++
      const ranks = rankSum(one.flat(), other.flat())
      if (ranks.kind === 'compared' && ranks.p < 0.05) told.ranks++
    }
    expect(told.none / runs).toBeLessThan(0.09)
    expect(told.some / runs).toBeGreaterThan(0.8)
    expect(told.ranks / runs).toBeGreaterThan(0.2)
  })

  it('holds cocks against cocks and hens against hens: pairs and placements written out sex by sex', () => {
    const chick = fc.record({group: fc.constantFrom('male', 'female'), grade: fc.integer({min: 1, max: 6})}), both = fc.array(fc.array(chick, {minLength: 1, maxLength: 4}), {minLength: 5, maxLength: 8})
    fc.assert(fc.property(both, both, (one, other) => {
      const found = ofGroups(one, other)
      if (!found) return
      const of = (families: typeof one, sex: string) => families.flat().filter(({group}) => group === sex).map(({grade}) => grade)
      const win = (a: number, b: number): number => (a > b ? 1 : a === b ? 0.5 : 0)
      const sexes = ['male', 'female'].map(sex => ({sex, n: of(one, sex).length, m: of(other, sex).length})).filter(({n, m}) => n > 0 && m > 0)
      const raw = sexes.map(({n, m}) => (n * m) / (n + m + 1)), all = raw.reduce((sum, weight) => sum + weight, 0)
      const share = (sex: string): number => of(one, sex).reduce((sum, a) => sum + of(other, sex).reduce((own, b) => own + win(a, b), 0), 0) / (of(one, sex).length * of(other, sex).length)
      expectClose(found.superiority, sexes.reduce((sum, {sex}, place) => sum + ((raw[place] ?? 0) / all) * share(sex), 0), 1e-12)
      const turned = ofGroups(other, one)
      expectClose(turned?.superiority ?? NaN, 1 - found.superiority, 1e-12)
      expectClose(turned?.p ?? NaN, found.p, 1e-9)
      // cocks all graded ten marks higher: nothing changes
      const lifted = (families: typeof one) => families.map(own => own.map(({group, grade}) => ({group, grade: group === 'male' ? grade + 10 : grade})))
      expect(ofGroups(lifted(one), lifted(other))).toEqual(found)
    }), {numRuns: 60})
  })
})
