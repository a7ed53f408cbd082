/** Reading a row's cells through the same shapes as front matter. */
import type {Note, Slip} from './problem.ts'
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

/** So many further places of one slip are listed. */
const LISTED = 5

/** Takes the slips of a column and notes at its end, as one, those values that cannot be read for the same reason: such a column is mended in one go. */
export function notedTogether(note: Note): {readonly note: Note; end(): void} {
  const alike = new Map<string, Slip[]>()
  return {
    note(slip) {
      if (slip.code !== 'unreadable-value') return note(slip)
      const key = slip.reason.replace(/“.*”/, '')
      const others = alike.get(key)
      if (others) others.push(slip)
      else alike.set(key, [slip])
    },
    end() {
      for (const [first, ...others] of alike.values()) {
        if (first === undefined) continue
        note(others.length === 0 ? first : {
          ...first, reason: `${first.reason}; so it is in ${others.length} further row${others.length === 1 ? '' : 's'}`,
          related: others.slice(0, LISTED).map(({at}) => ({at, note: 'also at'})),
        })
      }
    },
  }
}
