/** folder → logbook, with everything that is wrong on the way, placed. What publish, inspect and figures begin with. */
import type {Logbook} from '../logbook/book.ts'
import {link} from '../logbook/link.ts'
import type {Day} from '../records/dates.ts'
import {folderOnDisk} from '../records/folder.ts'
import {locate} from '../records/locate.ts'
import type {Problem} from '../records/problem.ts'
import {readRecords} from '../records/read.ts'
import type {Progress} from './progress.ts'

export interface OpenedBook {
  /** null when there is no project to hold it together */
  readonly book: Logbook | null
  readonly problems: readonly Problem[]
  readonly files: number
  /** an error among the problems: nothing may be published */
  readonly atFault: boolean
}

export function openBook(folder: string, asOf: Day | undefined, progress: Progress): OpenedBook {
  progress.phase('reading')
  const reading = readRecords(folderOnDisk(folder))
  progress.phase('linking')
  const {book, slips} = link(reading, {asOf})
  const problems = locate([...reading.slips, ...slips], file => reading.texts.get(file) ?? null)
  return {book, problems, files: reading.files, atFault: book === null || problems.some(problem => problem.severity === 'error')}
}
