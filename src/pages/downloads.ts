/** The files a reader may take away: every table of figures as CSV, the whole book as JSON, the schemas for editors. Public facts only. */
import {FIGURE_QUESTIONS, figuresTable, type FigureQuestion} from '../findings/figures.ts'
import type {Findings} from '../findings/study.ts'
import {jsonSchemaOf} from '../records/json-schema.ts'
import {KINDS, type KindId} from '../records/kinds.ts'
import {publicBook} from './book-json.ts'
import {csvOf, tableToTwelveDigits, toTwelveDigits} from './figures-file.ts'
import type {Download} from './page.ts'
import {schemaPath} from './record-formats.ts'
import {schemaInParts} from './schema-parts.ts'

export const BOOK_FILE = 'data/book.json'
/** Every table but that of all pairs of living birds, which grows with their square and has a command of its own. */
export type DownloadedQuestion = Exclude<FigureQuestion, 'kinship'>
export const DOWNLOADED_QUESTIONS = FIGURE_QUESTIONS.filter((question): question is DownloadedQuestion => question !== 'kinship')
export const figuresPath = (question: FigureQuestion): string => `data/${question}.csv`

/** What is not known is left out of the book rather than written as null a thousand times; a missing key says the same. A number has twelve digits. */
function withoutBlanks(key: string, value: unknown): unknown {
  const blank = value === null || value === false || (typeof value === 'object' && Object.keys(value).length === 0)
  return blank && key !== '' && !/^\d+$/.test(key) ? undefined : toTwelveDigits(value)
}

export function downloads(findings: Findings): readonly Download[] {
  const tables = DOWNLOADED_QUESTIONS.map(question => ({path: figuresPath(question), text: csvOf(tableToTwelveDigits(figuresTable(question, findings)))}))
  const schemas = (Object.keys(KINDS) as KindId[]).map(kind => ({path: schemaPath(kind), text: `${JSON.stringify(schemaInParts(jsonSchemaOf(kind)))}\n`}))
  return [...tables, {path: BOOK_FILE, text: `${JSON.stringify(publicBook(findings.book), withoutBlanks)}\n`}, ...schemas]
}
