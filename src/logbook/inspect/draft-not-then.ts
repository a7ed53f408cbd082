import {inside, type Spot} from '../../records/problem.ts'
import {draftsInDoubt} from '../drafts-in-doubt.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'
import {unknownDraft} from './unknown-draft.ts'

const DRAFT = '---\ndraft: 1\non: 2024-08-10\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const show = (on: string) => `---\nname: Show\non: ${on}\nentries:\n  - {bird: H-1, class: cock, result: 2 of 5, draft: 1}\n---\n`

export const entry: ManualEntry = {
  code: 'draft-not-then', severity: 'warning', title: 'Shown under a draft that was not there',
  cause: 'A line of a show names the draft of the standard it was judged by, and that draft bears a later date than the show.',
  remedy: 'Mend the number or the day. Without a number the draft in force on the day is taken.',
  wrong: {'standard/1.md': DRAFT, 'shows/2024-06-01-hall.md': show('2024-06-01')},
  right: {'standard/1.md': DRAFT, 'shows/2024-09-28-hall.md': show('2024-09-28')},
}

/** One slip a show and draft. */
export function check({bench, book}: Linked): void {
  if (draftsInDoubt(bench)) return
  for (const show of book.shows) {
    const named = new Map<number, Spot>()
    for (const {draft, at} of [...show.entries, ...(show.scores ?? [])]) if (draft !== null && !named.has(draft)) named.set(draft, at)
    for (const [number, at] of named) {
      const draft = book.drafts.find(each => each.number === number)
      if (!draft) bench.note(unknownDraft(number, inside(at, 'draft'), book.drafts.map(each => each.number)))
      else if (draft.on.first > show.on.last) {
        bench.note(slipOf(entry, inside(at, 'draft'), `shown ${show.on.text} under draft ${number}, which is of ${draft.on.text}`, 'mend the number or the day', {at: draft.at, note: `draft ${number} stands here`}))
      }
    }
  }
}
