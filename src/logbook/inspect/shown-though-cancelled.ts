import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const show = (more: string) => `---\nname: Autumn show\non: 2024-11-02\n${more}entries:\n  - {bird: H-1, class: cock, result: 1 of 4}\n---\n`

export const entry: ManualEntry = {
  code: 'shown-though-cancelled', severity: 'warning', title: 'Birds shown at a show that was cancelled',
  cause: 'A show is marked as officially cancelled and has entries or score sheets all the same. What was cancelled counts for no bird, so they are left aside.',
  remedy: 'Take out cancelled, or the entries; birds that were only to be shown are told in the text.',
  wrong: {'shows/2024-11-02-ternhouse.md': show('cancelled: All gatherings were forbidden.\n')},
  right: {'shows/2024-11-02-ternhouse.md': show('')},
}

export function check({bench, book}: Linked): void {
  for (const {cancelled, entries, scores = [], name, at} of book.shows) {
    const [first] = [...entries, ...scores]
    if (cancelled !== null && first) bench.note(slipOf(entry, inside(at, 'cancelled'), `${name} was officially cancelled, but birds stand in it`, 'take out cancelled, or the entries', {at: first.at, note: 'the first stands here'}))
  }
}
