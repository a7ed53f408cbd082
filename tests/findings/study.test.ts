import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {csvOf} from '../../src/pages/figures-file.ts'
import {FIGURE_QUESTIONS, figuresTable} from '../../src/findings/figures.ts'
import {study} from '../../src/findings/study.ts'
import {bird, F2, logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

/** Every number anywhere in an answer; the pedigree's own working lists of numbers are no answers. */
function* numbersIn(value: unknown, seen = new Set<object>()): Generator<number> {
  if (typeof value === 'number') yield value
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value) || seen.has(value)) return
  seen.add(value)
  if (value instanceof Map || value instanceof Set) for (const each of value) yield* numbersIn(each, seen)
  else for (const each of Object.values(value)) yield* numbersIn(each, seen)
}

describe('study(book)', () => {
  it('holds no NaN, whatever the book', () => {
    for (const book of [weekOld(), smallBook(), logbook('2024-01-01')]) {
      for (const number of numbersIn(study(book))) expect(number).not.toBeNaN()
    }
    fc.assert(fc.property(drawnBook, book => {
      for (const number of numbersIn(study(book))) if (Number.isNaN(number)) throw new Error('a figure is NaN')
    }), {numRuns: 30})
  })

  it('gives the same bytes for the same book', () => {
    for (const question of FIGURE_QUESTIONS) expect(csvOf(figuresTable(question, study(smallBook())))).toBe(csvOf(figuresTable(question, study(smallBook()))))
  })
})

describe('figuresTable(question)', () => {
  const findings = study(smallBook())

  it.each(FIGURE_QUESTIONS)('%s has a cell for every column, numbers finite', question => {
    const {columns, rows} = figuresTable(question, findings)
    expect(new Set(columns.map(({name}) => name)).size).toBe(columns.length)
    for (const row of rows) {
      expect(row.length).toBe(columns.length)
      for (const cell of row) if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true)
    }
  })

  it('writes a certain parent as its band, candidates with their chances, an unknown one not at all', () => {
    const {rows} = figuresTable('birds', findings)
    const parents = (band: string) => rows.find(([own]) => own === band)?.slice(4, 6)
    expect(parents('H-1')).toEqual([null, null])
    expect(parents('24-001')).toEqual(['H-1:0.7 H-3:0.3', 'B-1'])
    expect(parents('25-001')).toEqual(['24-001', '24-003:0.5 24-004:0.5'])
  })

  it('gives shares of the whole tables that others are made from', () => {
    expect(figuresTable('hatches', findings).rows[0]?.slice(0, 7)).toEqual(['2024-01', '2024-A', 'F1', 20, 17, 14, 0.85])
    expect(figuresTable('shares', findings).rows.find(row => row[0] === 'F2' && row[3] === 'all' && row[2] === 'pea')?.slice(4, 7)).toEqual([4, 6, 4 / 6])
    expect(figuresTable('strains', findings).columns.map(({name}) => name)).toEqual([
      'band', 'holm-white', 'fell-buff', 'unknown', 'id', 'step', 'Z holm-white', 'Z fell-buff', 'dam line holm-white', 'dam line fell-buff', 'strain_heterozygosity', 'recurrent_spread',
    ])
    expect(figuresTable('spread', findings).rows.map(row => row.slice(0, 4))).toEqual([['F1', 'weight-20', 'female', 6], ['F1', 'weight-20', 'all', 6]])
  })

  it('answers on an empty book with a head and no rows', () => {
    for (const question of FIGURE_QUESTIONS) expect(figuresTable(question, study(logbook('2024-01-01'))).rows).toEqual([])
    expect(figuresTable('true-bred', study(logbook('2024-01-01', {traits: [], birds: [bird('1', 'male', {step: F2, strain: null})]}))).rows[0]?.slice(8, 13)).toEqual([null, null, null, null, null])
  })
})
