import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {CannotSay, Share} from '../../src/findings/estimate.ts'
import {hatchResults} from '../../src/findings/hatch-results.ts'
import type {Hatch} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F1, hatch, holm, logbook, pen, strainStep} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

const value = (share: Share | CannotSay): number => (share.kind === 'share' ? share.value : NaN)
const of = (...hatches: Hatch[]) => hatchResults(logbook('2025-10-30', {hatches}))
const [A, B] = [pen('2024-A', 2024), pen('2024-B', 2024)]
const pens = (...which: (typeof A)[]): Hatch['pens'] => which.map(each => ({pen: each, eggs: null}))

describe('hatchResults(book)', () => {
  // Worked by hand from one setting of 48: the parts add up, 5 + 2 + 4 + 37 = 48. Limits recomputed by independent code.
  it('works fertility, hatch of fertile and of set', () => {
    const [got] = of(hatch('2024-03', {eggs: 48, clear: 5, deadInGerm: 2, deadInShell: 4, hatched: 37})).hatches
    if (!got) throw new Error('no hatch')
    expect(got.fertile).toBe(43)
    expectClose(value(got.fertility), 43 / 48, 0)
    expectClose(value(got.hatchOfFertile), 37 / 43, 0)
    expectClose(value(got.hatchOfSet), 37 / 48, 0)
    expectClose(got.hatchOfSet.kind === 'share' ? got.hatchOfSet.interval.low : NaN, 0.634607, 1e-6)
    expectClose(got.hatchOfSet.kind === 'share' ? got.hatchOfSet.interval.high : NaN, 0.866922, 1e-6)
  })

  it('works the dead of each stage of the fertile eggs', () => {
    const [got] = of(hatch('2024-03', {eggs: 48, clear: 5, deadInGerm: 2, deadInShell: 4, hatched: 37})).hatches // by hand, from one setting whose parts add up
    expectClose(value(got?.germDeath ?? {kind: 'cannot-say', have: 0, need: 1, why: 'not-counted', leftOut: []}), 2 / 43, 0)
    expectClose(value(got?.shellDeath ?? {kind: 'cannot-say', have: 0, need: 1, why: 'not-counted', leftOut: []}), 4 / 43, 0)
    expect(of(hatch('1', {eggs: 48, deadInGerm: 2, hatched: 37})).all.germDeath).toMatchObject({kind: 'cannot-say', leftOut: [{count: 1, why: 'not-candled'}]})
    expect(of(hatch('1', {eggs: 48, clear: 5, hatched: 37, step: F1})).all.shellDeath).toMatchObject({kind: 'cannot-say', why: 'not-counted', leftOut: [{count: 1, why: 'not-counted'}]})
  })

  it('takes bad eggs off nothing', () => {
    const [got] = of(hatch('1', {eggs: 20, clear: 2, bad: 3, hatched: 12})).hatches
    expect([got?.fertile, value(got?.fertility ?? {kind: 'cannot-say', have: 0, need: 1, why: 'not-counted', leftOut: []})]).toEqual([18, 0.9])
  })

  it('cannot tell fertility where clear eggs were not counted, but can tell hatch of set', () => {
    const [got] = of(hatch('1', {eggs: 20, hatched: 12})).hatches
    expect(got?.fertility).toMatchObject({kind: 'cannot-say', why: 'not-counted', leftOut: [{count: 1, why: 'not-candled'}]})
    expect(got?.hatchOfFertile).toMatchObject({kind: 'cannot-say', why: 'not-counted', leftOut: [{count: 1, why: 'not-candled'}]})
    expect(got?.hatchOfSet.leftOut).toEqual([])
    expect(value(got?.hatchOfSet ?? {kind: 'cannot-say', have: 0, need: 1, why: 'not-counted', leftOut: []})).toBe(0.6)
  })

  it('says for each rate what was left out of it, and why', () => {
    const leftOut = (...hatches: Hatch[]) => (({fertility, hatchOfFertile, hatchOfSet}) => [fertility, hatchOfFertile, hatchOfSet].map(each => each.leftOut))(of(...hatches).all)
    const one = (why: string) => [{count: 1, why}]
    const candled = hatch('1', {eggs: 20, clear: 2, hatched: 9, step: F1})
    const uncandled = hatch('2', {eggs: 10, hatched: 5, step: F1})
    expect(of(candled, uncandled).all.hatchOfFertile).toMatchObject({kind: 'share', count: 9, total: 18})
    expect(leftOut(candled, uncandled)).toEqual([one('not-candled'), one('not-candled'), []])
    expect(leftOut(candled, hatch('2', {hatched: 5, step: F1}))).toEqual([one('not-counted'), one('not-counted'), one('not-counted')])
    expect(leftOut(candled, hatch('2', {eggs: 10, clear: 1, on: date('2024-03-30'), step: F1}))).toEqual([[], one('not-counted'), one('not-counted')])
    expect(leftOut(candled, hatch('2', {eggs: 10, on: date('2024-03-30'), step: F1}))).toEqual([one('not-candled'), one('not-counted'), one('not-counted')])
    expect(leftOut(candled, hatch('2', {eggs: 10, step: F1}))).toEqual([one('not-candled'), one('not-finished'), one('not-finished')])
  })

  it('says of a setting under way that it is not finished', () => {
    const [got] = of(hatch('1', {eggs: 20, clear: 4})).hatches
    expect(got?.fertility.kind).toBe('share')
    expect(got?.hatchOfSet).toMatchObject({kind: 'cannot-say', why: 'not-finished', leftOut: [{count: 1, why: 'not-finished'}]})
  })

  it.each([{eggs: 0, clear: 0, hatched: 0}, {eggs: 5, clear: 9, hatched: 2}, {eggs: 5, clear: 3, hatched: 4}, {}])('gives no impossible share of %j', counts => {
    for (const share of (({fertility, hatchOfFertile, hatchOfSet}) => [fertility, hatchOfFertile, hatchOfSet])(of(hatch('1', counts)).all)) {
      if (share.kind === 'share') expect(share.value).toBeLessThanOrEqual(1)
    }
  })

  it('sums over what was counted and says what was not', () => {
    const {all, pens: byPen, broody, incubator, steps} = of(
      hatch('1', {pens: pens(A), eggs: 20, clear: 2, hatched: 15, machine: 'I1', step: F1}),
      hatch('2', {pens: pens(A), eggs: 10, hatched: 5, broody: bird('H-9', 'female'), step: F1}),
      hatch('3', {pens: pens(A, B), eggs: 12, clear: 2, machine: 'I1', step: F1}),
      hatch('4', {pens: pens(B), eggs: 10, clear: 1, hatched: 9, machine: 'I1', step: strainStep(holm)}),
    )
    expect(all).toMatchObject({settings: 3, eggs: 42, clear: 4, fertile: 28, hatched: 20})
    expect(value(all.fertility)).toBe(28 / 32)
    expect(all.fertility.leftOut).toEqual([{count: 1, why: 'not-candled'}])
    expect(value(all.hatchOfSet)).toBe(20 / 30)
    expect(value(all.hatchOfFertile)).toBe(15 / 18)
    expect(all.hatchOfFertile.leftOut).toEqual([{count: 1, why: 'not-candled'}, {count: 1, why: 'not-finished'}])
    expect(value(broody.hatchOfSet)).toBe(0.5)
    expect(value(incubator.hatchOfSet)).toBe(0.75)
    expect(byPen.map(each => [each.pen.id, each.settings])).toEqual([['2024-A', 2], ['2024-B', 1]])
    expect(steps.map(each => [each.step, each.settings])).toEqual([['strain', 1], ['F1', 3]])
  })

  it('adds up over steps and seasons, whatever the hatches', () => {
    fc.assert(fc.property(drawnBook, book => {
      const found = hatchResults(book)
      const hatched = book.hatches.reduce((sum, each) => sum + (each.hatched ?? 0), 0)
      for (const groups of [found.hatches, found.steps, found.seasons]) {
        expect(groups.reduce((sum, each) => sum + each.settings, 0)).toBe(book.hatches.length)
        expect(groups.reduce((sum, each) => sum + (each.hatched ?? 0), 0)).toBe(hatched)
      }
    }), {numRuns: 50})
  })

  it('puts a hatch in the season of its pens, else of its dates', () => {
    expect(of(hatch('1', {on: date('2023-12-30'), pens: pens(A)}), hatch('2', {set: date('2023-03')}), hatch('3')).hatches.map(each => each.season)).toEqual([2024, 2023, null])
  })
})
