/** Reading a row's cells through the same shapes as front matter. */
import type {Note} from './problem.ts'
import type {Shape} from './shape.ts'
import type {Cell, Row, Table} from './tables.ts'

/** The cell of a row under a heading; null when the table has no such column. */
export function cellUnder(table: Table, name: string): (row: Row) => Cell | null {
  const index = table.columns.findIndex(column => column.name === name)
  return row => row.cells[index] ?? null
}

/** The value of a cell; null when nothing is written there, undefined when it cannot be read (and that is noted). */
export function readCell<T>(cell: Cell | null, shape: Shape<T>, note: Note): T | null | undefined {
  return cell === null || cell.text === '' ? null : shape.read(cell.text, cell.at, note)
}

/** The value of a cell that a row cannot do without; undefined, and noted, when it is empty. */
export function needCell<T>(cell: Cell | null, what: string, shape: Shape<T>, note: Note): T | undefined {
  const value = readCell(cell, shape, note)
  if (value === null && cell !== null) {
    note({code: 'no-value', severity: 'error', at: cell.at, reason: `the row has no ${what}`, remedy: `write ${shape.says}, or take the row out`})
  }
  return value ?? undefined
}
