import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {depression} from '../../src/findings/depression.ts'
import {hatchResultsOfGroups} from '../../src/findings/hatch-comparisons.ts'
import {hatchGroups} from '../../src/findings/hatch-groups.ts'
import {hatchResults, ratesOf} from '../../src/findings/hatch-results.ts'
import {isJudged} from '../../src/findings/set-aside.ts'
import {lifeOfFlock} from '../../src/findings/life-of-flock.ts'
import type {Hatch, Logbook} from '../../src/logbook/book.ts'
import {date, hatch, logbook, pen} from '../pages/small-logbook.ts'
import {lifeBook} from './life-book.ts'

const WHY = 'The incubator stood at 35 °C'
const A = pen('2024-A', 2024)
const setting = (id: string, hatched: number, more: Partial<Hatch> = {}) => hatch(id, {pens: [{pen: A, eggs: null}], on: date('2024-04-01'), machine: 'I1', eggs: 20, clear: 2, hatched, ...more})
const good = setting('1', 15), lost = setting('2', 0, {setAside: WHY})

describe('a setting set aside', () => {
  it('is judged unless a reason is written', () => expect([good, lost].map(isJudged)).toEqual([true, false]))

  it('enters no sum, and is named beside it', () => {
    const rates = ratesOf([good, lost])
    expect(rates).toMatchObject({settings: 1, eggs: 20, hatched: 15, setAside: [{id: '2'}], hatchOfSet: {kind: 'share', count: 15, total: 20, leftOut: [{why: 'set-aside', count: 1}]}})
    expect(ratesOf([lost])).toMatchObject({settings: 0, eggs: null, hatchOfSet: {kind: 'cannot-say'}})
  })

  it('keeps rates of its own', () => {
    const {hatches, all, pens} = hatchResults(logbook('2025-01-01', {hatches: [good, lost], pens: [A]}))
    expect(hatches[1]).toMatchObject({settings: 1, eggs: 20, hatched: 0, hatchOfSet: {kind: 'share', count: 0, total: 20}})
    expect([all.eggs, pens[0]?.eggs]).toEqual([20, 20])
  })

  it('is in no group, comparison, life or regression: all are as if it had never been set', () => {
    const told = (book: Logbook) => {
      const life = lifeOfFlock(book), groups = hatchGroups(book)
      return JSON.stringify([
        hatchResultsOfGroups(groups).map(({group, shares, rates}) => [group.by, group.name, rates.eggs, shares.map(({share, drawn, families, settings}) => [share.kind === 'share' && [share.count, share.total], drawn?.low, families, settings])]).filter(([, , , shares]) => JSON.stringify(shares).includes('[false,null,0,0]') === false),
        life.hatchComparisons.map(({pair, what, one, other, verdict, alike}) => [pair.one.name, pair.other.name, what, one, other, verdict, alike.verdict]),
        life.livability.comparisons.map(({pair, difference, verdict}) => [pair.one.name, pair.other.name, difference, verdict]),
        depression(book, () => null).map(({n}) => n),
      ])
    }
    fc.assert(fc.property(lifeBook, book => {
      const [first, ...others] = book.hatches
      if (!first || !others.some(({step, pens}) => step.label === first.step.label && pens[0]?.pen === first.pens[0]?.pen && first.machine === null)) return
      const aside = {...book, hatches: [{...first, setAside: WHY}, ...others]}, without = {...book, hatches: others}
      expect(told(aside)).toBe(told(without))
    }), {numRuns: 60})
  })
})
