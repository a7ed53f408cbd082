/** Weigh days: `band,on,weight,…`, or `hatch,on,sex,weight,…` where no bands were read. A column is a measure; an empty cell was not measured. */
import {digitsMeant, lettersForDigits} from './letters-for-digits.ts'
import type {Note} from './problem.ts'
import {isDoubtful, parseQuantity, UNITS, type Quantity, type Unit} from './quantities.ts'
import type {WeighRow} from './records.ts'
import {near, orNear} from './near.ts'
import {date, reference, twoWays} from './scalars.ts'
import {sexWord} from './schema/parts.ts'
import {cellUnder, needCell, notedTogether, readCell} from './table-cells.ts'
import {noteMissingColumns, type Cell, type Column, type Table} from './tables.ts'

const band = reference('a band such as 24-031')
const hatch = reference('a hatch such as 2024-03')

export function readWeighDay(file: string, table: Table, note: Note): WeighRow[] {
  const byHatch = table.columns.some(column => column.name === 'hatch') && !table.columns.some(column => column.name === 'band')
  const own = byHatch ? ['hatch', 'on', 'sex'] : ['band', 'on']
  const missing = own.filter(name => !table.columns.some(column => column.name === name))
  noteMissingColumns(table, file, missing, 'a weigh day', byHatch ? 'hatch,on,sex,weight' : 'band,on,weight', note)
  const measures = table.columns.map((column, index) => ({column, index})).filter(({column}) => column.name !== '' && !own.includes(column.name))
  if (missing.length === 0 && measures.length === 0) noteMissingColumns(table, file, ['weight'], 'a weigh day', 'band,on,weight', note)
  if (missing.length > 0 || measures.length === 0) return []

  const unread = new Set(measures.filter(({column, index}) => isWordy(table, index) && column.unit === null && noteWordy(column, note)).map(({index}) => index))
  const [bandOf, hatchOf, onOf, sexOf] = [cellUnder(table, 'band'), cellUnder(table, 'hatch'), cellUnder(table, 'on'), cellUnder(table, 'sex')]
  const rows: WeighRow[] = []
  const days = notedTogether(note)
  for (const row of table.rows) {
    const whose = byHatch ? needCell(hatchOf(row), 'hatch', hatch, note) : needCell(bandOf(row), 'band', band, note)
    const on = needCell(onOf(row), 'day', date, days.note)
    const sex = byHatch ? readCell(sexOf(row), sexWord, note) : null
    const values: {measure: string; quantity: Quantity; at: Cell['at']; keyAt: Cell['at']}[] = []
    for (const {column, index} of measures) {
      const cell = row.cells[index]
      if (cell === undefined || cell.text === '' || unread.has(index)) continue
      const quantity = readAmount(cell, column.unit, note)
      if (quantity !== null) values.push({measure: column.name, quantity, at: cell.at, keyAt: column.at})
    }
    if (whose === undefined || on === undefined || sex === undefined) continue
    rows.push({of: byHatch ? {hatch: whose, sex: sex ?? 'unknown'} : {band: whose}, on, values, at: row.at})
  }
  days.end()
  return rows
}

/** An amount; a bare number is in the unit of its heading, where that names one. */
export function readAmount(cell: Cell, unit: Unit | null, note: Note): Quantity | null {
  const read = parseQuantity(cell.text)
  const meant = read === null || 'unknownUnit' in read ? digitsMeant(cell.text) : null
  const likely = meant === null ? null : parseQuantity(meant)
  if (meant !== null && likely !== null && !('unknownUnit' in likely)) {
    note({code: 'unreadable-value', severity: 'error', at: cell.at, reason: lettersForDigits(cell.text), remedy: `write ${meant}`})
    return null
  }
  if (read === null) {
    note({
      code: 'unreadable-value', severity: 'error', at: cell.at,
      reason: `“${cell.text}” cannot be read as an amount`, remedy: 'write a number such as 870 or 2.4, or an amount such as 2.4 kg; leave the cell empty where nothing was measured',
    })
    return null
  }
  if ('unknownUnit' in read) {
    const units = Object.keys(UNITS)
    note({code: 'wrong-unit', severity: 'error', at: cell.at, reason: `“${read.unknownUnit}” is no unit known here`, remedy: orNear(near(read.unknownUnit, units), `use one of ${units.join(', ')}`)})
    return null
  }
  const quantity = unit === null ? read : {...read, parts: read.parts.map(part => ({...part, unit: part.unit ?? unit}))}
  if (isDoubtful(quantity)) {
    note({code: 'unreadable-value', severity: 'error', at: cell.at, reason: `“${cell.text}” can be read in two ways`, remedy: `write ${twoWays(cell.text)}`})
    return null
  }
  return quantity
}

/** Words in a column where a weigh day has amounts, beside who scored or by itself: a scoring day that lies in the wrong folder. A heading with a unit is of amounts, whatever stands below it. */
export function isScoringDay(table: Table): boolean {
  const looks = table.columns.map(({name}, index) => ({name, index})).filter(({name}) => name !== '' && !['band', 'hatch', 'on', 'sex', 'by', 'struck'].includes(name))
  const wordy = looks.filter(({index}) => isWordy(table, index))
  const isScored = table.columns.some(({name}) => name === 'by' || name === 'struck')
  const isMeasured = table.columns.some(({unit}) => unit !== null) && !isScored
  return table.columns.some(({name}) => name === 'band') && wordy.length > 0 && !isMeasured && (isScored || wordy.length === looks.length)
}

/** A column with something in it, and no amount anywhere. */
function isWordy(table: Table, index: number): boolean {
  const written = table.rows.map(row => row.cells[index]?.text ?? '').filter(text => text !== '')
  return written.length > 1 && written.every(text => parseQuantity(digitsMeant(text) ?? text) === null)
}

function noteWordy(column: Column, note: Note): boolean {
  note({
    code: 'unknown-column', severity: 'error', at: column.at,
    reason: `“${column.name}” is no column of a weigh day, and none of its cells is an amount`,
    remedy: 'take the column out; what was seen by eye goes into scores/, notes into the bird’s own record',
  })
  return true
}
