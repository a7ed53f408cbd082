import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {changeTable, scoresTable, trendTable} from '../../src/findings/evenness-figures.ts'
import type {FiguresTable} from '../../src/findings/figures.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {F2, logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {turned} from './drawn-book.ts'
import {bookOfFamilies, evenBook, F3} from './evenness-book.ts'

type Cells = Readonly<Record<string, string | number | null>>
const cellsOf = ({columns, rows}: FiguresTable): Cells[] => rows.map(row => Object.fromEntries(columns.map(({name}, index) => [name, row[index] ?? null])))

function tables(book: Logbook): {readonly trend: Cells[]; readonly change: Cells[]; readonly scores: Cells[]} {
  const findings = study(book), steps = findings.ladder.filter(step => step.kind === 'reached')
  return {
    trend: cellsOf(trendTable(findings)), scores: cellsOf(scoresTable(findings.gradedScores)),
    change: steps.flatMap(from => steps.filter(to => to !== from).flatMap(to => cellsOf(changeTable(findings.change(from, to))))),
  }
}

/** Columns that may not leave 0 to 1; those of differences and of κ, −1 to 1. */
const SHARES = ['share', 'p', 'family_p', 'smallest_p', 'exact_low', 'exact_high']
const LIMITS = [['value', 'low', 'high'], ['value', 'exact_low', 'exact_high'], ['value', 'family_low', 'family_high'], ['slope', 'slope_low', 'slope_high'], ['change', 'low', 'high'], ['change', 'family_low', 'family_high'], ['share', 'low', 'high'], ['value', 'value_low', 'value_high']] as const
/** Rows whose `value`, `low` and `high` are of one share, or differ by one. */
const OF_SHARES = ['true-bred', 'look']

function faultsOf(row: Cells): string[] {
  const number = (name: string): number | null => {
    const cell = row[name] ?? null
    return typeof cell === 'number' ? cell : null
  }
  const faults: string[] = []
  for (const [name, cell] of Object.entries(row)) if (typeof cell === 'number' && !Number.isFinite(cell)) faults.push(`${name} is ${cell}`)
  for (const name of SHARES) if ((number(name) ?? 0) < 0 || (number(name) ?? 0) > 1) faults.push(`${name} is no share`)
  for (const [middle, low, high] of LIMITS) {
    const [is, from, to] = [number(middle), number(low), number(high)]
    if ((from === null) !== (to === null)) faults.push(`${low} without ${high}`)
    if (is !== null && from !== null && to !== null && !(from <= is + 1e-12 && is <= to + 1e-12)) faults.push(`${middle} ${is} outside ${from} to ${to}`)
    const least = middle === 'change' || middle === 'slope' ? -1 : 0
    if (is !== null && OF_SHARES.includes(String(row['what'])) && [is, from, to].some(each => each !== null && (each < least || each > 1))) faults.push(`${middle} out of its range`)
    if (middle === 'share' && [from, to].some(each => is !== null && each !== null && (each < 0 || each > 1))) faults.push('a share out of its range')
    if (middle === 'value' && 'value_low' in row && row['method'] === 'kappa, linear weights' && [is, number('value_low'), number('value_high')].some(each => each !== null && Math.abs(each) > 1)) faults.push('kappa out of its range')
  }
  if (number('share') !== null || (row['row'] === 'step' && number('value') !== null)) {
    if ((number('total') ?? 0) < 1) faults.push('a share without a count')
    if (number('count') !== null && number('share') !== null && number('count') !== Math.round((number('share') ?? 0) * (number('total') ?? 0))) faults.push('a share that is not its count')
  }
  for (const name of ['from', 'to']) if (number(name) !== null && (number(`${name}_total`) ?? 0) < 1) faults.push(`${name} without a count`)
  for (const name of ['count', 'total', 'left_out', 'families', 'from_total', 'to_total', 'second_higher']) if ((number(name) ?? 0) < 0 || !Number.isInteger(number(name) ?? 0)) faults.push(`${name} is no count`)
  return faults.map(fault => `${fault}: ${JSON.stringify(row)}`)
}

describe('figures trend, change and scores', () => {
  it('hold no NaN, no interval outside its range and no share without a count, whatever the book', () => {
    fc.assert(fc.property(evenBook, book => {
      const {trend, change, scores} = tables(book)
      expect([...trend, ...change, ...scores].flatMap(faultsOf)).toEqual([])
    }), {numRuns: 60})
  })

  it.each([
    ['a project a week old', weekOld()], ['a small book', smallBook()], ['an empty book', logbook('2024-01-01')], ['a book without traits', {...smallBook(), traits: []}],
    ['three birds of one hatch, all equal', bookOfFamilies([{step: F2, pea: 3, grams: [2000, 2000, 2000], type: [7, 7, 7], sex: 'female'}])],
    ['two steps of one bird', bookOfFamilies([{step: F2, pea: 1, grams: [1], type: [1]}, {step: F3, single: 1, grams: [2], type: [10]}])],
    ['six birds all equal in two steps', bookOfFamilies([{step: F2, single: 6, grams: [1, 1, 1, 1, 1, 1]}, {step: F3, single: 6, grams: [1, 1, 1, 1, 1, 1]}])],
  ])('say what they can of %s', (_, book) => {
    const {trend, change, scores} = tables(book)
    expect([...trend, ...change, ...scores].flatMap(faultsOf)).toEqual([])
  })

  it('are the same whatever the order of the records', () => {
    fc.assert(fc.property(evenBook, book => {
      const round = (rows: readonly Cells[]) => rows.map(row => Object.values(row).map(cell => (typeof cell === 'number' ? Number(cell.toPrecision(9)) : cell)))
      const here = tables(book), there = tables(turned(book))
      expect([round(there.trend), round(there.change)]).toEqual([round(here.trend), round(here.change)])
    }), {numRuns: 20})
  })

  it('name their method and what they speak of in every row that has a figure', () => {
    const many = Array.from({length: 6}, () => [{step: F2, pea: 3, single: 4}, {step: F3, pea: 9}]).flat()
    const {trend, change, scores} = tables(bookOfFamilies([...many, {step: F2, grams: [1, 2, 3, 4, 5], type: [3, 4]}, {step: F3, grams: [5, 6, 7, 8, 9], type: [9, 9]}]))
    for (const row of [...trend, ...change, ...scores]) if (row['low'] !== null || (row['p'] ?? null) !== null) expect(row['method'], JSON.stringify(row)).not.toBeNull()
    expect(trend.find(row => row['row'] === 'trend')).toMatchObject({what: 'true-bred', step: 'F2 to F3', speaks_of: 'birds bred like these', verdict: 'rises', total: 96})
    expect(change[0]).toMatchObject({what: 'true-bred', from_step: 'F2', to_step: 'F3', from_count: 18, from_total: 42, to_count: 54, to_total: 54, from_families: 6, verdict: 'truer', method: 'Newcombe’s hybrid score interval'})
  })
})
