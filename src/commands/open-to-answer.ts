/** The book opened for a command that only answers: where it cannot be, the reason is told and the exit code given. */
import type {Findings} from '../findings/study.ts'
import type {Logbook} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {inspectReport} from './inspect-report.ts'
import {openBook} from './open-book.ts'
import {progressIn} from './progress.ts'
import type {ExitCode, World} from './world.ts'

export interface OpenAsked {
  readonly asOf: Day | undefined
  readonly quiet: boolean
  /** what was not done where records are at fault: `No sheet was made.` */
  readonly outcome: string
}

export function openToAnswer(folder: string, {asOf, quiet, outcome}: OpenAsked, world: World): {readonly book: Logbook; readonly findings: Findings} | ExitCode {
  const progress = progressIn(world, quiet)
  const {book, findings, problems, files} = openBook(folder, asOf, progress)
  progress.end()
  if (book !== null && findings !== null) return {book, findings}
  world.err(inspectReport(problems, {folder, files, colour: world.colour.err, outcome}))
  return 1
}
