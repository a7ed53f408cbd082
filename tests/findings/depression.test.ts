import {describe, expect, it} from 'vitest'
import {depression, type Depression} from '../../src/findings/depression.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {hatch, logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {inbredFlock} from './vigour-book.ts'

const answers = (book: Logbook): readonly Depression[] => study(book).depression
const worked = new Map<Logbook, readonly Depression[]>()
function ofF(book: Logbook, outcome: Depression['outcome']) {
  const all = worked.get(book) ?? answers(book)
  worked.set(book, all)
  const effect = all.find(each => each.outcome === outcome)?.effects.find(each => each.term === 'chickF')
  if (effect?.kind !== 'effect') throw new Error(`no effect on ${outcome}`)
  return effect
}
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
const seeds = Array.from({length: 30}, (_, place) => 17 + 101 * place)

describe('depression(book)', () => {
  // from 1.6 + season, at the mean F of ⅛ and a loss of 5 a unit of F: the logit goes from about 0.975 to 0.475, 72.6 % to 61.7 %
  const books = seeds.map(seed => inbredFlock(seed, {loss: -5, grams: -1500})), none = seeds.map(seed => inbredFlock(seed, {loss: 0, grams: 0}))

  it('finds a loss of hatch at the strength that it was made with', () => {
    const found = books.map(book => ofF(book, 'hatch of fertile'))
    expect(mean(found.map(({change}) => change))).toBeCloseTo(-0.11, 1.7)
    expect(found.filter(({verdict}) => verdict === 'harm').length).toBeGreaterThan(28)
  })

  it('finds a loss of weight at its strength, 150 g for ten points, and its limits hold it 95 times in a hundred', () => {
    const found = books.map(book => ofF(book, 'weight'))
    expect(Math.abs(mean(found.map(({change}) => change)) + 150)).toBeLessThan(12)
    expect(found.filter(({interval}) => interval && interval.low <= -150 && interval.high >= -150).length).toBeGreaterThan(25)
    expect(found.filter(({verdict}) => verdict === 'harm').length).toBeGreaterThan(28)
  })

  it('finds a loss of life, less surely, since fewer die', () => {
    // logit 2 − 5·⅛ to half a unit less: 79.8 % to 70.6 %
    expect(mean(books.map(book => ofF(book, 'livability').change))).toBeCloseTo(-0.092, 1.7)
  })

  it('finds none where there is none, but for one or two in forty', () => {
    for (const outcome of ['hatch of fertile', 'livability', 'weight'] as const) {
      const found = none.map(book => ofF(book, outcome))
      expect(found.filter(({verdict}) => verdict === 'harm').length).toBeLessThanOrEqual(3)
      expect(found.filter(({verdict}) => verdict === 'cannot-tell').length).toBeGreaterThanOrEqual(25)
      for (const {interval} of found) expect(interval && interval.low <= interval.high).toBe(true)
    }
  })

  it('says what does not vary, and what season cannot be told from', () => {
    const [first] = answers(inbredFlock(3, {loss: 0, grams: 0}))
    expect(first?.effects.map(effect => [effect.term, effect.kind === 'effect' ? '' : effect.why])).toEqual([['chickF', ''], ['damF', 'alike'], ['chickH', 'alike'], ['damH', 'alike']])
    expect(first?.seasons).toBe('held')
    const few = answers(inbredFlock(3, {loss: 0, grams: 0}, {seasons: 2, pairs: 2, eggs: 9}))[0]
    expect(few?.seasons).toBe('not-held')
  })

  it('counts what it leaves out, and keeps shares and counts together', () => {
    for (const book of [smallBook(), weekOld(), logbook('2024-01-01')]) {
      for (const {count, n, mean: share, leftOut} of answers(book)) {
        expect(share === null).toBe(n === 0)
        expect(leftOut).toBeGreaterThanOrEqual(0)
        if (count !== null && n > 0) expect(share).toBe(count / n)
      }
    }
    // by hand: 14 of 17 fertile, the second hatch was not candled; 9 chicks, of whom one has no day of loss, 3 sold in April and 2 never listed
    const [fertile, set, life] = answers(smallBook())
    expect([fertile?.count, fertile?.n, fertile?.leftOut]).toEqual([14, 17, 12])
    expect([set?.count, set?.n, set?.leftOut]).toEqual([20, 32, 0])
    expect([life?.count, life?.n, life?.leftOut]).toEqual([14, 14, 6])
  })

  it('takes a chick that was sold young out of the count, and one that died into it', () => {
    const book = inbredFlock(5, {loss: 0, grams: 0}), [first] = book.hatches, one = first?.chicks.find(({left}) => left === null), before = answers(book)[2]
    Object.assign(one ?? {}, {left: {on: {text: '', first: (one?.hatched?.first ?? 0) + 30, last: (one?.hatched?.first ?? 0) + 30}, how: 'sold', why: null}})
    const sold = answers(book)[2]
    expect([sold?.n, sold?.count, sold?.leftOut]).toEqual([(before?.n ?? 0) - 1, (before?.count ?? 0) - 1, 1])
    Object.assign(one?.left ?? {}, {how: 'died'})
    const died = answers(book)[2]
    expect([died?.n, died?.count, died?.leftOut]).toEqual([before?.n, (before?.count ?? 0) - 1, 0])
  })

  it('counts distinct pairs, not their hatches or classes', () => {
    const all = answers(inbredFlock(5, {loss: 0, grams: 0})), bred = new Set(inbredFlock(5, {loss: 0, grams: 0}).hatches.map(({parentage: {pairs: [pair]}}) => `${pair?.sire?.id} × ${pair?.dam?.id}`)).size
    expect(bred).toBeLessThan(36)
    expect(all.filter(({n}) => n > 0).map(({pairs, groups, count}) => [pairs, groups === (count === null ? bred : 36)])).toEqual([[bred, true], [bred, true], [bred, true], [bred, true]])
  })

  it('gives no number where the limits lie further apart than birds are heavy', () => {
    const book = inbredFlock(7, {loss: 0, grams: 0}, {seasons: 1, pairs: 6, eggs: 12})
    for (const one of book.birds) for (const {counted} of one.looks.values()) {
      if (counted && typeof counted.value === 'number') Object.assign(counted, {value: ['2020-0', '2020-4', '2020-5'].includes(one.hatch?.id ?? '') ? 500 : 3500})
    }
    const found = answers(book).find(({outcome}) => outcome === 'weight')
    expect(found?.effects[0]).toMatchObject({kind: 'cannot-say', why: 'too-few'})
    expect(found?.n).toBeGreaterThan(30)
  })

  it('has nothing for hatches of birds that are not in the book', () => {
    const book = logbook('2024-06-01', {hatches: [hatch('x', {eggs: 10, clear: 1, hatched: 8})]})
    const [first] = depression(book, () => null)
    expect([first?.n, first?.leftOut]).toEqual([0, 9])
    expect(first?.effects.every(effect => effect.kind === 'cannot-say')).toBe(true)
  })
})
