import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (chicks: number) => `---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\ntallies:\n  - {chicks: ${chicks}, mark: basket 2}\n---\n`
const bird = (band: string) => `---\nband: ${band}\nsex: male\nout-of: {hatch: 2024-09, mark: basket 2}\n---\n`

export const entry: ManualEntry = {
  code: 'tally-overdrawn', severity: 'error', title: 'More birds out of a tally than it holds',
  cause: 'More birds say that they were banded later from a tally than the tally had chicks.',
  remedy: 'Mend the tally’s number, or the mark of a bird that came from another.',
  wrong: {'hatches/2024-09.md': hatch(1), 'birds/24-901.md': bird('24-901'), 'birds/24-902.md': bird('24-902')},
  right: {'hatches/2024-09.md': hatch(2), 'birds/24-901.md': bird('24-901'), 'birds/24-902.md': bird('24-902')},
}

export function check({bench, book}: Linked): void {
  for (const {tallies, chicks} of book.hatches) {
    for (const tally of tallies) {
      const out = chicks.filter(chick => chick.outOf === tally)
      if (out.length <= tally.written) continue
      bench.note(slipOf(entry, inside(tally.at, 'chicks'), `the tally has ${tally.written}, but ${out.length} birds are out of it: ${out.map(bird => bird.band).join(', ')}`,
        'mend the tally’s number, or the mark of a bird that came from another', ...out.map(bird => ({at: bird.at, note: `${bird.band} stands here`}))))
    }
  }
}
