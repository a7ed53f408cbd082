import {describe, expect, it} from 'vitest'
import {neededToTell} from '../../src/findings/needed-to-tell.ts'
import {study} from '../../src/findings/study.ts'
import type {Step} from '../../src/logbook/book.ts'
import {show} from '../pages/shown-logbook.ts'
import {bird, date, F1, F2, hatch, logbook, looks, parents, pen, score, comb, weekOld} from '../pages/small-logbook.ts'
import {F3, LADDER} from './evenness-book.ts'

interface Lot {
  readonly year: number
  readonly step: Step
  readonly right: number
  readonly wrong: number
  readonly sires?: number
}

/** A hatch each, its chicks by so many cocks in turn. */
function bookOf(lots: readonly Lot[]) {
  const cocks = Array.from({length: 8}, (_, place) => bird(`C-${place}`, 'male'))
  const made = lots.map(({year, step, right, wrong, sires = 1}, place) => {
    const from = hatch(`${year}-0${place}`, {on: date(`${year}-03-01`), step, eggs: right + wrong + 2, clear: 1})
    const chicks = Array.from({length: right + wrong}, (_, index) => bird(`${year}-${place}-${index}`, 'male', {
      hatched: date(`${year}-03-01`), hatch: from, step, strain: null, parentage: parents([[cocks[index % sires] ?? cocks[0]!, 1]], null), looks: looks(score(comb, index < right ? 'pea' : 'single')),
    }))
    return {from: Object.assign(from, {chicks, hatched: chicks.length}), chicks}
  })
  return logbook('2025-10-30', {traits: [comb], birds: [...cocks, ...made.flatMap(({chicks}) => chicks)], hatches: made.map(({from}) => from), project: LADDER})
}

describe('flockSummaries(sources)', () => {
  const found = study(bookOf([{year: 2023, step: F1, right: 4, wrong: 0}, {year: 2024, step: F2, right: 6, wrong: 2}, {year: 2025, step: F3, right: 9, wrong: 1}, {year: 2025, step: F1, right: 2, wrong: 3}])).summaries

  it('tells of a season with one step what it tells of the step', () => {
    const season = found.seasons.find(({name}) => name === '2024'), step = found.steps.find(({name}) => name === 'F2')
    expect(season?.chicks).toEqual(step?.chicks)
    expect(season?.rates).toEqual(step?.rates)
    expect(season?.rate?.rate).toEqual(step?.rate?.rate)
    expect(season?.way.at(-1)?.family).toEqual(step?.way.at(-1)?.family)
    expect(season?.seasons).toEqual([2024])
  })

  it('holds chicks mated inside the line against those of the season before that had some, and counts all as hatched', () => {
    const last = found.seasons.at(-1)
    expect(last?.latest).toBe(true)
    expect(last?.steps.map(({label}) => label)).toEqual(['F1', 'F3'])
    expect(last?.chicks.hatched).toBe(15)
    expect(last?.rate?.rate).toMatchObject({count: 9, total: 10})
    expect(last?.change).toMatchObject({from: '2024', to: '2025', outside: []})
    const all = last?.change?.shares.find(({by}) => by === 'true-bred')
    expect([all?.from.count, all?.to.count]).toEqual([{k: 6, n: 8}, {k: 9, n: 10}])
    expect(last?.way.map(({name, inside}) => [name, inside])).toEqual([['2023', false], ['2024', true], ['2025', true]])
  })

  it('gives the change of two seasons that are two steps the figures of the two steps', () => {
    const {change, summaries} = study(bookOf([{year: 2024, step: F2, right: 6, wrong: 2, sires: 6}, {year: 2025, step: F3, right: 9, wrong: 1, sires: 5}])), [, step] = summaries.steps
    const seasons = summaries.seasons.at(-1)?.change
    expect(seasons?.shares.map(({plain, byFamilies, verdict}) => ({plain, byFamilies, verdict}))).toEqual(step?.change?.shares.map(({plain, byFamilies, verdict}) => ({plain, byFamilies, verdict})))
    expect(change).toBeDefined()
  })

  it('has the steps of the ladder before one that stands beside it by the day they hatched', () => {
    const beside: Step = {...F1, label: 'T1'}
    const {steps} = study(bookOf([{year: 2023, step: F2, right: 4, wrong: 0}, {year: 2024, step: beside, right: 6, wrong: 2}, {year: 2025, step: F3, right: 9, wrong: 1}])).summaries
    expect(steps.find(({name}) => name === 'T1')?.way.map(({name}) => name)).toEqual(['F2', 'T1'])
  })

  it('has a season for a pen begun and none for one planned, and shows of their own year', () => {
    const book = {...bookOf([{year: 2024, step: F2, right: 3, wrong: 0}]), pens: [pen('2025-A', 2025, {from: date('2025-02-01')}), pen('2026-A', 2026, {from: date('2026-02-01')})], shows: [show('a', 'A', '2024-09-01'), show('b', 'B', '2025-09-01')]}
    const {seasons} = study(book).summaries
    expect(seasons.map(({name, shows, latest}) => [name, shows.map(({id}) => id), latest])).toEqual([['2024', ['a'], false], ['2025', ['b'], true]])
    expect(seasons.at(-1)).toMatchObject({change: null, rate: null, before: {name: '2024'}})
  })

  it('has the first season of a young book, and nothing of an empty one', () => {
    expect(study(weekOld()).summaries.seasons.every(({before}) => before === null)).toBe(true)
    expect(study(logbook('2024-01-01')).summaries).toEqual({seasons: [], steps: []})
  })
})

describe('neededToTell(summaries)', () => {
  it('asks for five sires where there were fewer, and for nothing where there were', () => {
    const of = (sires: number) => neededToTell(study(bookOf([{year: 2024, step: F2, right: 8, wrong: 2, sires}, {year: 2025, step: F3, right: 9, wrong: 1, sires: 5}])).summaries)
    expect(of(2)?.families).toEqual({have: 2, need: 5})
    expect(of(5)?.families).toBeNull()
    expect(of(5)?.spread).toBeNull()
  })

  it('has nothing to say before two seasons mated inside the line', () => {
    expect(neededToTell(study(bookOf([{year: 2024, step: F1, right: 8, wrong: 2}, {year: 2025, step: F2, right: 9, wrong: 1}])).summaries)).toBeNull()
    expect(neededToTell({seasons: []})).toBeNull()
  })
})
