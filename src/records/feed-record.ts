/** Feed records: `pen,on,feed` or `hatch,on,feed`. The unit stands in the heading (`feed (kg)`) or in the cell (`12 kg`). */
import type {Note} from './problem.ts'
import {inUnit} from './quantities.ts'
import type {FeedRow} from './records.ts'
import {date, reference} from './scalars.ts'
import {cellUnder, needCell, notedTogether} from './table-cells.ts'
import {noteMissingColumns, noteUnknownColumn, type Cell, type Column, type Table} from './tables.ts'
import {readAmount} from './weigh-day.ts'

const pen = reference('a pen such as 2024-A')
const hatch = reference('a hatch such as 2024-03')
const COLUMNS = ['pen', 'hatch', 'on', 'feed']

export function readFeedRecord(file: string, table: Table, note: Note): FeedRow[] {
  const has = (name: string) => table.columns.some(column => column.name === name)
  const byHatch = has('hatch') && !has('pen')
  const missing = [byHatch ? 'hatch' : 'pen', 'on'].filter(name => !has(name))
  noteMissingColumns(table, file, missing, 'a feed record', byHatch ? 'hatch,on,feed (kg)' : 'pen,on,feed (kg)', note)
  const known = COLUMNS.filter(name => name !== (byHatch ? 'pen' : 'hatch'))
  for (const column of table.columns) {
    if (column.name !== '' && !known.includes(column.name)) noteUnknownColumn(column, 'a feed record', known, note)
  }
  const feedColumn = table.columns.find(column => column.name === 'feed')
  if (missing.length > 0 || feedColumn === undefined) return []
  const [penOf, hatchOf, onOf, feedOf] = [cellUnder(table, 'pen'), cellUnder(table, 'hatch'), cellUnder(table, 'on'), cellUnder(table, 'feed')]
  const rows: FeedRow[] = []
  const days = notedTogether(note)
  for (const row of table.rows) {
    const cell = feedOf(row)
    if (cell === null || cell.text === '') continue
    const feed = grams(cell, feedColumn, note)
    const whose = byHatch ? needCell(hatchOf(row), 'hatch', hatch, note) : needCell(penOf(row), 'pen', pen, note)
    const on = needCell(onOf(row), 'day', date, days.note)
    if (feed === null || whose === undefined || on === undefined) continue
    rows.push({of: byHatch ? {hatch: whose} : {pen: whose}, on, feed, at: row.at})
  }
  days.end()
  return rows
}

function grams(cell: Cell, column: Column, note: Note): number | null {
  const amount = readAmount(cell, column.unit, note)
  if (amount === null) return null
  const bare = amount.parts.some(part => part.unit === null)
  const feed = bare ? null : inUnit(amount, 'g')
  if (feed === null) {
    note({
      code: 'wrong-unit', severity: 'error', at: cell.at,
      reason: bare ? `“${cell.text}” has no unit, and the heading names none` : `“${cell.text}” is not a mass`,
      remedy: bare ? 'write feed (kg) as the heading, or the unit in the cell' : 'use mg, g, kg, oz or lb',
    })
  }
  return feed
}
