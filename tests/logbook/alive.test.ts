import {describe, expect, it} from 'vitest'
import {aliveOn, breedersOn, isAlive, pensOfSeason} from '../../src/logbook/alive.ts'
import {parseDate} from '../../src/records/dates.ts'
import {bookOf} from './around.ts'

const date = (text: string) => {
  const read = parseDate(text)
  if (!read) throw new Error(text)
  return read
}
const day = (text: string) => date(text).first

describe('isAlive(bird, day)', () => {
  it.each([
    ['2024-03-23', null, '2024-03-22', false], ['2024-03-23', null, '2024-03-23', true], ['2024', null, '2024-01-01', true], ['2024-03-23', '2024-06-30', '2024-06-29', true],
    ['2024-03-23', '2024-06-30', '2024-06-30', false], ['2024-03-23', '2024-06', '2024-06-01', false], ['2024-03-23', '2024-06', '2024-05-31', true],
  ] as const)('hatched %s, left %s, on %s: %s', (hatched, left, on, alive) => {
    expect(isAlive({hatched: date(hatched), left: left === null ? null : {on: date(left), how: 'sold', why: null}}, day(on))).toBe(alive)
  })

  it('takes a bird that left on an unknown day to have left', () => {
    expect(isAlive({hatched: date('2024'), left: {on: null, how: 'died', why: null}}, day('2024-06-01'))).toBe(false)
  })
})

describe('breeders on a day', () => {
  const book = bookOf({
    'pens/2025-A.md': '---\nseason: 2025\nmales: [H-2]\nfemales: [B-3]\nfrom: 2025-02-10\n---\n',
    'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\nkept: 2024-10-01 for breeding\n---\n',
    'birds/B-2.md': '---\nband: B-2\nsex: female\nstrain: fell-buff\nleft: 2024-04-01 died\n---\n',
  })
  const bands = (on: string) => breedersOn(book, day(on)).map(bird => bird.band).sort()

  it('are those in the pens of the latest season, alive, or kept for breeding', () => {
    expect(bands('2024-03-01')).toEqual(['B-1', 'B-2', 'H-1'])
    expect(bands('2024-05-01')).toEqual(['B-1', 'H-1'])
    expect(bands('2024-11-01')).toEqual(['B-1', 'H-1', 'H-9'])
    expect(bands('2025-03-01')).toEqual(['B-3', 'H-2', 'H-9'])
    expect(bands('2023-03-01')).toEqual([])
  })

  it('and the pens of a season are told by their first day', () => {
    expect(pensOfSeason(book.pens, day('2025-02-09')).map(pen => pen.id)).toEqual(['2024-A'])
    expect(aliveOn(book, day('2025-03-01'))).toHaveLength(6)
  })
})
