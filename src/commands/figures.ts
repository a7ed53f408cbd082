/** `pinfeather figures`: one answer, for people who want numbers without a site. */
import {FIGURE_QUESTIONS, figuresTable, pairTable} from '../findings/figures.ts'
import {EVENNESS_QUESTIONS, type EvennessQuestion} from '../findings/evenness-figures.ts'
import {HEREDITY_QUESTIONS, type HeredityQuestion} from '../findings/heredity-figures.ts'
import {LIFE_QUESTIONS, lifeTable, type LifeQuestion} from '../findings/life-figures.ts'
import {VIGOUR_QUESTIONS, vigourTable, type VigourQuestion} from '../findings/vigour-figures.ts'
import type {Findings} from '../findings/study.ts'
import {pairReasonWords} from '../pages/pair-reason-words.ts'
import {near, orNear} from '../records/near.ts'
import type {Day} from '../records/dates.ts'
import {birdOf, noSuchBird} from './bird-of.ts'
import {evennessAnswer, misplacedStep, type EvennessAsked} from './evenness-figures.ts'
import {heredityAnswer, misplacedOption, type HeredityAsked} from './heredity-figures.ts'
import {figuresText, type FigureFormat} from './figures-text.ts'
import {lifeToRead} from './life-to-read.ts'
import {openToAnswer} from './open-to-answer.ts'
import {isPaperQuestion, PAPER_FIGURES, PAPER_QUESTIONS, type PaperQuestion} from './paper-figures.ts'
import {folderRefusal} from './records-folder.ts'
import {Refusal} from './refusal.ts'
import {vigourToRead} from './vigour-to-read.ts'
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
  /** for the questions of heredity */
  readonly asked?: HeredityAsked
  /** for `change`: which steps; for `changes`: which drafts */
  readonly steps?: EvennessAsked
}

/** Every question there is. */
export const QUESTIONS = [...FIGURE_QUESTIONS, ...EVENNESS_QUESTIONS, ...LIFE_QUESTIONS, ...VIGOUR_QUESTIONS, ...PAPER_QUESTIONS, ...HEREDITY_QUESTIONS] as const

type Question = (typeof QUESTIONS)[number]

const isQuestion = (word: string): word is Question => QUESTIONS.some(question => question === word)
const isOfEvenness = (question: Question): question is EvennessQuestion => EVENNESS_QUESTIONS.some(each => each === question)
const isOfLife = (question: Question): question is LifeQuestion => LIFE_QUESTIONS.some(each => each === question)
const isOfVigour = (question: Question): question is VigourQuestion => VIGOUR_QUESTIONS.some(each => each === question)
const isOfHeredity = (question: Question): question is HeredityQuestion => HEREDITY_QUESTIONS.some(each => each === question)

/** why a question has no rows, where it has none */
const NO_VIGOUR: Readonly<Record<VigourQuestion, string>> = {
  depression: 'no hatch, weight or egg is on record',
  selection: 'no chick of a step has been scored or measured',
  crosses: 'no chick of two lines has been measured',
}

/** Prints the table on the output; problems go to the error stream, and records at fault give no figures. */
export function figures({question, folder, format, asOf, quiet, pair, asked = {}, steps = {}}: FiguresOptions, world: World): ExitCode {
  if (!isQuestion(question)) {
    world.err(`There is no question “${question}”; ${orNear(near(question, QUESTIONS), `ask one of ${QUESTIONS.join(', ')}`)}\n`)
    return 2
  }
  if (pair && question !== 'kinship') {
    world.err('A pair is asked about with figures kinship.\n')
    return 2
  }
  const misplaced = misplacedOption(question, asked) ?? misplacedStep(question, steps)
  if (misplaced !== null) {
    world.err(`${misplaced}\n`)
    return 2
  }
  const refused = folderRefusal(folder)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const opened = openToAnswer(folder, {asOf, quiet, outcome: 'No figures were worked.'}, world)
  if (typeof opened === 'number') return opened
  const {book, findings} = opened
  if (isOfEvenness(question)) return answerOfEvenness(question, findings, steps, format, world)
  if (isOfLife(question)) {
    const {above, table, beneath} = lifeToRead(question, findings), none = `no egg has been set or counted${asOf === undefined ? '' : ' by that day'}`
    world.out(format === 'table' ? `${above}${figuresText(table, format, none)}${beneath}` : figuresText(lifeTable(question, findings), format, none))
    return 0
  }
  if (isOfVigour(question)) {
    const {above, table, beneath} = vigourToRead(question, findings), none = `${NO_VIGOUR[question]}${asOf === undefined ? '' : ' by that day'}`
    world.out(format === 'table' ? `${above}${figuresText(table, format, none)}${beneath}` : figuresText(vigourTable(question, findings), format, none))
    return 0
  }
  if (isPaperQuestion(question)) return answerOfPaper(question, findings, steps, format, asOf === undefined ? '' : ' by that day', world)
  if (isOfHeredity(question)) return answerOfHeredity(question, findings, asked, format, world)
  if (!pair) {
    world.out(figuresText(figuresTable(question, findings), format, whyNoRows(question, findings, asOf !== undefined)))
    return 0
  }
  const [a, b] = pair.map(band => birdOf(book, band))
  const missing = pair.find((_, index) => !(index === 0 ? a : b))
  if (!a || !b) {
    world.err(`${noSuchBird(book, missing ?? '')}\n`)
    return 2
  }
  world.out(figuresText(pairTable(findings, a, b), format, ''))
  // a reader of the rounded table is told why; the other formats stay plain for programs
  if (format === 'table' && a !== b) world.out(`${pairReasonWords(findings.pairReason(a, b))}\n`)
  return 0
}

/** A reader gets what is said; the other formats every row. */
function answerOfPaper(question: PaperQuestion, findings: Findings, asked: EvennessAsked, format: FigureFormat, byThen: string, world: World): ExitCode {
  const {toRead, table, none} = PAPER_FIGURES[question]
  try {
    const read = format === 'table' ? toRead(findings, asked) : null
    world.out(read ? `${read.above}${figuresText(read.table, format, `${none}${byThen}`)}${read.beneath}` : figuresText(table(findings, asked), format, `${none}${byThen}`))
    return 0
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault
    world.err(`${fault.message}\n`)
    return 2
  }
}

/** A reader gets the counts and what may be said of them; the other formats every row. */
function answerOfEvenness(question: EvennessQuestion, findings: Findings, steps: EvennessAsked, format: FigureFormat, world: World): ExitCode {
  try {
    const {table, toRead, none} = evennessAnswer(question, findings, steps)
    world.out(format === 'table' ? `${toRead.above}${figuresText(toRead.table, format, none)}${toRead.beneath}` : figuresText(table, format, none))
    return 0
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault
    world.err(`${fault.message}\n`)
    return 2
  }
}

/** Warnings go to the error stream, before the rest; what is said beneath the table stays away from programs. */
function answerOfHeredity(question: HeredityQuestion, findings: Findings, asked: HeredityAsked, format: FigureFormat, world: World): ExitCode {
  try {
    const {table, toRead, warnings, said} = heredityAnswer(question, findings, asked)
    for (const warning of warnings) world.err(`${warning}\n`)
    if (format === 'table' && toRead) world.out(`${toRead.above}${figuresText(toRead.table, format, 'no trait has rules')}${toRead.beneath}`)
    else world.out(figuresText(table, format, 'no bird is on record'))
    if (format === 'table') world.out(said)
    return 0
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault
    world.err(`${fault.message}\n`)
    return 2
  }
}
