/** The questions of `pinfeather figures` on the papers: the standard beside the flock. One line a question. */
import {clausesTable} from '../findings/clauses-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import {showsTable} from '../findings/shows-figures.ts'
import type {Findings} from '../findings/study.ts'
import {CLAUSES_COLUMN_WORDS} from '../pages/clauses-columns.ts'
import {EVIDENCE_COLUMN_WORDS} from '../pages/evidence-columns.ts'
import {CHANGES_COLUMN_WORDS} from '../pages/changes-columns.ts'
import {SHOWS_COLUMN_WORDS} from '../pages/shows-columns.ts'
import {changesFigures, changesToRead, type DraftsAsked} from './changes-to-read.ts'
import {clausesToRead} from './clauses-to-read.ts'
import {evidenceTable, evidenceToRead} from './evidence-to-read.ts'
import type {ToRead} from './forecast-to-read.ts'
import {showsToRead} from './shows-to-read.ts'

export interface PaperFigures {
  readonly table: (findings: Findings, asked: DraftsAsked) => FiguresTable
  readonly toRead: (findings: Findings, asked: DraftsAsked) => ToRead
  /** why there are no rows, where there are none */
  readonly none: string
  /** options of the example, and what it answers */
  readonly example: readonly [options: string, answers: string]
  readonly columns: Readonly<Record<string, string>>
}

export const PAPER_QUESTIONS = ['evidence', 'clauses', 'changes', 'shows'] as const
export type PaperQuestion = (typeof PAPER_QUESTIONS)[number]

export const PAPER_FIGURES: Readonly<Record<PaperQuestion, PaperFigures>> = {
  evidence: {table: evidenceTable, toRead: evidenceToRead, none: 'no requirement is on record', example: ['', 'what is asked for recognition, what is there, and the shortest way to the rest'], columns: EVIDENCE_COLUMN_WORDS},
  clauses: {table: clausesTable, toRead: clausesToRead, none: 'the standard has not been drafted', example: ['', 'which clauses of the standard the flock meets, the worst first'], columns: CLAUSES_COLUMN_WORDS.clauses},
  shows: {table: showsTable, toRead: showsToRead, none: 'no show is on record', example: ['--format csv', 'every entry, the judges beside our own marks, and what they said by clause'], columns: SHOWS_COLUMN_WORDS},
  changes: {table: changesFigures, toRead: changesToRead, none: 'nothing differs between the two drafts', example: ['--from 3 --to 5', 'what changed from one draft of the standard to another, word by word'], columns: CHANGES_COLUMN_WORDS},
}

export const isPaperQuestion = (question: string): question is PaperQuestion => PAPER_QUESTIONS.some(each => each === question)
