import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Draft} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (number: number, on: string, scale: string) => `---\ndraft: ${number}\non: ${on}\nscale: {${scale}}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n`
const DRAFTS = {'standard/1.md': draft(1, '2023-01-10', 'Type: 60, Colour: 40'), 'standard/2.md': draft(2, '2024-01-10', 'Type: 50, Colour: 40, Condition: 10')}
const scores = (draft: number) => `band,on,by,draft,Type,Colour,Condition\nH-1,2024-10-02,inga,${draft},44,33,9\n`

export const entry: ManualEntry = {
  code: 'heading-not-in-scale', severity: 'error', title: 'Points under a heading that the draft’s scale does not have',
  cause: 'A scoring day gives points under a heading of the scale of another draft than the one it was scored by. Points stay with their draft, since another scale shares them out otherwise.',
  remedy: 'Write the draft that was scored by under draft, or head the column as that draft’s scale does.',
  wrong: {...DRAFTS, 'scores/2024-10.csv': scores(1)},
  right: {...DRAFTS, 'scores/2024-10.csv': scores(2)},
}

/** @param draft null: none was in force on the day, and none is named */
export function headingNotInScale(heading: string, draft: Draft | null, at: Spot, near: readonly string[], having: readonly number[]): Slip {
  const elsewhere = having.length === 0 ? 'head the column as its scale does' : `write ${having.join(' or ')} under draft if that was scored by, or head the column as its scale does`
  return draft === null
    ? slipOf(entry, at, `“${heading}” stands in a scale of points, but no draft was in force on that day`, `write the draft that was scored by under draft${having.length === 0 ? '' : `, such as ${having.join(' or ')}`}`)
    : slipOf(entry, at, `the scale of draft ${draft.number} has no heading “${heading}”`, orNear(near, elsewhere))
}
