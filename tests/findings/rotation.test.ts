import {describe, expect, it} from 'vitest'
import {census} from '../../src/findings/census.ts'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {rotation, SEASONS, type Rotation, type SystemName} from '../../src/findings/rotation.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {matingForecast} from '../../src/pedigree/mating-forecast.ts'
import {closedPen} from '../../src/pedigree/mating-systems.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F2, hatch, logbook, pen, smallBook, stay} from '../pages/small-logbook.ts'
import {twoPens} from './breeding-book.ts'

function asked(book: Logbook): Rotation | null {
  const pedigree = pedigreeOfBook(book)
  return rotation(book, census(book), pedigree, kinshipOfBook(pedigree))
}
const of = (found: Rotation | null, name: SystemName) => found?.systems.find(({system}) => system === name)
const course = (found: Rotation | null, name: SystemName): readonly number[] => of(found, name)?.course.map(({inbreeding}) => inbreeding) ?? []

describe('rotation(book)', () => {
  const found = asked(twoPens())

  it('starts from the pens and kinships of today, by hand', () => {
    expect(found?.pens.map(({pen: {id}, males, females}) => [id, males.length, females.length])).toEqual([['2026-A', 1, 2], ['2026-B', 1, 1]])
    // full sibs in each pen, nobody kin across: moved on 0, closed ¼, at random A1 with 2 of 3 hens kin, B1 with 1 of 3: ½ · ¼
    expectClose(course(found, 'clans')[0] ?? NaN, 0, 1e-12)
    expectClose(course(found, 'closed pens')[0] ?? NaN, 0.25, 1e-12)
    expectClose(course(found, 'flock')[0] ?? NaN, 0.125, 1e-12)
  })

  it('the second season by hand', () => {
    // one male a pen; clans: a chick of A is of B1 and a hen of A, one of B of A1 and B2. Son of A × daughter of B: ¼ (K(B1, A1) + K(B1, B2) + K(A, A1) + K(A, B2)) = ⅛
    expectClose(course(found, 'clans')[1] ?? NaN, 1 / 8, 1e-12)
    // closed pen B, one of each: full sibs of full sibs ⅜; A: ¼ (½·1.25 … ) by the recursion of one pen from full sibs
    const start = {sizes: [1, 2], self: [0.5, 0.5], kinship: [[0, 0.25], [0.25, 0.25]]}
    const a = matingForecast(closedPen({males: 1, females: 2}), 2, start)[1]?.inbreeding ?? NaN
    expectClose(course(found, 'closed pens')[1] ?? NaN, (2 * a + 3 / 8) / 3, 1e-12)
  })

  it('names the year in which the limit is passed: on it is not past it', () => {
    expect(found?.season).toBe(2026)
    expect([of(found, 'closed pens')?.passes, of(found, 'clans')?.passes]).toEqual([2027, 2029])
    expect(asked(twoPens(null))?.systems.map(({passes}) => passes)).toEqual([null, null, null, null, null])
  })

  it('looks ten seasons ahead, ever upward in the end, at a rate that leads from the first to the last', () => {
    for (const {course: each, rate} of found?.systems ?? []) {
      expect(each.length).toBe(SEASONS)
      const [first, last] = [each[0]?.inbreeding ?? NaN, each.at(-1)?.inbreeding ?? NaN]
      expectClose(1 - (1 - first) * (1 - rate) ** (SEASONS - 1), last, 1e-12)
      expect(last).toBeGreaterThan(first)
    }
  })

  it('counts a bird kept for breeding to the pen it was hatched from, and leaves out one of none', () => {
    const book = twoPens()
    const from = hatch('2026-01', {pens: [{pen: book.pens[0] ?? pen('x', 2026), eggs: null}], on: date('2026-02-25')})
    const kept = {kept: {on: date('2026-02-26'), why: 'for breeding'}, step: F2, strain: null}
    const more = [bird('K1', 'male', {...kept, hatch: from}), bird('K2', 'male', kept)]
    const grown = asked({...book, birds: [...book.birds, ...more]})
    expect(grown?.pens.map(({males}) => males.map(({id}) => id))).toEqual([['A1', 'K1'], ['B1']])
    expect(grown?.leftOut).toBe(1)
  })

  it('one pen has neither clans nor closed pens apart from the flock; one male no rolling pens', () => {
    expect(asked(smallBook())?.systems.map(({system}) => system)).toEqual(['flock'])
  })

  it('has nothing to say without a pair in a pen', () => {
    expect(asked(logbook('2024-01-01'))).toBe(null)
    const book = twoPens()
    expect(asked({...book, pens: [pen('2026-A', 2026, {males: [stay(book.named('A1'))], from: date('2026-02-01')})]})).toBe(null)
  })
})
