import type {Day} from '../../records/dates.ts'
import type {EggCount, Pen} from '../book.ts'
import {daysInSeason} from '../laying.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const eggs = (hens: number) => `pen,on,eggs,hens\n2024-A,2024-03-01,2,2\n2024-A,2024-03-02,1,${hens}\n`

export const entry: ManualEntry = {
  code: 'hens-not-there', severity: 'warning', title: 'Eggs of hens that the pen did not have',
  cause: 'An egg record counts more hens than the pen’s record has on that day, or eggs on a day on which the pen had no hen, after it was broken up or before it was put together. With too many hens every rate of lay comes out too low; eggs of a day without a hen are in none. Each is said once of a pen.',
  remedy: 'Mend the number of hens, the day or the pen; or write the hens, and their days, into the pen’s record.',
  wrong: {'measures/eggs-2024.csv': eggs(20)},
  right: {'measures/eggs-2024.csv': eggs(2)},
}

export function check({bench, book, records}: Linked): void {
  const sheets = new Map<Pen, EggCount[]>()
  for (const count of book.eggCounts) {
    const {pen} = count
    // a pen that was not read whole may have had more
    if (!pen || pen.females.length === 0 || bench.isFaulty(pen.at.file) || records.pen.get(pen)?.data.females.length !== pen.females.length) continue
    const own = sheets.get(pen)
    if (own) own.push(count)
    else sheets.set(pen, [count])
  }
  for (const [pen, counts] of sheets) {
    const stays = pen.females.map(stay => daysInSeason(pen, stay))
    const hensOn = (from: Day, to: Day) => stays.filter(days => days.from <= to && from <= days.to).length
    const remedy = (what: string) => `mend ${what}, or write the hens and their days into the pen’s record`
    const there = {at: pen.at, note: 'the pen stands here'}
    // an egg laid late on the last day is gathered on the next
    const without = counts.filter(({eggs, on, days = 1}) => eggs > 0 && hensOn(on.first - days, on.last) === 0)
    const over = counts.filter(({hens, on, days = 1}) => (hens ?? 0) > Math.max(hensOn(on.first - days, on.last), 1)).filter(count => !without.includes(count))
    const [stray] = without, [crowd] = over
    if (stray) bench.note(slipOf(entry, stray.at, `${rows(without.length)}eggs of pen ${pen.id} on ${stray.on.text}, and by its record it had no hen then`, remedy('the day or the pen'), there))
    if (crowd) bench.note(slipOf(entry, crowd.at, `${rows(over.length)}${crowd.hens ?? 0} hens of pen ${pen.id} on ${crowd.on.text}, and by its record it had ${hensOn(crowd.on.first - (crowd.days ?? 1), crowd.on.last)} then`, remedy('the number of hens'), there))
  }
}

const rows = (count: number): string => (count === 1 ? '' : `in ${count} rows, here the first: `)
