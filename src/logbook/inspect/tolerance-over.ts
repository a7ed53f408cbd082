import {yearOf} from '../../records/dates.ts'
import {inside} from '../../records/problem.ts'
import {clausesOf} from '../clauses-of.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (until: number) => `---
draft: 1
on: 2024-10-01
clauses:
  general-characteristics-male/comb:
    trait: comb
    accepted: {what: An uneven comb, until: ${until}, then: serious}
---
## General characteristics, male

**Comb.** Pea, even.
`

export const entry: ManualEntry = {
  code: 'tolerance-over', severity: 'warning', title: 'Accepted until a season before the draft',
  cause: 'The latest draft accepts something until a season that was over in the year the draft was made: it never held.',
  remedy: 'Mend the season, or take accepted: out and let the clause say what it is.',
  wrong: {'standard/1.md': draft(2022)},
  right: {'standard/1.md': draft(2026)},
}

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book})
  if (!draft) return
  const year = yearOf(draft.on.first)
  for (const {id, accepted, at} of clausesOf(draft)) {
    if (accepted && accepted.until < year) bench.note(slipOf(entry, 'path' in at ? inside({file: at.file, path: at.path}, 'accepted', 'until') : at, `${id} accepts it until ${accepted.until}, and the draft is of ${draft.on.text}`, 'mend the season, or take accepted: out'))
  }
}
