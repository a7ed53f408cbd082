/** Egg records: `pen,on,eggs,hens`, or `band,on,eggs` for one hen; also over how many `days`, and what they or those of them `weighed` have as their `weight`. A row without a count says nothing and is passed over. */
import {readMass} from './mass-cell.ts'
import type {Note} from './problem.ts'
import type {EggRow} from './records.ts'
import {count, date, reference} from './scalars.ts'
import {scalar} from './shape.ts'
import {cellUnder, needCell, notedTogether, readCell} from './table-cells.ts'
import {noteMissingColumns, noteUnknownColumn, type Table} from './tables.ts'

const band = reference('a band such as 22-017')
const pen = reference('a pen such as 2024-A')
/** a count of days, at least one */
const wholeDays = scalar('a whole number of days such as 7', words => (/^[1-9]\d{0,2}$/.test(words) ? Number(words) : undefined))
const COLUMNS = ['band', 'pen', 'on', 'eggs', 'hens', 'days', 'weighed', 'weight']

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
  const [daysOf, weighedOf, weightOf] = [cellUnder(table, 'days'), cellUnder(table, 'weighed'), cellUnder(table, 'weight')], weightColumn = table.columns.find(column => column.name === 'weight')
  const rows: EggRow[] = []
  const dates = notedTogether(note)
  for (const row of table.rows) {
    const eggs = readCell(eggsOf(row), count, note)
    const hens = readCell(hensOf(row), count, note)
    if (eggs === null) continue
    const whose = byHen ? needCell(bandOf(row), 'band', band, note) : needCell(penOf(row), 'pen', pen, note)
    const on = needCell(onOf(row), 'day', date, dates.note)
    const days = readCell(daysOf(row), wholeDays, note), weighed = readCell(weighedOf(row), count, note), cell = weightOf(row)
    const weight = weightColumn === undefined || cell === null || cell.text === '' ? undefined : readMass(cell, weightColumn, 'weight (g)', note)
    if (whose === undefined || on === undefined || eggs === undefined || hens === undefined || days === undefined || weighed === undefined || weight === null) continue
    rows.push({of: byHen ? {band: whose} : {pen: whose}, on, eggs, hens, ...(days === null ? {} : {days}), ...(weight === undefined ? {} : {weight: {grams: weight, eggs: weighed ?? eggs}}), at: row.at})
  }
  dates.end()
  return rows
}
