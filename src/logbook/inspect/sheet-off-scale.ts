import {near} from '../../records/near.ts'
import {inside, type Slip, type Spot} from '../../records/problem.ts'
import type {Draft} from '../book.ts'
import {draftInForce} from '../draft-in-force.ts'
import {draftsInDoubt} from '../drafts-in-doubt.ts'
import type {Linked} from '../linked.ts'
import {headingNotInScale} from './heading-not-in-scale.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'
import {tooManyPoints} from './too-many-points.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const show = (heading: string) => `---\nname: Autumn show\non: 2024-11-02\nscores:\n  - {bird: H-1, draft: 1, ${heading}: 52 of 60}\n---\n`

export const entry: ManualEntry = {
  code: 'sheet-off-scale', severity: 'warning', title: 'A score sheet of a show that does not go by its draft’s scale',
  cause: 'A score sheet of a show has a heading that no draft’s scale has and that is near to none of them, or says that one is out of other points. The sheet is shown as it is; but where heading is held against heading, it stands aside.',
  remedy: 'Mend the heading, the points or the draft. Where a judge went by a scale of his own, the warning may stand.',
  wrong: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show('Type')},
  right: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show('Colour: 31 of 40, Type and carriage')},
}

/** One slip a show and heading. */
export function check({bench, book}: Linked): void {
  if (draftsInDoubt(bench)) return
  for (const show of book.shows) {
    const told = new Set<string>()
    for (const {draft: number, headings, at} of show.scores ?? []) {
      const draft = draftInForce(book.drafts, number, show.on.last)
      if (!draft || draft.points.length === 0) continue
      for (const {name, points, of} of headings) {
        const own = draft.points.find(each => each.name.toLowerCase() === name.toLowerCase()), key = `${name}\n${own && of !== own.points ? of ?? points : ''}`
        if (told.has(key) || (own && (of === null ? points <= own.points : of === own.points))) continue
        told.add(key)
        bench.note(slipIn({name, points, of, own, spot: inside(at, name)}, draft, book.drafts))
      }
    }
  }
}

interface HeadingAtFault {
  readonly name: string
  readonly points: number
  readonly of: number | null
  /** of the draft's scale */
  readonly own: {readonly name: string; readonly points: number} | undefined
  readonly spot: Spot
}

/** What would be an error on a scoring day is one here: a heading mistyped or of another draft, more points than it has. A judge's own heading, or his own full points, may stand. */
function slipIn({name, points, of, own, spot}: HeadingAtFault, draft: Draft, drafts: readonly Draft[]): Slip {
  const here = {at: draft.at, note: `draft ${draft.number} stands here`}, names = draft.points.map(each => each.name), like = near(name, names)
  const having = drafts.filter(({points: scale}) => scale.some(each => each.name.toLowerCase() === name.toLowerCase())).map(({number}) => number)
  if (own) return of === null ? tooManyPoints(String(points), own, draft.number, spot) : slipOf(entry, spot, `${name} is out of ${of} here, and of ${own.points} in draft ${draft.number}`, 'mend the points or the draft', here)
  return like.length > 0 || having.length > 0 ? headingNotInScale(name, draft, spot, like, having) : slipOf(entry, spot, `the scale of draft ${draft.number} has no heading ${name}`, `it has ${names.join(', ')}`, here)
}
