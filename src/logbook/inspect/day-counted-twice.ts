import {isWhole} from '../../records/dates.ts'
import type {EggCount} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const eggs = (second: string) => `pen,on,eggs,hens\n2024-A,2024-03-01,2,2\n2024-A,2024-03-02,1,2\n2024-A,${second},2,2\n2024-A,2024-03-04,1,2\n`

export const entry: ManualEntry = {
  code: 'day-counted-twice', severity: 'warning', title: 'A day of eggs that is written twice',
  cause: 'Two rows of the egg records give eggs of one pen, or of one hen, for the same day: a row copied, or a day misread. Their eggs are added up, and the hens’ day is counted once. Where half the days of a sheet have two rows or more, the eggs are taken as gathered several times a day, and nothing is said.',
  remedy: 'Take one of the two out, or mend its day; eggs gathered twice go into one row.',
  wrong: {'measures/eggs-2024.csv': eggs('2024-03-02')},
  right: {'measures/eggs-2024.csv': eggs('2024-03-03')},
}

/** So many days written twice are a habit, where they are half of the sheet’s. */
const HABIT = 3

export function check({bench, book}: Linked): void {
  const sheets = new Map<unknown, Map<string, EggCount[]>>()
  for (const count of book.eggCounts) {
    if (!isWhole(count.on)) continue
    const of = count.pen ?? count.bird, days = sheets.get(of) ?? new Map<string, EggCount[]>(), own = days.get(count.on.text)
    if (own) own.push(count)
    else days.set(count.on.text, [count])
    sheets.set(of, days)
  }
  for (const days of sheets.values()) {
    const twice = [...days.values()].filter(rows => rows.length > 1)
    if (twice.length >= HABIT && 2 * twice.length >= days.size) continue
    for (const [first, ...others] of twice) {
      for (const {pen, bird, on, eggs, at} of first ? others : []) {
        bench.note(slipOf(entry, at, `eggs of ${pen ? `pen ${pen.id}` : bird?.band ?? ''} on ${on.text} stand in another row too: ${first?.eggs ?? 0} there, ${eggs} here`,
          'take one of the two out, or mend its day; eggs gathered twice go into one row', {at: first?.at ?? at, note: 'the other row stands here'}))
      }
    }
  }
}
