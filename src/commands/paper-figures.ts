/** The questions of `pinfeather figures` on the papers: the standard beside the flock. One line a question. */
import {clausesTable} from '../findings/clauses-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import type {Findings} from '../findings/study.ts'
import {CLAUSES_COLUMN_WORDS} from '../pages/clauses-columns.ts'
import {clausesToRead} from './clauses-to-read.ts'
import type {ToRead} from './forecast-to-read.ts'

export interface PaperFigures {
  readonly table: (findings: Findings) => FiguresTable
  readonly toRead: (findings: Findings) => ToRead
  /** why there are no rows, where there are none */
  readonly none: string
  /** options of the example, and what it answers */
  readonly example: readonly [options: string, answers: string]
  readonly columns: Readonly<Record<string, string>>
}

export const PAPER_QUESTIONS = ['clauses'] as const
export type PaperQuestion = (typeof PAPER_QUESTIONS)[number]

export const PAPER_FIGURES: Readonly<Record<PaperQuestion, PaperFigures>> = {
  clauses: {table: clausesTable, toRead: clausesToRead, none: 'the standard has not been drafted', example: ['', 'which clauses of the standard the flock meets, the worst first'], columns: CLAUSES_COLUMN_WORDS.clauses},
}

export const isPaperQuestion = (question: string): question is PaperQuestion => PAPER_QUESTIONS.some(each => each === question)
