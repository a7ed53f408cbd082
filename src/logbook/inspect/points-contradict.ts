import {inside} from '../../records/problem.ts'
import {draftInForce} from '../draft-in-force.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const show = (points: number) => `---\nname: Autumn show\non: 2024-11-02\njudges: {j1: {name: A judge, consent: no}}\nentries:\n  - {bird: H-1, class: cock, judge: j1, result: 1 of 4, points: ${points}}\nscores:\n  - {bird: H-1, by: j1, draft: 1, Type and carriage: 52 of 60, Colour: 36 of 40}\n---\n`

export const entry: ManualEntry = {
  code: 'points-contradict', severity: 'warning', title: 'Points of an entry that are not the sum of its sheet',
  cause: 'A judge’s sheet of a bird gives other points in all than the line of the entry under the same judge: a slip of one of the two, or a sheet with other deductions than its headings tell.',
  remedy: 'Mend the points of the entry or of the heading that is wrong. Where the judge’s own card says both, the warning may stand.',
  wrong: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show(95)},
  right: {'standard/1.md': DRAFT, 'shows/2024-11-02-ternhouse.md': show(88)},
}

/** Sums of decimals differ in their last digits. */
const SAME = 1e-9

/** A sheet that lacks a heading of its scale has no sum, unless it is over the points already. A keeper's own sheet at a show is nobody's placing. */
export function check({bench, book}: Linked): void {
  for (const {entries, scores, on} of book.shows) for (const {bird, by, draft: number, headings, at} of scores ?? []) {
    if ((by !== null && typeof by !== 'string') || headings.length === 0) continue
    const own = entries.filter(entry => entry.bird === bird && entry.points !== null && (by === null || entry.judge === null || entry.judge === by)), [entered] = own
    const sum = headings.reduce((all, {points}) => all + points, 0), scale = draftInForce(book.drafts, number, on.last)?.points ?? []
    const whole = scale.every(({name}) => headings.some(heading => heading.name.toLowerCase() === name.toLowerCase()))
    if (!entered || entered.points === null || (!whole && sum < entered.points) || own.some(({points}) => Math.abs((points ?? 0) - sum) < SAME)) continue
    bench.note(slipOf(entry, inside(entered.at, 'points'), `${bird.band} has ${entered.points} points here, and ${Math.round(sum * 1000) / 1000} in all on its sheet`, 'mend the points here or under the heading that is wrong', {at, note: 'the sheet stands here'}))
  }
}
