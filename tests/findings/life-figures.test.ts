import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {LIFE_QUESTIONS, lifeTable} from '../../src/findings/life-figures.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {lifeToRead} from '../../src/commands/life-to-read.ts'
import {figuresText} from '../../src/commands/figures-text.ts'
import {jsonOf} from '../../src/pages/figures-file.ts'
import {LIFE_COLUMN_WORDS} from '../../src/pages/life-columns.ts'
import {logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {drawnBook, turned} from './drawn-book.ts'
import {lifeBook} from './life-book.ts'

type Cells = Readonly<Record<string, string | number | null>>
const rowsOf = (book: Logbook): readonly Cells[] => {
  const {columns, rows} = lifeTable('lay', study(book))
  for (const row of rows) expect(row.length).toBe(columns.length)
  return rows.map(row => Object.fromEntries(columns.map(({name}, place) => [name, row[place] ?? null])))
}
const number = (cells: Cells, name: string): number | null => (typeof cells[name] === 'number' ? cells[name] : null)

/** What must hold of every row, whatever the book. */
function holds(book: Logbook): void {
  for (const cells of rowsOf(book)) {
    const told = JSON.stringify(cells), low = number(cells, 'low'), high = number(cells, 'high'), value = number(cells, 'value')
    for (const cell of Object.values(cells)) if (typeof cell === 'number') expect(Number.isFinite(cell), told).toBe(true)
    expect(low === null, told).toBe(high === null)
    if (low !== null && high !== null && value !== null) expect(low <= value + 1e-12 && value <= high + 1e-12, told).toBe(true)
    for (const name of ['count', 'total', 'left_out', 'groups', 'missing_days']) {
      const count = number(cells, name)
      if (count !== null) expect(Number.isInteger(count) && count >= 0, told).toBe(true)
    }
    if (cells.unit === 'share') {
      for (const each of [value, low, high]) expect(each !== null && each >= 0 && each <= 1, told).toBe(true)
      expect(number(cells, 'total'), told).toBeGreaterThan(0)
      expect(cells.speaks_of, told).not.toBeNull()
    }
    if (value !== null) expect(number(cells, 'total'), told).not.toBeNull()
    expect(cells.against === null, told).toBe(cells.verdict === null)
    if (cells.against !== null) expect(cells.kept_alike, told).not.toBeNull()
    if (cells.kept_alike === 'no') expect(cells.unlike, told).not.toBeNull()
  }
}

describe('lifeTable(question, findings)', () => {
  it('holds no number that is none, no interval out of its range, no share without a count, and no comparison that does not say whether it was of groups kept alike', () => {
    fc.assert(fc.property(lifeBook, book => { holds(book) }), {numRuns: 25})
    fc.assert(fc.property(drawnBook, book => { holds(book) }), {numRuns: 6})
  })
  it('of a book of a week, of nothing and of two seasons', () => {
    for (const book of [logbook('2024-01-01'), weekOld(), smallBook()]) holds(book)
    expect(rowsOf(logbook('2024-01-01'))).toEqual([])
    expect(rowsOf(weekOld())).toEqual([])
  })
  it('does not mind the order of the records', () => {
    const steady = (book: Logbook) => rowsOf(book).map(cells => JSON.stringify(Object.values(cells).map(cell => (typeof cell === 'number' ? Number((cell * (1 + 1e-7)).toPrecision(5)) + 0 : cell)))).sort()
    fc.assert(fc.property(lifeBook, book => { expect(steady({...turned(book), eggCounts: [...book.eggCounts].reverse(), feedings: [...book.feedings].reverse()})).toEqual(steady(book)) }), {numRuns: 8})
  })
  it('is the same in every format, and readable', () => {
    const findings = study(smallBook())
    for (const question of LIFE_QUESTIONS) {
      const table = lifeTable(question, findings), {table: read, beneath} = lifeToRead(question, findings)
      expect((JSON.parse(jsonOf(table)) as unknown[]).length).toBe(table.rows.length)
      expect(figuresText(read, 'table', 'none')).toContain('hatch of set')
      expect(beneath).toContain('kept alike')
      expect(Object.keys(LIFE_COLUMN_WORDS[question]).sort()).toEqual(table.columns.map(({name}) => name).sort())
    }
  })
})
