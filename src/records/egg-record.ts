/** Egg records: `pen,on,eggs,hens`, or `band,on,eggs` for one hen. A row without a count says nothing and is passed over. */
import type {Note} from './problem.ts'
import type {EggRow} from './records.ts'
import {count, date, reference} from './scalars.ts'
import {cellUnder, needCell, notedTogether, readCell} from './table-cells.ts'
import {noteMissingColumns, noteUnknownColumn, type Table} from './tables.ts'

const band = reference('a band such as 22-017')
const pen = reference('a pen such as 2024-A')
const COLUMNS = ['band', 'pen', 'on', 'eggs', 'hens']

export function readEggRecord(file: string, table: Table, note: Note): EggRow[] {
  const has = (name: string) => table.columns.some(column => column.name === name)
  const byHen = has('band') && !has('pen')
  const missing = [byHen ? 'band' : 'pen', 'on'].filter(name => !has(name))
  noteMissingColumns(table, file, missing, 'an egg record', byHen ? 'band,on,eggs' : 'pen,on,eggs,hens', note)
  const known = COLUMNS.filter(name => name !== (byHen ? 'pen' : 'band'))
  for (const column of table.columns) {
    if (column.name !== '' && !known.includes(column.name)) noteUnknownColumn(column, 'an egg record', known, note)
  }
  if (missing.length > 0) return []
  const [bandOf, penOf, onOf, eggsOf, hensOf] = [cellUnder(table, 'band'), cellUnder(table, 'pen'), cellUnder(table, 'on'), cellUnder(table, 'eggs'), cellUnder(table, 'hens')]
  const rows: EggRow[] = []
  const days = notedTogether(note)
  for (const row of table.rows) {
    const eggs = readCell(eggsOf(row), count, note)
    const hens = readCell(hensOf(row), count, note)
    if (eggs === null) continue
    const whose = byHen ? needCell(bandOf(row), 'band', band, note) : needCell(penOf(row), 'pen', pen, note)
    const on = needCell(onOf(row), 'day', date, days.note)
    if (whose === undefined || on === undefined || eggs === undefined || hens === undefined) continue
    rows.push({of: byHen ? {band: whose} : {pen: whose}, on, eggs, hens, at: row.at})
  }
  days.end()
  return rows
}
