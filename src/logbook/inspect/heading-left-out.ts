import {draftInForce} from '../draft-in-force.ts'
import {draftsInDoubt} from '../drafts-in-doubt.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const show = (more: string) => `---\nname: Autumn show\non: 2024-11-02\nscores:\n  - {bird: H-1, draft: 1, Type and carriage: 52 of 60${more}}\n---\n`

export const entry: ManualEntry = {
  code: 'heading-left-out', severity: 'warning', title: 'A sheet of points that leaves out a heading of the scale',
  cause: 'A sheet of points of a show gives no points under a heading that the scale of its draft has. It has no sum to hold against another: it is shown and held heading by heading, but not as a whole.',
  remedy: 'Write the points of the missing heading, or the draft that was scored by. Where nobody gave any, the warning may stand.',
  wrong: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show('')},
  right: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show(', Colour: 31 of 40')},
}

const plain = (heading: string): string => heading.trim().toLowerCase()

/** One slip a show and set of headings. A sheet with a heading that the scale does not have is told of for that; on a scoring day an empty cell is no slip. */
export function check({bench, book}: Linked): void {
  if (draftsInDoubt(bench)) return
  for (const show of book.shows) {
    const told = new Set<string>()
    for (const {draft: number, headings, at} of show.scores ?? []) {
      const draft = draftInForce(book.drafts, number, show.on.last), names = new Set(headings.map(({name}) => plain(name)))
      const missing = (draft?.points ?? []).filter(({name}) => !names.has(plain(name))).map(({name}) => name), key = `${draft?.number ?? ''}\n${missing.join('\n')}`
      if (!draft || missing.length === 0 || told.has(key) || headings.some(({name}) => !draft.points.some(each => plain(each.name) === plain(name)))) continue
      told.add(key)
      bench.note(slipOf(entry, at, `no points under ${missing.join(', ')}, which ${missing.length === 1 ? 'is a heading' : 'are headings'} of the scale of draft ${draft.number}`,
        'write them, or the draft that was scored by; without them the sheet has no sum', {at: draft.at, note: `draft ${draft.number} stands here`}))
    }
  }
}
