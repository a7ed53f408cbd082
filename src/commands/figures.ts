/** `pinfeather figures`: one answer, for people who want numbers without a site. */
import {FIGURE_QUESTIONS, figuresTable, type FigureQuestion} from '../findings/figures.ts'
import {study} from '../findings/study.ts'
import {near, orNear} from '../records/near.ts'
import type {Day} from '../records/dates.ts'
import {inspectReport} from './inspect-report.ts'
import {figuresText, type FigureFormat} from './figures-text.ts'
import {openBook} from './open-book.ts'
import {progressIn} from './progress.ts'
import {folderRefusal} from './records-folder.ts'
import {whyNoRows} from './why-no-rows.ts'
import type {ExitCode, World} from './world.ts'

export interface FiguresOptions {
  readonly question: string
  readonly folder: string
  readonly format: FigureFormat
  readonly asOf: Day | undefined
  readonly quiet: boolean
}

const isQuestion = (word: string): word is FigureQuestion => FIGURE_QUESTIONS.some(question => question === word)

/** Prints the table on the output; problems go to the error stream, and records at fault give no figures. */
export function figures({question, folder, format, asOf, quiet}: FiguresOptions, world: World): ExitCode {
  if (!isQuestion(question)) {
    world.err(`There is no question “${question}”; ${orNear(near(question, FIGURE_QUESTIONS), `ask one of ${FIGURE_QUESTIONS.join(', ')}`)}\n`)
    return 2
  }
  const refused = folderRefusal(folder)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const progress = progressIn(world, quiet)
  const {book, problems, files, atFault} = openBook(folder, asOf, progress)
  progress.end()
  if (book === null || atFault) {
    world.err(inspectReport(problems, {folder, files, colour: world.colour.err, outcome: 'No figures were worked.'}))
    return 1
  }
  const findings = study(book)
  world.out(figuresText(figuresTable(question, findings), format, whyNoRows(question, findings, asOf !== undefined)))
  return 0
}
