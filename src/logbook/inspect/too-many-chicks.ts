import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (hatched: number) => `---\npen: 2024-A\nset: 2024-03-02\nhatched: ${hatched}\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\ntallies:\n  - {chicks: 3, left: 2024-03-29 died}\n---\n`

export const entry: ManualEntry = {
  code: 'too-many-chicks', severity: 'error', title: 'More chicks than hatched',
  cause: 'A hatch lists more chicks, banded and in tallies, than it says hatched.',
  remedy: 'Mend the number hatched, or take out what is counted twice: a chick banded later from a tally has out-of: in its own record and stays in the tally’s number.',
  wrong: {'hatches/2024-09.md': hatch(4)},
  right: {'hatches/2024-09.md': hatch(5)},
}

export function check({bench, book, tellings}: Linked): void {
  for (const {at, hatched, chicks, tallies} of book.hatches) {
    if (hatched === null || bench.isFaulty(at.file)) continue
    const banded = chicks.filter(chick => told(tellings.get(chick) ?? [], 'out-of') === null).length
    const tallied = tallies.reduce((sum, tally) => sum + tally.written, 0)
    if (banded + tallied <= hatched) continue
    const parts = [banded > 0 ? `${banded} banded` : '', tallied > 0 ? `${tallied} in tallies` : ''].filter(part => part !== '').join(' and ')
    bench.note(slipOf(entry, inside(at, 'hatched'), `${hatched} hatched, but ${banded + tallied} are listed: ${parts}`, 'mend the number hatched, or take out what is counted twice'))
  }
}
