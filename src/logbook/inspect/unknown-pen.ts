import {orNear} from '../../records/near.ts'
import type {Slip} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (pen: string) => `---\npen: ${pen}\nset: 2024-03-02\non: 2024-03-23\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-pen', severity: 'error', title: 'A pen that has no record',
  cause: 'A hatch, an egg record or a care entry names a pen, but no file in pens/ bears that name.',
  remedy: 'Write the pen as its file is called, or add the file.',
  wrong: {'hatches/2024-09.md': hatch('2024-AA')},
  right: {'hatches/2024-09.md': hatch('2024-A')},
}

export const unknownPen = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `there is no pen ${ref.text}`, orNear(near, `add pens/${ref.text}.md, or write the pen as its file is called`))
