import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (number: number, on: string) => `---\ndraft: ${number}\non: ${on}\n---\n## General characteristics, male\n\n**Tail.** Of medium length.\n`

export const entry: ManualEntry = {
  code: 'drafts-out-of-order', severity: 'warning', title: 'Drafts whose dates do not follow their numbers',
  cause: 'Two drafts of the standard carry the same date, or one with a higher number the earlier date. Which of them a score was made under can then not be told by its day.',
  remedy: 'Mend the date or the number.',
  wrong: {'standard/1.md': draft(1, '2024-10-01'), 'standard/2.md': draft(2, '2024-10-01')},
  right: {'standard/1.md': draft(1, '2024-10-01'), 'standard/2.md': draft(2, '2024-11-12')},
}

export function check({bench, book}: Linked): void {
  book.drafts.forEach((draft, index) => {
    const before = book.drafts[index - 1]
    if (!before || before.number === draft.number) return
    const same = before.on.first === draft.on.first && before.on.last === draft.on.last
    if (!same && draft.on.last >= before.on.first) return
    bench.note(slipOf(entry, inside(draft.at, 'on'), same ? `draft ${draft.number} has the date of draft ${before.number}, ${draft.on.text}` : `draft ${draft.number} is of ${draft.on.text}, before draft ${before.number} of ${before.on.text}`,
      'mend the date or the number', {at: inside(before.at, 'on'), note: `draft ${before.number} stands here`}))
  })
}
