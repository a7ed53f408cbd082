import {near, orNear} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import {draftInForce} from '../draft-in-force.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const show = (heading: string) => `---\nname: Autumn show\non: 2024-11-02\nscores:\n  - {bird: H-1, draft: 1, ${heading}: 52 of 60}\n---\n`

export const entry: ManualEntry = {
  code: 'sheet-off-scale', severity: 'warning', title: 'A score sheet of a show that does not go by its draft’s scale',
  cause: 'A score sheet of a show has a heading that the scale of the draft it was scored under does not have, or has with other full points. The sheet is shown as it is; but where heading is held against heading, it stands aside.',
  remedy: 'Mend the heading, the points or the draft. Where a judge went by a scale of his own, the warning may stand.',
  wrong: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show('Type')},
  right: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show('Type and carriage')},
}

/** One slip a show and heading. */
export function check({bench, book}: Linked): void {
  for (const show of book.shows) {
    const told = new Set<string>()
    for (const {draft: number, headings, at} of show.scores ?? []) {
      const draft = draftInForce(book.drafts, number, show.on.last)
      if (!draft || draft.points.length === 0) continue
      for (const {name, of} of headings) {
        const own = draft.points.find(each => each.name.toLowerCase() === name.toLowerCase()), key = `${name}\n${own && of !== own.points ? of ?? '' : ''}`
        if (told.has(key) || (own && (of === null || of === own.points))) continue
        told.add(key)
        const names = draft.points.map(each => each.name)
        bench.note(own ? slipOf(entry, inside(at, name), `${name} is out of ${of} here, and of ${own.points} in draft ${draft.number}`, 'mend the points or the draft', {at: draft.at, note: `draft ${draft.number} stands here`})
          : slipOf(entry, inside(at, name), `the scale of draft ${draft.number} has no heading ${name}`, orNear(near(name, names), `it has ${names.join(', ')}`), {at: draft.at, note: `draft ${draft.number} stands here`}))
      }
    }
  }
}
