import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import {hatchComparisons, hatchResultsOfGroups, HATCH_SHARES} from '../../src/findings/hatch-comparisons.ts'
import {hatchGroups} from '../../src/findings/hatch-groups.ts'
import type {Hatch, Logbook, Pen} from '../../src/logbook/book.ts'
import {chanceOf} from '../../src/statistics/chance.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F1, F2, hatch, logbook, parents, pen, stay} from '../pages/small-logbook.ts'
import {drawnBook, turned} from './drawn-book.ts'

const hen = bird('B-1', 'female')
let number = 0
const male = () => bird(`H-${++number}`, 'male')
const penOf = (season: number, name: string): Pen => {
  const cock = male()
  return pen(`${season}-${name}`, season, {males: [stay(cock)], females: [stay(hen)]})
}
const setting = (from: Pen, eggs: number, hatched: number, more: Partial<Hatch> = {}): Hatch => {
  const [sire] = from.males
  return hatch(`h${++number}`, {pens: [{pen: from, eggs: null}], on: date(`${from.season}-04-01`), machine: 'I1', eggs, clear: 0, hatched, step: from.season === 2024 ? F1 : F2, parentage: parents([[sire?.bird ?? male(), 1]], hen), ...more})
}
const compared = (book: Logbook) => hatchComparisons(hatchGroups(book), careTouching(book))
const bookOf = (...hatches: Hatch[]) => logbook('2026-01-01', {hatches})

describe('two groups of hatches', () => {
  it('are steps in turn, seasons in turn, hens beside machines of the same seasons, and the pens of the last season', () => {
    const [A, B, C, D] = [penOf(2024, 'A'), penOf(2025, 'A'), penOf(2025, 'B'), penOf(2025, 'C')]
    const {pairs, ways} = hatchGroups(bookOf(setting(A, 20, 10), setting(B, 20, 12), setting(C, 20, 13), setting(C, 10, 8, {machine: null, broody: hen}), setting(D, 20, 9)))
    expect(pairs.map(({one, other}) => `${one.by} ${one.name} / ${other.name}`)).toEqual(['step F2 / F1', 'season 2025 / 2024', 'way broody / incubator', 'pen 2025-A / others', 'pen 2025-B / others', 'pen 2025-C / others'])
    expect(ways.map(({name, hatches}) => [name, hatches.length])).toEqual([['broody', 1], ['incubator', 4]])
    expect(pairs[2]?.other.hatches).toHaveLength(3)
  })

  // Newcombe 1998, Stat. Med. 17:873–890, Table II, (a), method 10: 56 of 70 less 48 of 80
  it('have Newcombe’s difference of these eggs, and nothing wider said of few families', () => {
    const found = compared(bookOf(setting(penOf(2024, 'A'), 80, 48), setting(penOf(2025, 'A'), 70, 56))).find(({pair, what}) => pair.one.by === 'season' && what === 'hatchOfSet')
    expect(found).toMatchObject({speaksOf: 'these-eggs', drawn: null, siresOfBoth: 0, verdict: 'more', one: {k: 56, n: 70}})
    expectClose(found?.plain.low ?? NaN, 0.0524, 5e-5)
    expect(found?.alike).toMatchObject({verdict: 'not-alike', unlike: [{what: 'season', one: ['2025'], other: ['2024']}]})
  })

  it('are drawn by sire families from five on, else by settings', () => {
    const five = (season: number, hatched: number[]) => hatched.map((count, place) => setting(penOf(season, String(place)), 12, count))
    const same = (season: number, hatched: number[]) => {
      const one = penOf(season, 'Z')
      return hatched.map(count => setting(one, 12, count))
    }
    const speaking = (book: Logbook) => compared(book).find(({pair, what}) => pair.one.by === 'season' && what === 'hatchOfSet')
    expect(speaking(bookOf(...five(2024, [3, 9, 6, 8, 10]), ...five(2025, [8, 9, 7, 11, 10])))).toMatchObject({speaksOf: 'families', drawn: {kind: 'families'}})
    const settings = speaking(bookOf(...same(2024, [3, 9, 6, 8, 10]), ...five(2025, [8, 9, 7, 11, 10])))
    expect(settings).toMatchObject({speaksOf: 'settings'})
    expect((settings?.drawn?.high ?? 0) - (settings?.drawn?.low ?? 0)).toBeGreaterThan((settings?.plain.high ?? 0) - (settings?.plain.low ?? 0))
  })

  it('count the sires that both have', () => {
    const one = penOf(2024, 'A')
    expect(compared(bookOf(setting(one, 10, 5), setting(one, 10, 6, {machine: null, broody: hen}))).find(({pair}) => pair.one.by === 'way')).toMatchObject({siresOfBoth: 1})
  })

  it('finds a true loss of 25 points in 100 between ten pens a season nine times in ten, and calls nothing a difference where pens alone differ', () => {
    const chance = chanceOf(5), share = () => chance.next() / 2 ** 32
    // pens differ: their own chance of hatching is 15 points up or down
    const season = (year: number, mean: number) => Array.from({length: 10}, (_, place) => {
      const own = mean + (share() < 0.5 ? 0.15 : -0.15)
      return setting(penOf(year, `${place}-${++number}`), 20, Array.from({length: 20}, () => share() < own).filter(Boolean).length)
    })
    const verdict = (later: number) => compared(bookOf(...season(2024, 0.75), ...season(2025, later))).find(({pair, what}) => pair.one.by === 'season' && what === 'hatchOfSet')?.verdict
    const found = Array.from({length: 15}, () => verdict(0.5)).filter(each => each === 'less').length
    const false_ = Array.from({length: 20}, () => verdict(0.75)).filter(each => each !== 'cannot-tell').length
    expect(found).toBeGreaterThanOrEqual(13)
    expect(false_).toBeLessThanOrEqual(2)
  })

  it('do not take good and bad days, shared by all pens, for a difference of seasons', () => {
    const chance = chanceOf(11), share = () => chance.next() / 2 ** 32
    // six days a season, 12 points up or down; every one of eight pens has 10 eggs in each
    const season = (year: number) => {
      const pens = Array.from({length: 8}, (_, place) => penOf(year, `${place}-${++number}`))
      return Array.from({length: 6}, (_, week) => {
        const own = 0.75 + (share() < 0.5 ? 0.12 : -0.12)
        return pens.map(one => setting(one, 10, Array.from({length: 10}, () => share() < own).filter(Boolean).length, {set: date(`${year}-03-0${week + 1}`)}))
      }).flat()
    }
    const found = Array.from({length: 15}, () => compared(bookOf(...season(2024), ...season(2025))).find(({pair, what}) => pair.one.by === 'season' && what === 'hatchOfSet'))
    expect(found.filter(each => each?.verdict !== 'cannot-tell').length).toBeLessThanOrEqual(2)
    expect(found.filter(each => each?.drawnBy === 'days').length).toBeGreaterThan(9)
    expect(found.every(each => each?.speaksOf === 'families')).toBe(true)
  })

  it('hold for any book, whatever the order of its records', () => {
    fc.assert(fc.property(drawnBook, book => {
      const results = hatchResultsOfGroups(hatchGroups(book))
      for (const {group, shares, rates} of results) {
        expect(rates.settings).toBe(group.hatches.length)
        expect(shares.map(({what}) => what)).toEqual([...HATCH_SHARES])
        for (const {share, drawn} of shares) {
          if (!drawn || share.kind !== 'share') continue
          expectClose(drawn.share, share.value, 1e-12)
          expect(drawn.low).toBeLessThanOrEqual(share.value + 1e-12)
          expect(drawn.high).toBeLessThanOrEqual(1)
        }
      }
      const told = (each: Logbook) => compared(each).map(({pair, what, one, other, verdict, alike}) => `${pair.one.name} ${pair.other.name} ${what} ${one.k}/${one.n} ${other.k}/${other.n} ${verdict} ${alike.verdict}`).sort()
      expect(told(turned(book))).toEqual(told(book))
    }), {numRuns: 40})
  })
})
