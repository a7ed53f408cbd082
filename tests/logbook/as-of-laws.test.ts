/** What must hold of the demo's book as it stood on any day. */
import {describe, expect, it} from 'vitest'
import {figuresTable, FIGURE_QUESTIONS} from '../../src/findings/figures.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {link} from '../../src/logbook/link.ts'
import {isoDay, parseDate, type Day, type PartialDate} from '../../src/records/dates.ts'
import {folderOnDisk} from '../../src/records/folder.ts'
import {readRecords} from '../../src/records/read.ts'

const reading = readRecords(folderOnDisk('content'))
const bookOn = (asOf?: Day): Logbook => {
  const {book} = link(reading, {asOf})
  if (!book) throw new Error('no book')
  return book
}

/** Days that something holds until lie ahead by their nature. */
const AHEAD: ReadonlySet<string> = new Set(['until', 'eggsWithheldUntil', 'meatWithheldUntil'])
const isDate = (value: object): value is PartialDate => 'first' in value && 'last' in value && 'text' in value

/** Every date in a book, with the way to it. */
function datesIn(book: Logbook): readonly {readonly way: string; readonly date: PartialDate}[] {
  const found: {way: string; date: PartialDate}[] = [], seen = new Set<object>()
  /** the ends of pens, of stays in them and of care may be planned; no other end is known before its day */
  const planned = new Set<object>([...book.care, ...book.pens, ...book.pens.flatMap(pen => [...pen.males, ...pen.females])])
  /** what is asked may count from a day ahead, and be asked by one */
  const asked = new Set<object>(book.requirements?.items)
  const open: {way: string; value: unknown}[] = [{way: '', value: book}]
  for (let next = open.pop(); next; next = open.pop()) {
    const {way, value} = next
    if (typeof value !== 'object' || value === null) continue
    if (isDate(value)) {
      found.push({way, date: value})
      continue
    }
    if (seen.has(value)) continue
    seen.add(value)
    const inner: readonly (readonly [string, unknown])[] = value instanceof Map ? [...value].flatMap(([key, each]) => [['key', key], ['value', each]] as const) : Object.entries(value)
    for (const [key, each] of inner) if (!AHEAD.has(key) && !(asked.has(value) && (key === 'from' || key === 'by')) && !(key === 'to' && planned.has(value))) open.push({way: `${way}.${key}`.slice(-80), value: each})
  }
  return found
}

describe('the demo as it stood on an earlier day', () => {
  const last = bookOn()
  const days = ['2020-03-10', '2023-04-20', '2023-06-01', '2025-05-21'].map(text => parseDate(text)?.first ?? NaN)

  it('holds nothing that is dated later', () => {
    expect(datesIn(last).some(({date}) => date.first > (days.at(-1) ?? NaN))).toBe(true)
    for (const day of days) expect(datesIn(bookOn(day)).filter(({date}) => date.first > day).map(({way, date}) => `${isoDay(day)} ${way} ${date.text}`)).toEqual([])
  })

  it('leaves nothing aside once all is past, and has the figures of the whole book', () => {
    const view = bookOn(last.asOf + 400)
    const tables = (book: Logbook) => FIGURE_QUESTIONS.map(question => figuresTable(question, study({...book, asOf: last.asOf})).rows)
    expect(view.later).toBe(0)
    expect(tables(view)).toEqual(tables(last))
  })
})
