import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const scores = (draft: string) => `band,on,by,draft,comb\nH-1,2024-10-02,inga,${draft},single\n`

export const entry: ManualEntry = {
  code: 'unknown-draft', severity: 'error', title: 'A draft of the standard that is not on record',
  cause: 'A scoring day, an observation or a line of a show names the draft that was scored by, and the folder standard/ has no draft of that number.',
  remedy: 'Write the number of a draft on record, or leave it out: then the draft in force on that day is taken.',
  wrong: {'standard/1.md': DRAFT, 'scores/2024-10.csv': scores('11')},
  right: {'standard/1.md': DRAFT, 'scores/2024-10.csv': scores('1')},
}

export const unknownDraft = (number: number, at: Spot, known: readonly number[]): Slip =>
  slipOf(entry, at, `there is no draft ${number} of the standard`, known.length === 0 ? 'leave it out until a draft stands in standard/' : `write ${known.length === 1 ? String(known[0]) : `one of ${[...new Set(known)].join(', ')}`}, or leave it out for the one in force on that day`)
