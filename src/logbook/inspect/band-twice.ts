import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const FIRST = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n---\n'

export const entry: ManualEntry = {
  code: 'band-twice', severity: 'error', title: 'A band given twice',
  cause: 'Two birds wear the same band at the same time: a number written twice, or a band used again while its first wearer may still wear it.',
  remedy: 'Give one of them its own band. Where the first had left or changed its band by then, write that: left, or bands with their dates.',
  wrong: {'hatches/2024-08.md': FIRST, 'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-30\non: 2024-04-20\nchicks:\n  - {band: 24-901, sex: female}\n---\n'},
  right: {'hatches/2024-08.md': FIRST, 'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-30\non: 2024-04-20\nchicks:\n  - {band: 24-902, sex: female}\n---\n'},
}

/** The remedy stands with the first place, so that one line shows both. */
export const bandTwice = (band: string, at: Spot, first: Spot): Slip =>
  slipOf(entry, at, `band ${band} is given twice`,
    'every bird needs a band of its own; where the first bird had left or changed its band by then, write when', {at: first, note: 'first given here'})
