import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (left: string) => `---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male, left: ${left} sold}\n---\n`

export const entry: ManualEntry = {
  code: 'left-before-hatched', severity: 'error', title: 'A bird that left before it hatched',
  cause: 'The day a bird or a tally left lies before the day it hatched.',
  remedy: 'Mend the day that is wrong.',
  wrong: {'hatches/2024-09.md': hatch('2023-06-30')},
  right: {'hatches/2024-09.md': hatch('2024-06-30')},
}

export function check({bench, book, tellings}: Linked): void {
  for (const bird of book.birds) {
    const {left, hatched} = bird
    if (!left?.on || !hatched || left.on.last >= hatched.first) continue
    bench.note(slipOf(entry, inside(told(tellings.get(bird) ?? [], 'left')?.by.at ?? bird.at, 'left'), `${bird.band} left ${left.on.text}, before it hatched (${hatched.text})`,
      'mend the day that is wrong', {at: bird.hatch ? inside(bird.hatch.at, 'on') : inside(bird.at, 'hatched'), note: 'hatched here'}))
  }
  for (const hatch of book.hatches) {
    for (const {left, at} of hatch.tallies) {
      if (!left?.on || !hatch.on || left.on.last >= hatch.on.first) continue
      bench.note(slipOf(entry, inside(at, 'left'), `the tally left ${left.on.text}, before it hatched (${hatch.on.text})`, 'mend the day that is wrong', {at: inside(hatch.at, 'on'), note: 'hatched here'}))
    }
  }
}
