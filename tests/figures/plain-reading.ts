/**
 * The slow, obvious twin of the figures reads the same Markdown and CSV, with none of the project's code. It knows only what the drawn
 * books hold. Its rules are written from the description of the formats, so that a figure is computed twice by two minds.
 */
import {parse} from 'yaml'

export type Plain = string | Plain[] | {[key: string]: Plain}

const asMap = (value: Plain | undefined): {[key: string]: Plain} => (typeof value === 'object' && !Array.isArray(value) ? value : {})
const asList = (value: Plain | undefined): Plain[] => (Array.isArray(value) ? value : value === undefined ? [] : [value])
const asText = (value: Plain | undefined): string | null => (typeof value === 'string' ? value : null)
export const plain = {map: asMap, list: asList, text: asText}

/** Days since 1970 of a whole date; null of a partial or missing one. */
export function wholeDay(text: string | null): number | null {
  return text !== null && /^\d{4}-\d\d-\d\d$/.test(text) ? Date.parse(`${text}T00:00:00Z`) / 86_400_000 : null
}

export function daysIn(text: string): number {
  const [amount, word] = text.split(' ')
  return Number(amount) * (word?.startsWith('week') ? 7 : word?.startsWith('day') ? 1 : NaN)
}

/** The front matter of the files of one folder, by the file's name. */
export function recordsOf(files: ReadonlyMap<string, string>, folder: string): Map<string, {[key: string]: Plain}> {
  const found = new Map<string, {[key: string]: Plain}>()
  for (const [path, text] of files) {
    if (!path.startsWith(`${folder}/`) || !path.endsWith('.md')) continue
    found.set(path.slice(folder.length + 1, -3), asMap(parse(text.split('---\n')[1] ?? '', {schema: 'failsafe'}) as Plain))
  }
  return found
}

/** The rows of all tables of a folder, each as column → cell. Cells of drawn tables hold no commas. */
export function rowsOf(files: ReadonlyMap<string, string>, folder: string): Record<string, string>[] {
  const rows: Record<string, string>[] = []
  for (const [path, text] of files) {
    if (!path.startsWith(`${folder}/`) || !path.endsWith('.csv')) continue
    const [head = '', ...lines] = text.trim().split('\n')
    for (const line of lines) {
      const cells = line.split(',')
      rows.push(Object.fromEntries(head.split(',').map((column, n) => [column, cells[n] ?? ''])))
    }
  }
  return rows
}
