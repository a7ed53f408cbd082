/** folder → logbook, with everything that is wrong on the way, placed. What publish, inspect and figures begin with. */
import {heredityWarnings} from '../findings/heredity-warnings.ts'
import {standardWarnings} from '../findings/standard-warnings.ts'
import {study, type Findings} from '../findings/study.ts'
import type {Confidential} from '../logbook/confidential.ts'
import type {Logbook} from '../logbook/book.ts'
import {link} from '../logbook/link.ts'
import type {Day} from '../records/dates.ts'
import {folderOnDisk} from '../records/folder.ts'
import {locate} from '../records/locate.ts'
import type {Problem, Slip} from '../records/problem.ts'
import {readRecords} from '../records/read.ts'
import type {Progress} from './progress.ts'

export interface OpenedBook {
  /** null when there is no project to hold it together */
  readonly book: Logbook | null
  /** what only the committee's dossier may hold; null where none is asked for */
  readonly confidential: Confidential | null
  /** worked as they are asked for; null where there is no book, or one at fault */
  readonly findings: Findings | null
  /** what reading and linking found */
  readonly problems: readonly Problem[]
  /** the same with the warnings that only the working of heredity gives; of a book at fault none are worked */
  allProblems(): readonly Problem[]
  readonly files: number
  /** an error among the problems: nothing may be published */
  readonly atFault: boolean
}

export function openBook(folder: string, asOf: Day | undefined, progress: Progress): OpenedBook {
  progress.phase('reading')
  const reading = readRecords(folderOnDisk(folder))
  progress.phase('linking')
  const {book, slips, confidential} = link(reading, {asOf})
  const located = (more: readonly Slip[]) => locate([...reading.slips, ...slips, ...more], file => reading.texts.get(file) ?? null)
  const problems = located([])
  const atFault = book === null || problems.some(problem => problem.severity === 'error')
  const findings = book === null || atFault ? null : study(book)
  return {
    book, confidential, findings, problems, files: reading.files, atFault,
    allProblems() {
      if (!findings) return problems
      progress.phase('weighing looks')
      const warnings = [...standardWarnings(findings.book), ...heredityWarnings(findings)]
      return warnings.length === 0 ? problems : located(warnings)
    },
  }
}
