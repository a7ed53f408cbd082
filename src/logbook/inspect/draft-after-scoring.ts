import type {PartialDate} from '../../records/dates.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Draft} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const DRAFT = '---\ndraft: 1\non: 2024-08-10\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const scores = (on: string) => `band,on,by,draft,comb\nH-1,${on},inga,1,single\n`

export const entry: ManualEntry = {
  code: 'draft-after-scoring', severity: 'warning', title: 'Scored by a draft that was not written yet',
  cause: 'A scoring day names a draft of the standard that bears a later date than the day itself: a slip of the number or the day, or a draft that was scored by before it was dated.',
  remedy: 'Mend the draft or the day. Where a draft was tried before its date, the warning may stand.',
  wrong: {'standard/1.md': DRAFT, 'scores/2024.csv': scores('2024-06-02')},
  right: {'standard/1.md': DRAFT, 'scores/2024.csv': scores('2024-10-02')},
}

export const draftAfterScoring = (draft: Draft, on: PartialDate, at: Spot): Slip =>
  slipOf(entry, at, `scored on ${on.text} by draft ${draft.number}, which is of ${draft.on.text}`, 'mend the draft or the day', {at: draft.at, note: `draft ${draft.number} stands here`})
