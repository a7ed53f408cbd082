import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {lifeOfFlock} from '../../src/findings/life-of-flock.ts'
import {smallBook, weekOld} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

/** No number in all of it may be none. */
function numbersIn(value: unknown, seen = new Set<unknown>(), depth = 0): number[] {
  if (typeof value === 'number') return [value]
  if (value === null || typeof value !== 'object' || seen.has(value) || depth > 8 || 'at' in value) return []
  seen.add(value)
  return (value instanceof Map ? [...value.values()] : Object.values(value)).flatMap(inner => numbersIn(inner, seen, depth + 1))
}

describe('hatch, life and lay of a whole book', () => {
  it('says what it can of a project one week old', () => {
    const {hatching, hatchComparisons, livability, growth, lay, firstEggs, feed, seasons} = lifeOfFlock(weekOld())
    expect([hatching, hatchComparisons, livability.groups, livability.comparisons, growth.pens, lay.sheets, lay.groups, firstEggs, feed, seasons]).toEqual(Array(10).fill([]))
  })
  it('has a row a season, the oldest first', () => {
    const {seasons} = lifeOfFlock(smallBook())
    expect(seasons.map(({season, hatching, livability, lay}) => [season, hatching?.share.kind, livability?.n, lay])).toEqual([['2024', 'share', 11, null], ['2025', 'share', 6, null]])
  })
  it('holds no number that is none, whatever the records', () => {
    fc.assert(fc.property(drawnBook, book => {
      const life = lifeOfFlock(book)
      expect(numbersIn([life.hatching, life.hatchComparisons, life.livability, life.growth, life.lay, life.firstEggs, life.feed, life.seasons]).filter(Number.isNaN)).toEqual([])
    }), {numRuns: 25})
  })
})
