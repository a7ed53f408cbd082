/** Feed records: `pen,on,feed` or `hatch,on,feed`, and what was `left` of the feed before. The unit stands in the heading (`feed (kg)`) or in the cell (`12 kg`). */
import {readMass} from './mass-cell.ts'
import type {Note} from './problem.ts'
import type {FeedRow} from './records.ts'
import {date, reference} from './scalars.ts'
import {cellUnder, needCell, notedTogether} from './table-cells.ts'
import {noteMissingColumns, noteUnknownColumn, type Table} from './tables.ts'

const pen = reference('a pen such as 2024-A')
const hatch = reference('a hatch such as 2024-03')
const COLUMNS = ['pen', 'hatch', 'on', 'feed', 'left']

export function readFeedRecord(file: string, table: Table, note: Note): FeedRow[] {
  const has = (name: string) => table.columns.some(column => column.name === name)
  const byHatch = has('hatch') && !has('pen')
  const missing = [byHatch ? 'hatch' : 'pen', 'on'].filter(name => !has(name))
  noteMissingColumns(table, file, missing, 'a feed record', byHatch ? 'hatch,on,feed (kg)' : 'pen,on,feed (kg)', note)
  const known = COLUMNS.filter(name => name !== (byHatch ? 'pen' : 'hatch'))
  for (const column of table.columns) {
    if (column.name !== '' && !known.includes(column.name)) noteUnknownColumn(column, 'a feed record', known, note)
  }
  const feedColumn = table.columns.find(column => column.name === 'feed'), leftColumn = table.columns.find(column => column.name === 'left')
  if (missing.length > 0 || feedColumn === undefined) return []
  const [penOf, hatchOf, onOf, feedOf, leftOf] = [cellUnder(table, 'pen'), cellUnder(table, 'hatch'), cellUnder(table, 'on'), cellUnder(table, 'feed'), cellUnder(table, 'left')]
  const rows: FeedRow[] = []
  const days = notedTogether(note)
  for (const row of table.rows) {
    const cell = feedOf(row)
    if (cell === null || cell.text === '') continue
    const feed = readMass(cell, feedColumn, 'feed (kg)', note), over = leftOf(row)
    const left = leftColumn === undefined || over === null || over.text === '' ? undefined : readMass(over, leftColumn, 'left (kg)', note)
    const whose = byHatch ? needCell(hatchOf(row), 'hatch', hatch, note) : needCell(penOf(row), 'pen', pen, note)
    const on = needCell(onOf(row), 'day', date, days.note)
    if (feed === null || left === null || whose === undefined || on === undefined) continue
    rows.push({of: byHatch ? {hatch: whose} : {pen: whose}, on, feed, ...(left === undefined ? {} : {left}), at: row.at})
  }
  days.end()
  return rows
}
