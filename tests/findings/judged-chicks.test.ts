import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {judgedByFamily, judgedRight, sumOf} from '../../src/findings/judged-chicks.ts'
import {ladderOf} from '../../src/findings/ladder.ts'
import {trueBred, type TrueBred} from '../../src/findings/true-bred.ts'
import type {Verdict} from '../../src/findings/verdict.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {comb, F2, looks, score, tally, weight} from '../pages/small-logbook.ts'
import {skin, turned} from './drawn-book.ts'
import {bookOfFamilies, evenBook, F3, LADDER} from './evenness-book.ts'

const judge = (book: Logbook): TrueBred => trueBred(book, ladderOf(book))

describe('judgedRight(verdict, by)', () => {
  const verdict = (is: Verdict['is'], more: Partial<Verdict> = {}): Verdict => ({is, off: [], right: [], missing: [], ...more})

  it('says of everything together right, off or nothing', () => {
    expect((['right', 'off', 'part-scored', 'too-young', 'lost'] as const).map(is => judgedRight(verdict(is), 'true-bred'))).toEqual([true, false, null, null, null])
  })

  it('says of one trait what was scored of it, whatever the whole is', () => {
    const half = verdict('part-scored', {right: [comb], missing: [skin]}), off = verdict('off', {off: [skin], right: [comb]})
    expect([judgedRight(half, comb), judgedRight(half, skin), judgedRight(off, comb), judgedRight(off, skin), judgedRight(off, weight)]).toEqual([true, null, true, false, null])
  })
})

describe('judgedByFamily(trueBred)', () => {
  it('counts by hand: two cocks in one step, one in the next, everything together first', () => {
    const found = judgedByFamily(judge(bookOfFamilies([{step: F2, pea: 3, single: 1}, {step: F2, single: 2}, {step: F3, pea: 5}])))
    expect(found.map(({by, steps}) => [by, [...steps]])).toEqual((['true-bred', comb] as const).map(by => [by, [['F2', [{k: 3, n: 4}, {k: 0, n: 2}]], ['F3', [{k: 5, n: 5}]]]]))
  })

  it('counts every chick of a tally', () => {
    const book = bookOfFamilies([{step: F2, pea: 1}]), [from] = book.hatches
    if (!from) expect.fail('no hatch')
    Object.assign(from, {tallies: [tally(from, 7, {looks: looks(score(comb, 'single')), parentage: from.chicks[0]?.parentage ?? from.parentage})]})
    expect(judgedByFamily(judge(book))[0]?.steps.get('F2')).toEqual([{k: 1, n: 8}])
  })

  it('has an empty list of a step where nobody was scored, no step of no chick, and nothing where nothing is required', () => {
    const unscored = judgedByFamily(judge(bookOfFamilies([{step: F2, grams: [2000]}, {step: F3, pea: 1}])))
    expect(unscored.map(({steps}) => [...steps])).toEqual(Array(2).fill([['F2', []], ['F3', [{k: 1, n: 1}]]]))
    expect(judgedByFamily(judge(bookOfFamilies([]))).map(({steps}) => steps.size)).toEqual([0, 0])
    expect(judgedByFamily(judge(bookOfFamilies([{step: F2, pea: 3}], {traits: [weight], project: LADDER})))).toEqual([])
  })

  it('puts chicks together by whatever is asked, and leaves out those that belong nowhere', () => {
    const judged = judge(bookOfFamilies([{step: F2, pea: 3, single: 1}, {step: F3, pea: 5}]))
    const [together] = judgedByFamily(judged, ({step}) => (step.label === 'F3' ? undefined : 'all'))
    expect([...together?.steps ?? []]).toEqual([['all', [{k: 3, n: 4}]]])
  })

  it('adds up to the rates of true breeding, of each step and trait', () => {
    fc.assert(fc.property(evenBook, book => {
      const judged = judge(book), families = judgedByFamily(judged)
      expect(families.map(({by}) => by)).toEqual(judged.required.length === 0 ? [] : ['true-bred', ...judged.required])
      for (const {step, passes, fails, traits} of judged.steps) {
        for (const {by, steps} of families) {
          const share = traits.find(({trait}) => trait === by)?.share
          const expected = by === 'true-bred' ? {k: passes, n: passes + fails} : share?.kind === 'share' ? {k: share.count, n: share.total} : {k: 0, n: 0}
          expect(sumOf(steps.get(step) ?? [])).toEqual(expected)
          for (const {k, n} of steps.get(step) ?? []) expect(n >= 1 && k >= 0 && k <= n).toBe(true)
        }
      }
    }), {numRuns: 30})
  })

  it('gives the same families whatever the order of the records', () => {
    fc.assert(fc.property(evenBook, book => {
      const there = judgedByFamily(judge(turned(book)))
      judgedByFamily(judge(book)).forEach(({by, steps}, place) => {
        expect(there[place]?.by).toBe(by)
        for (const [step, own] of steps) expect(there[place]?.steps.get(step)).toEqual(own)
      })
    }), {numRuns: 20})
  })
})

describe('sumOf(families)', () => {
  it('is nought of nought for none', () => {
    expect(sumOf([])).toEqual({k: 0, n: 0})
    expect(sumOf([{k: 2, n: 3}, {k: 0, n: 4}])).toEqual({k: 2, n: 7})
  })
})
