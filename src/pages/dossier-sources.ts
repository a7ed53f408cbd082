/** Where the dossier's numbers come from: part by part the page of the site that shows more, and the files of records behind them. */
import type {Findings} from '../findings/study.ts'
import type {Chicks} from '../logbook/book.ts'
import {BIRDS, HATCHES, LADDER, SHOWS, STANDARD} from './links.ts'
import {figured, listWords, NOTHING} from './numbers.ts'
import type {Cell, Table} from './page.ts'

interface Recorded {
  readonly at: {readonly file: string}
}

/** More files of one folder than this are counted. */
const NAMED = 4

/** `requirements.md`; `hatches/ (31 files) and birds/ (124 files)`. Where a file is not `tellable`, those of its folder are counted. */
export function filesWords(records: readonly Recorded[], tellable: ReadonlySet<string>): string {
  const folders = new Map<string, Set<string>>()
  for (const {at: {file}} of records) {
    const folder = file.slice(0, file.lastIndexOf('/') + 1)
    folders.set(folder, (folders.get(folder) ?? new Set()).add(file))
  }
  const parts = [...folders].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([folder, files]) =>
    (folder !== '' && (files.size > NAMED || [...files].some(file => !tellable.has(file))) ? [`${folder} (${figured(files.size, 'file')})`] : [...files].sort((a, b) => (a < b ? -1 : 1))))
  return parts.length === 0 ? NOTHING : listWords(parts)
}

/** A row a part, in the dossier's order; a part without records has none. */
export function sourcesTable({book, ladder}: Findings): Table | null {
  const chicks: readonly Chicks[] = ladder.flatMap(step => (step.kind === 'reached' ? [...step.birds, ...step.tallies] : []))
  const looks = chicks.flatMap(each => [...each.looks].flatMap(([trait, {counted}]) => (counted && trait.required ? [counted] : [])))
  const weighings = book.birds.flatMap(bird => (bird.step.kind === 'strain' ? [] : bird.weighings))
  const asked = book.requirements ? [book.requirements] : []
  const parts: readonly (readonly [string, string, readonly Recorded[]])[] = [
    ['Requirements', 'named beside each', asked],
    ['Table 1, every step', LADDER, [...book.hatches, ...book.pens, ...book.birds]],
    ['Trueness', LADDER, looks],
    ['Evenness', LADDER, weighings],
    ['Table 2, eggs', HATCHES, book.hatches],
    ['Table 3, chicks', BIRDS, chicks],
    ['Shows', SHOWS, book.shows],
    ['Distinctness and papers', NOTHING, asked],
    ['Proposed standard', STANDARD, book.drafts.slice(-1)],
  ]
  const rows = parts.flatMap(([part, site, records]): readonly (readonly Cell[])[] => (records.length === 0 ? [] : [[part, site, filesWords(records, book.tellableFiles)]]))
  return rows.length === 0 ? null : {columns: [{head: 'Part'}, {head: 'In the site'}, {head: 'In the records'}], rows}
}
