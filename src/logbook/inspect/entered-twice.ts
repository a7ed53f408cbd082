import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const show = (second: string) => `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: H-1, class: cock, result: 1 of 4}\n  - {bird: ${second}, class: cock, result: 3 of 4}\n---\n`

export const entry: ManualEntry = {
  code: 'entered-twice', severity: 'warning', title: 'A bird twice in one class of a show',
  cause: 'One bird stands twice in the same class of the same show under the same judge: a line copied and not changed, or a band misread.',
  remedy: 'Mend the band or the class, or take one of the two lines out.',
  wrong: {'shows/2024-11-02-ternhouse.md': show('H-1')},
  right: {'shows/2024-11-02-ternhouse.md': show('H-2')},
}

export function check({bench, book, doubtful}: Linked): void {
  for (const {entries} of book.shows) {
    const first = new Map<string, (typeof entries)[number]>()
    for (const one of entries) {
      const key = [one.bird.id, one.class ?? '', one.judge ?? ''].join('\n'), before = first.get(key)
      if (!before) first.set(key, one)
      else if (!doubtful.has(one.bird)) {
        bench.note(slipOf(entry, inside(one.at, 'bird'), `${one.bird.band} is entered twice${one.class === null ? '' : ` in the class “${one.class}”`}`, 'mend the band or the class, or take one of the two out', {at: before.at, note: 'the first stands here'}))
      }
    }
  }
}
