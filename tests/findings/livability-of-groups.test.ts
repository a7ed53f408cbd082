import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import {hatchGroups} from '../../src/findings/hatch-groups.ts'
import {watchedOf} from '../../src/findings/life-watched.ts'
import {LIVABILITY_AGES, livabilityOfGroups} from '../../src/findings/livability-of-groups.ts'
import type {Bird, Hatch, Leaving, Logbook} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, hatch, logbook, pen, tally} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

const A = pen('2024-A', 2024)
const left = (how: Leaving['how'], on: string | null): Leaving => ({how, on: on === null ? null : date(on), why: null})
const hatched = (id: string, ways: readonly (Leaving | null)[], more: Partial<Hatch> = {}): ReturnType<typeof hatch> => {
  const made = hatch(id, {pens: [{pen: A, eggs: null}], on: date('2024-03-23'), machine: 'I1', ...more})
  made.chicks = ways.map((way, place): Bird => bird(`${id}-${place}`, 'unknown', {hatch: made, hatched: made.on, left: way}))
  return made
}
const lifeOf = (book: Logbook) => livabilityOfGroups(book, hatchGroups(book), careTouching(book))
const of = (one: Hatch, asOf = '2025-01-01') => lifeOf(logbook(asOf, {hatches: [one], birds: one.chicks})).hatches.get(one)

describe('how chicks of a hatch live', () => {
  it('follows those that left for as long as they were there', () => {
    // by hand: four chicks; one died on day 20, one sold on day 30, two lived: 3/4
    const got = of(hatched('1', [left('died', '2024-04-12'), left('sold', '2024-04-22'), null, null]))
    expect(got).toMatchObject({n: 4, died: 1, leftAlive: {culled: 0, sold: 1, taken: 0, lost: 0}, undated: 0, unlisted: 0})
    expect(got?.ages[0]).toMatchObject({age: 56, found: {share: 0.75, n: 4, deaths: 1, left: 1, kind: 'these-chicks'}})
  })
  it('counts culls, the fox’s and the lost apart, and none of them as dead', () => {
    const got = of(hatched('1', [left('culled', '2024-05-01'), left('taken', '2024-05-02'), left('lost', '2024-05-03'), left('given', '2024-05-04'), left('lent', '2024-05-05'), null]))
    expect(got?.leftAlive).toEqual({culled: 1, sold: 2, taken: 1, lost: 1})
    expect(got?.ages[0]?.found?.share).toBe(1)
  })
  it('leaves out and counts those of whom no day, or nothing, is written', () => {
    const got = of(hatched('1', [left('died', null), null], {unlisted: 3}))
    expect(got).toMatchObject({n: 1, undated: 1, unlisted: 3})
  })
  it('counts a tally by its chicks', () => {
    const made = hatched('1', [])
    made.tallies = [tally(made, 3, {left: left('died', '2024-03-29')}), tally(made, 9)]
    expect(of(made)?.ages[0]?.found).toMatchObject({share: 0.75, n: 12, deaths: 3})
  })
  it('is nought where all died, and cannot be told of a hatch of yesterday', () => {
    expect(of(hatched('1', [left('died', '2024-03-24')]))?.ages[0]?.found).toMatchObject({share: 0, low: 0, n: 1})
    expect(of(hatched('1', [null, null]), '2024-03-24')?.ages.map(({found}) => found)).toEqual([null, null])
  })
  it('takes a bird that died on the day it hatched, or was sold on it', () => {
    expect(of(hatched('1', [left('died', '2024-03-23'), null]))?.ages[0]?.found?.share).toBe(0.5)
    expect(of(hatched('1', [left('sold', '2024-03-23'), null]))?.ages[0]?.found).toMatchObject({share: 1, n: 2, left: 1})
  })
  it('puts a month at its middle', () => {
    expect(watchedOf({hatched: date('2024-03-01'), left: left('died', '2024-04')}, date('2025-01-01').first)).toEqual({age: 45, died: true})
    expect(watchedOf({hatched: null, left: null}, 0)).toBeNull()
  })
  it('compares seasons with the difference, and says they were not reared alike', () => {
    const B = pen('2025-A', 2025), one = hatched('1', [left('died', '2024-04-12'), null, null, null]), other = hatched('2', [null, null, null, null], {pens: [{pen: B, eggs: null}], on: date('2025-03-23')})
    const found = lifeOf(logbook('2026-01-01', {hatches: [one, other], birds: [...one.chicks, ...other.chicks]})).comparisons.find(({pair}) => pair.one.by === 'season')
    expect(found).toMatchObject({age: 56, verdict: 'cannot-tell', speaksOf: 'these-chicks', alike: {verdict: 'not-alike'}})
    expectClose(found?.difference.difference ?? NaN, 0.25, 1e-12)
  })
  it('adds up for any book: every chick is followed, undated or unlisted', () => {
    fc.assert(fc.property(drawnBook, book => {
      const {hatches, groups} = lifeOf(book)
      for (const [one, life] of hatches) {
        expect(life.n + life.undated + life.unlisted).toBe(one.chicks.length + one.tallies.reduce((sum, {count}) => sum + count, 0) + one.unlisted)
        expect(life.ages.map(({age}) => age)).toEqual([...LIVABILITY_AGES])
      }
      for (const {ages} of groups) for (const {found} of ages) if (found) expect(found.low <= found.share + 1e-12 && found.share <= found.high + 1e-12 && found.low >= 0 && found.high <= 1).toBe(true)
    }), {numRuns: 40})
  })
})
