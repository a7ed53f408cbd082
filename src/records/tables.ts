/** Tables: CSV with a heading line. Commas, semicolons or tabs part the cells; every cell keeps its place. */
import {CsvError, parse} from 'csv-parse/sync'
import {closedUp} from './comments.ts'
import {near, orNear} from './near.ts'
import type {Note, Spot} from './problem.ts'
import {unitOf, type Unit} from './quantities.ts'

export interface Cell {
  /** trimmed, with single spaces; empty where nothing was written */
  readonly text: string
  readonly at: Spot
}

export interface Column {
  /** the heading as written, without its unit */
  readonly name: string
  /** `weight (g)`, `weight g` */
  readonly unit: Unit | null
  readonly at: Spot
}

export interface Row {
  readonly at: Spot
  /** one for every column, in their order */
  readonly cells: readonly Cell[]
}

export interface Table {
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
}

interface Parsed {
  readonly record: readonly string[]
  /** its text as written, with the empty lines before it */
  readonly raw: string
}

/** Reads a table, or notes why it cannot be read and gives null. Rows with nothing in them are passed over, rows with cells too many are noted. */
export function readTable(file: string, text: string, note: Note): Table | null {
  const delimiter = delimiterOf(/^.*/.exec(text)?.[0] ?? '')
  const unreadable = (at: Spot, reason: string, remedy: string) => note({code: 'unreadable-table', severity: 'error', at, reason, remedy})
  let parsed: Parsed[]
  try {
    // with `raw` every record comes with its text, from which its place is counted
    parsed = parse(text, {delimiter, raw: true, relax_column_count: true, skip_empty_lines: true}) as unknown as Parsed[]
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    const line = error.code === 'CSV_QUOTE_NOT_CLOSED' ? lineOfOpenQuote(text) : Number(error.lines ?? 1)
    unreadable(
      {file, line, column: 1, width: text.split('\n')[line - 1]?.length ?? 0},
      error.code === 'CSV_QUOTE_NOT_CLOSED' ? 'a quotation mark in this line is never closed' : 'a quotation mark stands in the middle of a cell',
      'put quotation marks around whole cells only, and write a quotation mark inside such a cell twice',
    )
    return null
  }
  const lines: Cell[][] = []
  let line = 1
  for (const {record, raw} of parsed) {
    if (record.some(value => value !== '')) {
      const cells = cellsOf(file, record, raw, line, delimiter)
      if (cells.some(cell => cell.text !== '')) lines.push(cells)
    }
    line += breaksIn(raw)
  }
  const [heading, ...rest] = lines
  if (!heading) {
    unreadable({file, line: 1, column: 1, width: 0}, 'the table is empty', 'write a line of headings, such as band,on,weight, and the rows below it')
    return null
  }
  const columns = heading.map(columnOf)
  const whole = columnsAtFault(columns, rest, note)
  const rows: Row[] = []
  const otherSign = rest.find(cells => columns.length > 1 && partedOtherwise(cells[0], delimiter, columns.length))
  if (otherSign?.[0]) {
    unreadable(otherSign[0].at, `the headings are parted by ${SIGNS[delimiter] ?? delimiter}, this line by another sign`, 'part the cells of all lines with the same sign')
    return null
  }
  for (const cells of rest) {
    const extra = cells.slice(columns.length).find(cell => cell.text !== '')
    if (extra) {
      unreadable(extra.at, `the row has more cells than the ${columns.length} headings`, 'put a text or number with a comma in it in quotes, or part the cells with semicolons throughout')
      continue
    }
    const [first] = cells
    if (!first) continue
    rows.push({at: first.at, cells: columns.map((_, index) => cells[index] ?? {text: '', at: (cells.at(-1) ?? first).at})})
  }
  return whole ? {columns, rows} : null
}

const SIGNS: Readonly<Record<string, string>> = {',': 'commas', ';': 'semicolons', '\t': 'tabs'}

/** Does a line’s first cell hold as many cells as there are headings, parted by another sign? */
const partedOtherwise = (cell: Cell | undefined, delimiter: string, columns: number): boolean =>
  cell !== undefined && Object.keys(SIGNS).some(sign => sign !== delimiter && cell.text.split(sign).length >= columns)

/** Headings that stand twice, or stand empty above written cells. */
function columnsAtFault(columns: readonly Column[], rows: readonly (readonly Cell[])[], note: Note): boolean {
  let whole = true
  columns.forEach((column, index) => {
    const first = columns.findIndex(other => other.name === column.name)
    if (column.name === '') {
      const cell = rows.map(cells => cells[index]).find(candidate => candidate !== undefined && candidate.text !== '')
      if (!cell) return
      note({code: 'unreadable-table', severity: 'error', at: cell.at, reason: 'this cell’s column has no heading', remedy: 'write one in the first line'})
    } else if (first < index) {
      note({
        code: 'repeated-key', severity: 'error', at: column.at, reason: `the heading “${column.name}” stands twice`, remedy: 'keep one of the two',
        related: [{at: columns[first]?.at ?? column.at, note: 'it first stands at'}],
      })
    } else return
    whole = false
  })
  return whole
}

/** What parts the cells: whichever of semicolon, tab and comma the heading line has most of, outside quotes. */
export function delimiterOf(heading: string): string {
  const bare = heading.replace(/"[^"]*"/g, '')
  const count = (sign: string) => bare.split(sign).length
  return [';', '\t'].reduce((best, sign) => (count(sign) > count(best) ? sign : best), ',')
}

/** The words a table's own columns go by are read in any case; a trait or measure keeps its spelling. */
function columnOf(cell: Cell): Column {
  const match = /^(.*\S)\s*(?:\(([^()]+)\)|\[([^[\]]+)\])$/.exec(cell.text) ?? /^(\S+)\s+(\S+)$/.exec(cell.text)
  const word = match?.[2] ?? match?.[3]
  const unit = word === undefined ? null : unitOf(word.trim())
  const name = unit === null ? cell.text : match?.[1] ?? cell.text
  return {name: FIXED.has(name.toLowerCase()) ? name.toLowerCase() : name, unit, at: cell.at}
}

const FIXED = new Set(['band', 'hatch', 'pen', 'on', 'by', 'sex', 'eggs', 'hens', 'feed', 'draft', 'struck'])

/** The cells of one record with their places. `line` is the one on which its text begins. */
function cellsOf(file: string, record: readonly string[], raw: string, line: number, delimiter: string): Cell[] {
  let from = raw.search(/[^\n]/)
  line += from
  let column = 1
  return record.map(value => {
    const width = raw[from] === '"' ? quotedWidth(raw, from) : value.length
    const written = raw.slice(from, from + width)
    const lead = written.length - written.trimStart().length
    const breaks = breaksIn(written)
    const shown = breaks === 0 ? written.trim().length : written.indexOf('\n')
    const cell: Cell = {text: closedUp(value), at: {file, line, column: column + lead, width: shown}}
    line += breaks
    column = (breaks === 0 ? column + width : written.length - written.lastIndexOf('\n')) + delimiter.length
    from += width + delimiter.length
    return cell
  })
}

function breaksIn(text: string): number {
  let breaks = 0
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) breaks++
  return breaks
}

/** How many characters a quoted cell takes, its quotes included. */
function quotedWidth(text: string, from: number): number {
  for (let at = from + 1; at < text.length; at++) {
    if (text[at] !== '"') continue
    if (text[at + 1] !== '"') return at + 1 - from
    at++
  }
  return text.length - from
}

function lineOfOpenQuote(text: string): number {
  let opened = 0
  let open = false
  for (let at = text.indexOf('"'); at !== -1; at = text.indexOf('"', at + 1)) {
    open = !open
    if (open) opened = at
  }
  return text.slice(0, opened).split('\n').length
}

/** Notes, once, that a table lacks columns; for one the nearest heading is named. `like`: a line of headings that would do. */
export function noteMissingColumns(table: Table, file: string, wanted: readonly string[], what: string, like: string, note: Note): void {
  if (wanted.length === 0) return
  const names = table.columns.map(column => column.name)
  const [first] = table.columns
  const candidates = wanted.length === 1 ? near(wanted[0] ?? '', names) : []
  const remedy = names.some(name => /^\d/.test(name)) ? `put a line of headings above it, such as ${like}`
    : candidates.length > 0 ? `is “${candidates.join('” or “')}” meant for it? write ${wanted[0]}`
    : `write ${wanted.join(' and ')} into the first line, which has ${names.join(', ')}`
  note({code: 'missing-column', severity: 'error', at: first?.at ?? {file, line: 1, column: 1, width: 0}, reason: `${what} needs ${wanted.length === 1 ? 'a column' : 'columns'} “${wanted.join('” and “')}”`, remedy})
}

export function noteUnknownColumn(column: Column, what: string, known: readonly string[], note: Note): void {
  note({
    code: 'unknown-column', severity: 'error', at: column.at,
    reason: `${what} has no column “${column.name}”`, remedy: orNear(near(column.name, known), `use ${known.join(', ')}`),
  })
}
