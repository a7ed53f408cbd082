/** Why a question has no rows to answer it with, in a clause. */
import type {FigureQuestion} from '../findings/figures.ts'
import {LEAST_IN_CLASS} from '../findings/spread.ts'
import type {Findings} from '../findings/study.ts'
import {countWord} from '../pages/numbers.ts'

function whyNoSpread({spread, book}: Findings): string | null {
  if (spread.rows.length > 0 || spread.unsexed.length > 0) return `no class of one sex, reared alike, has ${countWord(LEAST_IN_CLASS)} weighed birds`
  const weighed = book.looseWeighings.length > 0 || book.birds.some(bird => bird.weighings.length > 0)
  return weighed ? 'birds are weighed, but no chick of a step on a day that counts for a measured trait' : null
}

/** @param asOfDay  a day was asked for, so that the records may know more */
export function whyNoRows(question: FigureQuestion, findings: Findings, asOfDay: boolean): string {
  const why = (question === 'spread' ? whyNoSpread(findings) : null) ?? 'nothing of this kind is on record'
  return asOfDay ? `${why} by that day` : why
}
