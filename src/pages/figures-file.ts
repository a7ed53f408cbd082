/** A table of figures as a file: whole and unrounded, as CSV or JSON. */
import type {FiguresTable} from '../findings/figures.ts'

/** RFC 4180 quoting: a cell with a comma, a quotation mark or a line break is quoted, a quotation mark doubled. */
function csvCell(cell: string | number | null): string {
  const text = cell === null ? '' : String(cell)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

/** Comma-separated, a head line first, lines ending in `\n`; numbers whole and unrounded, empty where nothing can be said. */
export function csvOf({columns, rows}: FiguresTable): string {
  return [columns.map(column => column.name), ...rows].map(row => `${row.map(csvCell).join(',')}\n`).join('')
}

/** A list of objects, a line each, null where nothing can be said. */
export function jsonOf({columns, rows}: FiguresTable): string {
  const lines = rows.map(row => JSON.stringify(Object.fromEntries(columns.map(({name}, index) => [name, row[index] ?? null]))))
  return lines.length === 0 ? '[]\n' : `[\n${lines.join(',\n')}\n]\n`
}
