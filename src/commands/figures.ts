/** `pinfeather figures`: one answer, for people who want numbers without a site. */
import {FIGURE_QUESTIONS, figuresTable, pairTable, type FigureQuestion} from '../findings/figures.ts'
import type {Bird, Logbook} from '../logbook/book.ts'
import {pairReasonWords} from '../pages/pair-reason-words.ts'
import {near, orNear, slipsBetween} from '../records/near.ts'
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
  /** for `kinship`: the bands of two birds, and these alone */
  readonly pair?: readonly [string, string] | undefined
}

const isQuestion = (word: string): word is FigureQuestion => FIGURE_QUESTIONS.some(question => question === word)

/** Prints the table on the output; problems go to the error stream, and records at fault give no figures. */
export function figures({question, folder, format, asOf, quiet, pair}: FiguresOptions, world: World): ExitCode {
  if (!isQuestion(question)) {
    world.err(`There is no question “${question}”; ${orNear(near(question, FIGURE_QUESTIONS), `ask one of ${FIGURE_QUESTIONS.join(', ')}`)}\n`)
    return 2
  }
  if (pair && question !== 'kinship') {
    world.err('A pair is asked about with figures kinship.\n')
    return 2
  }
  const refused = folderRefusal(folder)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const progress = progressIn(world, quiet)
  const {book, findings, problems, files} = openBook(folder, asOf, progress)
  progress.end()
  if (book === null || findings === null) {
    world.err(inspectReport(problems, {folder, files, colour: world.colour.err, outcome: 'No figures were worked.'}))
    return 1
  }
  if (!pair) {
    world.out(figuresText(figuresTable(question, findings), format, whyNoRows(question, findings, asOf !== undefined)))
    return 0
  }
  const [a, b] = pair.map(band => birdOf(book, band))
  const missing = pair.find((_, index) => !(index === 0 ? a : b))
  if (!a || !b) {
    world.err(`No bird of the book wears ${missing}; ${orNear(meant(missing ?? '', book), 'write its band as in the records')}\n`)
    return 2
  }
  world.out(figuresText(pairTable(findings, a, b), format, ''))
  // a reader of the rounded table is told why; the other formats stay plain for programs
  if (format === 'table' && a !== b) world.out(`${pairReasonWords(findings.pairReason(a, b))}\n`)
  return 0
}

/** Bands that differ in signs, capitals or two places changed: in a row of numbers every other number is a letter away. */
function meant(band: string, book: Logbook): readonly string[] {
  return near(band, book.birds.flatMap(bird => bird.bands.map(each => each.band))).filter(other => (slipsBetween(band, other) ?? 2) < 1)
}

/** By its id, else by a band that it and no other has worn. */
function birdOf(book: Logbook, band: string): Bird | undefined {
  const worn = book.birds.filter(bird => bird.bands.some(each => each.band === band))
  return book.birds.find(({id}) => id === band) ?? (worn.length === 1 ? worn[0] : undefined)
}
