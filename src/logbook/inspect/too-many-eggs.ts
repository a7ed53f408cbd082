import type {EggCount} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const eggs = (last: number) => `band,on,eggs\nB-1,2024-03-01,4\nB-1,2024-03-08,${last}\n`

export const entry: ManualEntry = {
  code: 'too-many-eggs', severity: 'warning', title: 'More eggs than days',
  cause: 'Between two records there are more eggs than one a day for each hen.',
  remedy: 'Mend the count, the number of hens or the day.',
  wrong: {'measures/eggs-2024.csv': eggs(51)},
  right: {'measures/eggs-2024.csv': eggs(5)},
}

export function check({bench, book}: Linked): void {
  const series = new Map<unknown, EggCount[]>()
  for (const count of book.eggCounts) {
    const of = count.bird ?? count.pen
    const own = series.get(of)
    if (own) own.push(count)
    else series.set(of, [count])
  }
  for (const counts of series.values()) {
    const inTurn = [...counts].sort((a, b) => a.on.first - b.on.first)
    inTurn.forEach((count, index) => {
      const before = inTurn[index - 1]
      const hens = count.bird ? 1 : count.hens ?? count.pen?.females.length ?? 0
      if ((!before && count.days === undefined) || hens === 0) return
      const days = count.days ?? count.on.last - (before?.on.first ?? count.on.last)
      // an egg laid late on the day before is gathered with the next
      if (days < 1 || count.eggs <= hens * (days + 1)) return
      const whose = count.bird?.band ?? `pen ${count.pen?.id ?? ''}`
      bench.note(slipOf(entry, count.at, `${count.eggs} eggs of ${whose} in ${days} ${days === 1 ? 'day' : 'days'}, from ${hens} ${hens === 1 ? 'hen' : 'hens'}`, 'mend the count, the number of hens or the day',
        ...(before ? [{at: before.at, note: 'the record before stands here'}] : [])))
    })
  }
}
