import {orNear} from '../../records/near.ts'
import type {Slip} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const show = (judge: string) => `---\nname: Autumn show\non: 2024-11-02\njudges: {j1: {name: A judge, consent: no}}\nentries:\n  - {bird: H-1, class: cock, judge: ${judge}, result: 1 of 4}\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-judge', severity: 'warning', title: 'A judge whom the show does not list',
  cause: 'An entry names a judge by a short name that the show’s judges do not have. They are counted as a judge of their own, and never named.',
  remedy: 'Write the short name as it stands under judges, or add the judge there.',
  wrong: {'shows/2024-11-02-ternhouse.md': show('j11')},
  right: {'shows/2024-11-02-ternhouse.md': show('j1')},
}

export const unknownJudge = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `the show lists no judge ${ref.text}`, orNear(near, `add ${ref.text} to judges`))
