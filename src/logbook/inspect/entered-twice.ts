import {inside} from '../../records/problem.ts'
import type {ShowEntry} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const show = (second: string) => `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: H-1, class: cock, result: 1 of 4}\n  - {bird: ${second}, class: cock, result: 3 of 4}\n---\n`

export const entry: ManualEntry = {
  code: 'entered-twice', severity: 'warning', title: 'A bird twice in one class of a show',
  cause: 'One bird stands twice in the same class of the same show under the same judge, or with one line that names none; or under two judges of whom one had fewer birds before him than the other, so that the class was parted between them and a bird stood before one: a line copied and not changed, or a band misread.',
  remedy: 'Mend the band or the class, or take one of the two lines out.',
  wrong: {'shows/2024-11-02-ternhouse.md': show('H-1')},
  right: {'shows/2024-11-02-ternhouse.md': show('H-2')},
}

/** Could both lines be right: two judges who judged the same class, each by himself? */
function bothStand(one: ShowEntry, other: ShowEntry): boolean {
  return one.judge !== null && other.judge !== null && one.judge !== other.judge && (one.of === null || other.of === null || one.of === other.of)
}

const classOf = ({class: name}: ShowEntry): string => (name ?? '').trim().toLowerCase()

export function check({bench, book, doubtful}: Linked): void {
  for (const {entries} of book.shows) entries.forEach((one, place) => {
    const before = entries.slice(0, place).find(other => other.bird === one.bird && classOf(other) === classOf(one) && !bothStand(other, one))
    if (!before || doubtful.has(one.bird)) return
    const other = resultOf(one) === resultOf(before) ? '' : `, ${resultOf(one)} here and ${resultOf(before)} in another line`
    bench.note(slipOf(entry, inside(one.at, 'bird'), `${one.bird.band} is entered twice${one.class === null ? '' : ` in the class “${one.class}”`}${other}`, 'mend the band or the class, or take one of the two out', {at: before.at, note: 'the first stands here'}))
  })
}

const resultOf = ({place, of}: ShowEntry): string => (place === null ? 'not placed' : `${place}${of === null ? '' : ` of ${of}`}`)
