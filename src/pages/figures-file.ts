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

/** A list of objects, null where nothing can be said. */
export function jsonOf({columns, rows}: FiguresTable): string {
  const objects = rows.map(row => Object.fromEntries(columns.map(({name}, index) => [name, row[index] ?? null])))
  return `${JSON.stringify(objects, null, 2)}\n`
}
