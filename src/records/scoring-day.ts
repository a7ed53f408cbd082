/**
 * Scoring days: `band,on,by,draft,<trait or heading of the scale>…,struck`. An empty cell was not scored; what stands under `struck` says why the row no longer counts, and
 * under `draft` which draft of the standard was scored by.
 */
import {misplacedTable} from './misplaced.ts'
import type {Note} from './problem.ts'
import {parseNumber} from './quantities.ts'
import type {ScoreRow} from './records.ts'
import {count, date, reference} from './scalars.ts'
import type {Entry} from './shape.ts'
import {cellUnder, needCell, notedTogether, readCell} from './table-cells.ts'
import {noteMissingColumns, readTable, type Table} from './tables.ts'

const band = reference('a band such as 24-031')
const scorer = reference('a keeper')
const OWN: readonly string[] = ['band', 'on', 'by', 'draft', 'struck']

export function readScoringDay(file: string, text: string, note: Note): ScoreRow[] {
  const table = readTable(file, text, note)
  if (table === null) return []
  if (isOfMeasures(table)) {
    note(misplacedTable(file, 'measures'))
    return []
  }
  const missing = ['band', 'on'].filter(name => !table.columns.some(column => column.name === name))
  noteMissingColumns(table, file, missing, 'a scoring day', 'band,on,by,comb', note)
  const traits = table.columns.map((column, index) => ({column, index})).filter(({column}) => column.name !== '' && !OWN.includes(column.name))
  if (missing.length === 0 && traits.length === 0) {
    const [first] = table.columns
    note({
      code: 'missing-column', severity: 'error', at: first?.at ?? {file, line: 1, column: 1, width: 0},
      reason: 'a scoring day needs a column for each trait that was scored', remedy: 'add a column headed with a trait’s id, such as comb, or with a heading of the scale of points',
    })
  }
  if (missing.length > 0 || traits.length === 0) return []
  const [bandOf, onOf, byOf, draftOf, struckOf] = [cellUnder(table, 'band'), cellUnder(table, 'on'), cellUnder(table, 'by'), cellUnder(table, 'draft'), cellUnder(table, 'struck')]
  const rows: ScoreRow[] = []
  const days = notedTogether(note)
  for (const row of table.rows) {
    const whose = needCell(bandOf(row), 'band', band, note)
    const on = readCell(onOf(row), date, days.note)
    const by = readCell(byOf(row), scorer, note)
    const draft = draftOf(row), number = readCell(draft, count, note)
    if (whose === undefined || on === undefined || by === undefined || number === undefined) continue
    const looks: Entry<string>[] = []
    for (const {column, index} of traits) {
      const cell = row.cells[index]
      if (cell !== undefined && cell.text !== '') {
        const value = column.unit !== null && parseNumber(cell.text) !== null ? `${cell.text} ${column.unit}` : cell.text
        looks.push({key: column.name, value, at: cell.at, keyAt: column.at})
      }
    }
    const struck = struckOf(row)?.text ?? ''
    rows.push({band: whose, on, by, looks, draft: draft && number !== null ? {number, at: draft.at} : null, struck: struck === '' ? null : struck, at: row.at})
  }
  days.end()
  return rows
}

/** Headings that only an egg record, a feed record or a weigh day by hatches has. */
function isOfMeasures({columns}: Table): boolean {
  const has = (name: string) => columns.some(column => column.name === name)
  return (has('pen') && (has('eggs') || has('feed'))) || (has('hatch') && !has('band') && (has('feed') || has('sex')))
}
