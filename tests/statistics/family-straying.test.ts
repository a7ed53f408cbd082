import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {familyStraying} from '../../src/statistics/family-straying.ts'
import {strayings} from '../../src/statistics/relative-deviations.ts'
import {welchT} from './welch-t.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'

const families = fc.array(fc.array(fc.integer({min: 0, max: 40}).map(tenths => tenths / 100), {minLength: 1, maxLength: 5}), {minLength: 5, maxLength: 9})
const single = (values: readonly number[]): number[][] => values.map(value => [value])

describe('familyStraying(one, other)', () => {
  it('is Welch’s t where every family is one bird', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 0, max: 40}), {minLength: 5, maxLength: 9}), fc.array(fc.integer({min: 0, max: 40}), {minLength: 5, maxLength: 9}), (one, other) => {
      const found = familyStraying(single(one), single(other)), t = welchT(meanAndDeviation(one), meanAndDeviation(other))
      if (!found || !t) return
      expectClose(found.difference, t.difference, 1e-9)
      if (found.p > 0.02) expectClose(found.p, t.p, 1e-9)
    }))
  })

  it('turns round with the steps, and counts a family of two alike as one', () => {
    fc.assert(fc.property(families, families, (one, other) => {
      const there = familyStraying(one, other), back = familyStraying(other, one), twice = (all: typeof one) => all.map(own => [...own, ...own])
      expect(there === null).toBe(back === null)
      if (!there || !back) return
      expectClose(there.p, back.p, 1e-9)
      expectClose(familyStraying(twice(one), twice(other))?.p ?? NaN, there.p, 1e-9)
    }))
  })

  it('gives the value of its example', () => {
    // by hand: means 0.14 and 0.34; squares 0.012 each, v = 5/4 · 0.012/25 = 0.0006; t = −0.2/√0.0012 = −5.77 of 8 degrees, P 0.0004; no less than 2/C(10, 5) = 2/252
    expect(familyStraying(single([0.1, 0.2, 0.1, 0.2, 0.1]), single([0.3, 0.4, 0.3, 0.4, 0.3]))).toEqual({difference: expect.closeTo(-0.2, 12) as number, p: 2 / 252})
  })

  it('says nothing under five families or where none strays otherwise, and refuses what is no number', () => {
    expect(familyStraying(single([1, 2, 3, 4]), single([1, 2, 3, 4, 5]))).toBeNull()
    expect(familyStraying(single([1, 1, 1, 1, 1]), single([1, 1, 1, 1, 1]))).toBeNull()
    expect(() => familyStraying(single([1, 2, 3, 4, NaN]), single([1, 2, 3, 4, 5]))).toThrow(RangeError)
  })

  it('tells a change of alike families where there is none no oftener than once in twenty, and one there is', () => {
    const chance = chanceOf(5), share = (): number => (chance.next() + 0.5) / 2 ** 32, normal = (): number => Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())
    const step = (cv: number): number[][] => {
      const values = Array.from({length: 6}, () => normal()).flatMap(cock => Array.from({length: 8}, () => 2000 * (1 + cv * (0.5 * cock + Math.sqrt(0.75) * normal())))), away = strayings(values)
      return Array.from({length: 6}, (_, family) => away.slice(8 * family, 8 * family + 8).filter(value => value !== null))
    }
    let none = 0, some = 0
    for (let run = 0; run < 400; run++) {
      if ((familyStraying(step(0.1), step(0.1))?.p ?? 1) < 0.05) none++
      if ((familyStraying(step(0.04), step(0.1))?.p ?? 1) < 0.05) some++
    }
    expect(none / 400).toBeLessThan(0.08)
    expect(some / 400).toBeGreaterThan(0.7)
  })
})
