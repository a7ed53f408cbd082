import fc from 'fast-check'
import '../seeded.ts'
import {describe, expect, it} from 'vitest'
import {rangeChange} from '../../src/findings/range-change.ts'
import type {Wanted} from '../../src/logbook/book.ts'

const between = (low: number, high: number): Wanted => ({kind: 'between', low, high})
const about = (value: number, tolerance: number | null): Wanted => ({kind: 'about', value, tolerance})
const states = (...names: string[]): Wanted => ({kind: 'states', states: names})

describe('rangeChange(before, after)', () => {
  it.each([
    [between(40, 50), between(38, 52), 'wider'], [between(40, 50), between(40, 52), 'wider'], [between(40, 50), between(42, 48), 'narrower'], [between(40, 50), between(44, 54), 'up'],
    [between(40, 50), between(30, 39), 'down'], [between(40, 50), between(40, 50), null], [about(50, 0.1), between(45, 55), null], [about(50, 0.1), between(46, 55), 'narrower'],
    [{kind: 'at-least', value: 7} as const, {kind: 'at-least', value: 6} as const, 'wider'], [{kind: 'at-most', value: 7} as const, {kind: 'at-most', value: 6} as const, 'narrower'],
    [{kind: 'at-least', value: 7} as const, {kind: 'at-most', value: 7} as const, 'down'], [states('pea'), states('pea', 'walnut'), 'wider'], [states('pea', 'walnut'), states('walnut'), 'narrower'],
    [states('pea'), states('rose'), 'other'], [states('pea', 'rose'), states('rose', 'pea'), null], [null, between(1, 2), 'given'], [between(1, 2), null, 'gone'], [null, null, null],
    [about(45, null), about(45, null), null], [about(45, null), about(44, null), 'down'], [about(45, null), between(40, 50), 'untold'],
  ] as const)('%j → %j: %s', (before, after, told) => expect(rangeChange(before, after, null)).toBe(told))

  it('takes a mark up to the end of its scale for the same as at least', () => {
    expect(rangeChange(between(7, 10), {kind: 'at-least', value: 7}, {from: 1, to: 10})).toBeNull()
    expect(rangeChange({kind: 'at-most', value: 3}, between(1, 3), {from: 1, to: 10})).toBeNull()
  })
})

/** Every whole number from 0 to 20 tried in turn. */
const inside = (wanted: Wanted): Set<number> => new Set(Array.from({length: 21}, (_, value) => value).filter(value =>
  wanted.kind === 'at-least' ? value >= wanted.value : wanted.kind === 'at-most' ? value <= wanted.value : wanted.kind === 'between' ? value >= wanted.low && value <= wanted.high : false))

const anyRange = fc.oneof(
  fc.tuple(fc.integer({min: 0, max: 20}), fc.integer({min: 0, max: 20})).map(([a, b]) => between(Math.min(a, b), Math.max(a, b))),
  fc.integer({min: 0, max: 20}).map((value): Wanted => ({kind: 'at-least', value})), fc.integer({min: 0, max: 20}).map((value): Wanted => ({kind: 'at-most', value})),
)

describe('laws', () => {
  it('is what trying every mark of a scale finds', () => {
    fc.assert(fc.property(anyRange, anyRange, (before, after) => {
      const was = inside(before), is = inside(after), holdsOld = [...was].every(mark => is.has(mark)), heldByOld = [...is].every(mark => was.has(mark))
      const told = rangeChange(before, after, {from: 0, to: 20})
      expect(told === 'up' || told === 'down' ? 'neither' : told).toBe(holdsOld && heldByOld ? null : holdsOld ? 'wider' : heldByOld ? 'narrower' : 'neither')
    }))
  })

  it('turns round when the drafts do', () => {
    const back = {wider: 'narrower', narrower: 'wider', up: 'down', down: 'up', other: 'other', given: 'gone', gone: 'given', untold: 'untold'} as const
    fc.assert(fc.property(fc.option(anyRange), fc.option(anyRange), (before, after) => {
      const there = rangeChange(before, after, null)
      expect(rangeChange(after, before, null)).toBe(there === null ? null : back[there])
    }))
  })
})
