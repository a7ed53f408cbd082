import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (sex: string) => `---\nband: H-9\nsex: ${sex}\nstrain: holm-white\nhatched: 2023-03-20\nfirst-egg: 2023-09-12\n---\n`

export const entry: ManualEntry = {
  code: 'male-laid', severity: 'error', title: 'A male that laid',
  cause: 'A bird recorded as a male has a first egg, or eggs of its own in an egg record.',
  remedy: 'Where the sex was mistaken, write the sexings in turn: sex: [{is: male, on: 2023-06}, {is: female, on: 2023-09-12, because: laid}]. Else mend the band.',
  wrong: {'birds/H-9.md': bird('male')},
  right: {'birds/H-9.md': bird('[{is: male, on: 2023-06}, {is: female, on: 2023-09-12, because: laid}]')},
}

export function check({bench, book, tellings, doubtful}: Linked): void {
  const remedy = 'where the sex was mistaken, write the sexings in turn (… {is: female, on: …, because: laid}); else mend the band'
  for (const bird of book.birds) {
    if (bird.sex !== 'male' || !bird.firstEgg || doubtful.has(bird)) continue
    const by = told(tellings.get(bird) ?? [], 'first-egg')?.by
    bench.note(slipOf(entry, inside(by?.at ?? bird.at, 'first-egg'), `${bird.band} is recorded as a male, but laid its first egg ${bird.firstEgg.text}`, remedy))
  }
  const said = new Set<unknown>()
  for (const {bird, eggs, on, at} of book.eggCounts) {
    if (bird?.sex !== 'male' || eggs === 0 || said.has(bird)) continue
    said.add(bird)
    bench.note(slipOf(entry, at, `${bird.band} is recorded as a male, but laid by ${on.text}`, remedy, {at: bird.at, note: `${bird.band} stands here`}))
  }
}
