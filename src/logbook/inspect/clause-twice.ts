import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (second: string) => `---\ndraft: 1\non: 2024-10-01\n---\n## General characteristics, male\n\n**Tail.** Of medium length.\n\n**${second}.** Long and curved.\n`

export const entry: ManualEntry = {
  code: 'clause-twice', severity: 'warning', title: 'Two clauses of one name',
  cause: 'In the latest draft two clauses of a section, or two sections, have one name. The second is known by a number, tail-2: another draft, in which they stand the other way round or only one is left, takes the one for the other.',
  remedy: 'Give the second another name, or make one of the two.',
  wrong: {'standard/1.md': draft('Tail')},
  right: {'standard/1.md': draft('Sickles')},
}

export const headingTwice = (what: 'section' | 'clause', title: string, at: Spot, first: Spot): Slip =>
  slipOf(entry, at, `${what === 'clause' ? `the section has a clause ${title}` : `the draft has a section ${title}`} already`, 'give one of the two another name, or make one of both', {at: first, note: 'the first stands here'})
