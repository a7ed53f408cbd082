import {inside} from '../../records/problem.ts'
import type {Hatch} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (set: string, on: string) => `---\npen: 2024-A\nset: ${set}\non: ${on}\n---\n`

export const entry: ManualEntry = {
  code: 'hatch-before-pen', severity: 'error', title: 'Eggs from before their pen',
  cause: 'The eggs were laid, set or hatched before the pen they are said to come from was put together. Eggs laid after the pen was broken up are a warning.',
  remedy: 'Mend the day that is wrong, or the pen.',
  wrong: {'hatches/2024-09.md': hatch('2024-01-20', '2024-02-10')},
  right: {'hatches/2024-09.md': hatch('2024-03-02', '2024-03-23')},
}

/** Chicks may come this many days before their time. */
const EARLY = 3

export function check({bench, book, layingOf}: Linked): void {
  for (const hatch of book.hatches) {
    const laying = layingOf(hatch)
    if (!laying) continue
    const key = hatch.laid ? 'laid' : hatch.set ? 'set' : 'on'
    const allowed = key === 'on' ? EARLY : 0
    for (const {pen} of hatch.pens) {
      const made = {at: inside(pen.at, 'from'), note: 'the pen’s first day'}
      if (pen.from && laying.to + allowed < pen.from.first) {
        bench.note(slipOf(entry, inside(hatch.at, key), `eggs ${verbOf(hatch)}, but pen ${pen.id} was put together ${pen.from.text}`, 'mend the day that is wrong, or the pen', made))
      } else if (pen.to && laying.from - allowed > pen.to.last) {
        bench.note({
          ...slipOf(entry, inside(hatch.at, key), `eggs ${verbOf(hatch)}, long after pen ${pen.id} was broken up (${pen.to.text})`, 'mend the day that is wrong, or the pen',
            {at: inside(pen.at, 'to'), note: 'the pen’s last day'}),
          severity: 'warning',
        })
      }
    }
  }
}

const verbOf = ({laid, set, on}: Hatch): string => (laid ? 'laid on the days written here' : set ? `set ${set.text}` : `hatched ${on?.text ?? ''}`)
