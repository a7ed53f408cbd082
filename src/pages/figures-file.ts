/** A table of figures as a file, as CSV or JSON: numbers whole and unrounded, or to twelve digits. */
import type {FiguresTable} from '../findings/figures.ts'

/** More tell nothing: the last four of a binary fraction's sixteen are the noise of working it. */
const DIGITS = 12

/** A number to twelve digits; anything else as it is. */
export const toTwelveDigits = (value: unknown): unknown => (typeof value === 'number' ? Number(value.toPrecision(DIGITS)) : value)

/** A table with its numbers to twelve digits, for whoever has not the records to work it anew; the chances of parents are told in a text. */
export const tableToTwelveDigits = ({columns, rows}: FiguresTable): FiguresTable => ({
  columns, rows: rows.map(row => row.map((cell, index) => {
    if (typeof cell === 'number') return Number(cell.toPrecision(DIGITS))
    return cell !== null && columns[index]?.as === 'parents' ? cell.replace(/:(\d\.\d+)(?= |$)/g, (_, chance: string) => `:${Number(Number(chance).toPrecision(DIGITS))}`) : cell
  })),
})

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
