/** A table of figures as text: rounded for reading, or whole as CSV and JSON. Nothing here prints. */
import type {FigureColumn, FiguresTable} from '../findings/figures.ts'
import {csvOf, jsonOf} from '../pages/figures-file.ts'
import {NOTHING, percentSign, rounded} from '../pages/numbers.ts'

export type FigureFormat = 'table' | 'csv' | 'json'

type Cell = string | number | null

/** What is not quite nothing, or not quite all, does not read as if it were. */
function shareText(share: number): string {
  if (share > 1e-12 && share < 0.0005) return '< 0.1%'
  return share < 1 - 1e-12 && share >= 0.9995 ? '> 99.9%' : percentSign(share)
}

/** One cell as a reader wants it: shares in per cent to a tenth, measures to a tenth of their unit. */
function readable(cell: Cell, as: FigureColumn['as']): string {
  if (cell === null) return NOTHING
  if (typeof cell === 'string') return as === 'parents' ? cell.replace(/:(0?\.\d{3,}|[\de.-]+e-\d+)(?= |$)/g, (_, chance: string) => `:${rounded(Number(chance), 2)}`) : cell
  return as === 'share' ? shareText(cell) : as === 'measure' ? rounded(cell, 1) : String(cell)
}

function alignedTable({columns, rows}: FiguresTable, none: string): string {
  const lines = [columns.map(column => column.name), ...rows.map(row => columns.map(({as, asIn}, index) => readable(row[index] ?? null, asIn?.(row) ?? as)))]
  const widths = columns.map((_, index) => lines.reduce((widest, line) => Math.max(widest, line[index]?.length ?? 0), 0))
  const text = lines.map(line => columns.map(({as}, index) => {
    const cell = line[index] ?? '', width = widths[index] ?? 0
    return as === 'text' || as === 'parents' ? cell.padEnd(width) : cell.padStart(width)
  }).join('  ').trimEnd())
  if (rows.length === 0) text.push(`(no rows: ${none})`)
  return `${text.join('\n')}\n`
}

const WRITERS: Readonly<Record<FigureFormat, (table: FiguresTable, none: string) => string>> = {table: alignedTable, csv: csvOf, json: jsonOf}

/**
 * The table in the format asked for, ending in a line break.
 *
 * @param none  why there are no rows, in a clause: said beneath an empty table made to be read
 */
export const figuresText = (table: FiguresTable, format: FigureFormat, none: string): string => WRITERS[format](table, none)
