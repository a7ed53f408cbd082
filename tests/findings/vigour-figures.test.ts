import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study, type Findings} from '../../src/findings/study.ts'
import {VIGOUR_QUESTIONS, VERDICTS, vigourTable, type VigourQuestion} from '../../src/findings/vigour-figures.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {vigourToRead} from '../../src/commands/vigour-to-read.ts'
import {figuresText} from '../../src/commands/figures-text.ts'
import {jsonOf} from '../../src/pages/figures-file.ts'
import {logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {drawnBook, turned} from './drawn-book.ts'
import {chosenFlock, drawnFlock, inbredFlock, linesTogether} from './vigour-book.ts'

type Cells = Readonly<Record<string, string | number | null>>
const rowsIn = (question: VigourQuestion, findings: Findings): readonly Cells[] => {
  const {columns, rows} = vigourTable(question, findings)
  for (const row of rows) expect(row.length).toBe(columns.length)
  return rows.map(row => Object.fromEntries(columns.map(({name}, place) => [name, row[place] ?? null])))
}
const rowsOf = (question: VigourQuestion, book: Logbook): readonly Cells[] => rowsIn(question, study(book))
const number = (cells: Cells, name: string): number | null => (typeof cells[name] === 'number' ? cells[name] : null)

/** What must hold of every row, whatever the book. */
function holds(question: VigourQuestion, findings: Findings): void {
  for (const cells of rowsIn(question, findings)) {
    for (const value of Object.values(cells)) if (typeof value === 'number') expect(Number.isFinite(value), JSON.stringify(cells)).toBe(true)
    for (const name of ['p', 'p_corrected']) {
      const p = number(cells, name)
      if (p !== null) expect(p >= 0 && p <= 1).toBe(true)
    }
    for (const name of ['count', 'total', 'all', 'n', 'groups', 'left_out', 'tests', 'classes', 'cross_birds', 'one_birds', 'other_birds']) {
      const count = number(cells, name)
      if (count !== null) expect(Number.isInteger(count) && count >= 0, `${name} ${JSON.stringify(cells)}`).toBe(true)
    }
    const low = number(cells, 'low'), high = number(cells, 'high')
    expect(low === null).toBe(high === null)
    if (low !== null && high !== null) expect(low <= high, JSON.stringify(cells)).toBe(true)
    const value = number(cells, 'value') ?? number(cells, 'change') ?? number(cells, 'heterosis')
    if (low !== null) expect(value).not.toBeNull()
    if (question === 'depression') {
      expect(cells.verdict === null).toBe(cells.why !== null)
      if (cells.unit === 'points') for (const each of [value, low, high]) if (each !== null) expect(Math.abs(each)).toBeLessThanOrEqual(1)
      if (cells.count !== null && number(cells, 'n') !== null) expect(number(cells, 'count')).toBeLessThanOrEqual(number(cells, 'n') ?? 0)
      if (value !== null) expect(number(cells, 'n')).toBeGreaterThan(1)
    }
    if (question === 'selection') {
      if (value !== null) expect(cells.count, JSON.stringify(cells)).not.toBeNull()
      if (cells.what === 'kept' && cells.state !== null) {
        for (const each of [value, low, high, number(cells, 'expected')]) if (each !== null) expect(each >= 0 && each <= 1).toBe(true)
        expect(number(cells, 'count')).toBeLessThanOrEqual(number(cells, 'total') ?? 0)
        expect(value === null).toBe(cells.total === 0)
      }
      if (cells.what === 'heritability' || cells.what === 'realised heritability') for (const each of [low, high]) if (each !== null) expect(each >= 0 && each <= 1).toBe(true)
    }
  }
}

describe('vigourTable(question, findings)', () => {
  // one study of each book for all questions, and for the reader
  it('holds no number that is none, no interval out of its range, no share without a count, and can be read whatever the book', () => {
    const every = (book: Logbook): void => {
      const findings = study(book)
      for (const question of VIGOUR_QUESTIONS) {
        holds(question, findings)
        const {above, table, beneath} = vigourToRead(question, findings)
        expect(`${above}${figuresText(table, 'table', 'none')}${beneath}`).not.toMatch(/NaN|Infinity|undefined|null|object/)
      }
    }
    fc.assert(fc.property(drawnFlock, every), {numRuns: 50})
    fc.assert(fc.property(drawnBook, every), {numRuns: 10})
  })

  it.each(VIGOUR_QUESTIONS)('%s of a book of a week, of nothing, of three birds and of one hatch', question => {
    for (const book of [logbook('2024-01-01'), weekOld(), smallBook(), inbredFlock(1, {loss: 0, grams: 0}, {seasons: 1, pairs: 1, eggs: 3}), chosenFlock(1, {h2: 0.5, choose: true}), linesTogether(1, {holm: 1, fell: 2, cross: 3, back: 4}, 1, 1)]) holds(question, study(book))
    expect(rowsOf(question, logbook('2024-01-01'))).toEqual([])
    expect(rowsOf(question, weekOld())).toEqual([])
  })

  it.each(VIGOUR_QUESTIONS)('%s does not mind the order of the records', question => {
    const steady = (book: Logbook) => rowsOf(question, book).map(cells => JSON.stringify(Object.values(cells).map(cell => (typeof cell === 'number' ? Number((cell * (1 + 1e-7)).toPrecision(5)) + 0 : cell)))).sort()
    for (const book of [inbredFlock(7, {loss: -3, grams: 0}), chosenFlock(7, {h2: 0.5, choose: true}), linesTogether(7, {holm: 2400, fell: 2000, cross: 2420, back: 2400})]) expect(steady(turned(book))).toEqual(steady(book))
  })

  it('has method and counts in every row of the JSON', () => {
    const rows = JSON.parse(jsonOf(vigourTable('selection', study(chosenFlock(3, {h2: 0.5, choose: true}))))) as readonly Cells[]
    expect(rows.length).toBeGreaterThan(10)
    for (const row of rows) expect([typeof row.method, typeof row.count]).toEqual(['string', 'number'])
    for (const row of JSON.parse(jsonOf(vigourTable('depression', study(inbredFlock(3, {loss: 0, grams: 0}))))) as readonly Cells[]) if (row.verdict !== null) expect([typeof row.method, typeof row.n]).toEqual(['string', 'number'])
  })

  it('gives the verdict that the page gives, harm that may be chance among it', () => {
    const said = [1, 2, 3, 4, 5, 6].flatMap(seed => {
      const findings = study(inbredFlock(seed, {loss: -2.2, grams: 0}, {seasons: 3, pairs: 9, eggs: 12})), rows = JSON.parse(jsonOf(vigourTable('depression', findings))) as readonly Cells[]
      const told = rows.flatMap(({verdict}) => (verdict === null ? [] : [verdict]))
      expect(told).toEqual(findings.depressionVerdicts.judged.map(({verdict}) => VERDICTS[verdict]))
      return told
    })
    expect(said).toContain('may be chance: the records cannot tell')
  })

  it('puts the published range beside F of the chick, with its source', () => {
    const [first] = rowsOf('depression', smallBook())
    expect([first?.published_low, first?.published_high]).toEqual([-0.044, -0.026])
    expect(String(first?.published)).toContain('Shoffner 1948')
  })
})

describe('vigourToRead(question, findings)', () => {
  it('says what was chosen without meaning to', () => {
    const {beneath} = vigourToRead('selection', study(chosenFlock(5, {h2: 0.5, choose: true})))
    expect(beneath).toContain('Chosen for though no target asks for it: weight-20')
    expect(beneath).toContain('corrected for the number of tests (Holm)')
  })

  it('says that the records cannot tell, with the largest loss not excluded and what others found', () => {
    const {table, beneath} = vigourToRead('depression', study(inbredFlock(5, {loss: 0, grams: 0})))
    expect(figuresText(table, 'table', 'none')).toContain('the records cannot tell')
    expect(beneath).toContain('the lower limit is the largest loss that they do not exclude')
    expect(beneath).toContain('Nordskog and Hassan 1971')
  })
})
