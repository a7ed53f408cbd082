import {isoDay} from '../../records/dates.ts'
import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (laid: string) => `---\npen: 2024-A\nlaid: ${laid}\nset: 2024-03-02\non: 2024-03-23\n---\n`

export const entry: ManualEntry = {
  code: 'laid-after-set', severity: 'error', title: 'Eggs laid after they were set',
  cause: 'The laying days of a hatch end after the day its eggs were set; where no such day is written, after the chicks had hatched.',
  remedy: 'Mend the laying days, or the day of setting.',
  wrong: {'hatches/2024-09.md': hatch('2024-02-24..2024-03-12')},
  right: {'hatches/2024-09.md': hatch('2024-02-24..2024-03-02')},
}

export function check({bench, book}: Linked): void {
  for (const {laid, set, on, at} of book.hatches) {
    const end = set ?? on
    if (!laid || !end || laid.to <= end.last) continue
    bench.note(slipOf(entry, inside(at, 'laid'), `the eggs were laid until ${isoDay(laid.to)}, but ${set ? 'set' : 'hatched'} ${end.text}`,
      `mend the laying days, or the day they were ${set ? 'set' : 'hatched'}`, {at: inside(at, set ? 'set' : 'on'), note: `${set ? 'set' : 'hatched'} here`}))
  }
}
