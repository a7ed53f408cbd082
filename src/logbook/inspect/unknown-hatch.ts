import {orNear} from '../../records/near.ts'
import type {Slip} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nhatched: 3\ntallies:\n  - {chicks: 3, mark: basket 2}\n---\n'
const bird = (hatch: string) => `---\nband: 24-901\nsex: male\nout-of: {hatch: ${hatch}, mark: basket 2}\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-hatch', severity: 'error', title: 'A hatch that has no record',
  cause: 'A bird, a weigh day or a care entry names a hatch, but no file in hatches/ bears that name.',
  remedy: 'Write the hatch as its file is called, or add the file.',
  wrong: {'hatches/2024-09.md': HATCH, 'birds/24-901.md': bird('2024-9')},
  right: {'hatches/2024-09.md': HATCH, 'birds/24-901.md': bird('2024-09')},
}

export const unknownHatch = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `there is no hatch ${ref.text}`, orNear(near, `add hatches/${ref.text}.md, or write the hatch as its file is called`))
