import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Hatch} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nhatched: 5\ntallies:\n  - {chicks: 3, mark: basket 2}\n  - {chicks: 2, mark: basket 3}\n---\n'
const bird = (mark: string) => `---\nband: 24-901\nsex: male\nout-of: {hatch: 2024-09${mark}}\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-tally', severity: 'error', title: 'A tally that the hatch does not have',
  cause: 'A bird banded later names a tally by a mark that none of the hatch’s tallies has, or names none where there are several.',
  remedy: 'Write the tally’s mark as the hatch has it, or give the tallies marks that tell them apart.',
  wrong: {'hatches/2024-09.md': HATCH, 'birds/24-901.md': bird(', mark: basket 4')},
  right: {'hatches/2024-09.md': HATCH, 'birds/24-901.md': bird(', mark: basket 3')},
}

export function unknownTally(hatch: Hatch, mark: string | undefined, at: Spot, near: readonly string[]): Slip {
  const reason = mark === undefined ? `hatch ${hatch.id} does not have one tally that this bird can be out of` : `hatch ${hatch.id} has no tally marked ${mark}`
  return slipOf(entry, at, reason, orNear(near, `write the mark of one of its tallies, or add the tally to hatches/${hatch.id}.md`), {at: hatch.at, note: 'the hatch stands here'})
}
