import {isWhole} from '../../records/dates.ts'
import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (on: string) => `---\npen: 2024-A\nset: 2024-03-02\non: ${on}\n---\n`

export const entry: ManualEntry = {
  code: 'incubation-odd', severity: 'warning', title: 'A hatch too early or too late',
  cause: 'From the setting to the hatch there are fewer or more days than the species needs, by more than three: a day or a month may be wrong. A hatch from before its setting is an error.',
  remedy: 'Mend the day of setting or of the hatch.',
  wrong: {'hatches/2024-09.md': hatch('2024-04-23')},
  right: {'hatches/2024-09.md': hatch('2024-03-23')},
}

/** Days more or less that still happen. Common practice, no source. */
const SLACK = 3

export function check({bench, book}: Linked): void {
  const {incubationDays, species} = book.project
  for (const {at, set, on} of book.hatches) {
    if (!set || !on) continue
    const setHere = {at: inside(at, 'set'), note: 'set here'}
    const remedy = 'mend the day of setting or of the hatch'
    if (on.last < set.first) {
      bench.note({...slipOf(entry, inside(at, 'on'), `hatched ${on.text}, before the eggs were set (${set.text})`, remedy, setHere), severity: 'error'})
    } else if (isWhole(set) && isWhole(on)) {
      const days = on.first - set.first
      if (Math.abs(days - incubationDays) <= SLACK) continue
      bench.note(slipOf(entry, inside(at, 'on'), `hatched ${days} days after the setting; a ${species} egg takes about ${incubationDays}`, remedy, setHere))
    }
  }
}
