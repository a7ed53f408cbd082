import type {PartialDate} from '../../records/dates.ts'
import type {Pen, Stay} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const pen = (from: string) => `---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\nfrom: ${from}\nto: 2024-07-01\n---\n`

export const entry: ManualEntry = {
  code: 'in-two-pens', severity: 'warning', title: 'A male in two pens at once',
  cause: 'By their dates, two pens had the same male at the same time.',
  remedy: 'Give his days in each pen: males: [{band: H-1, to: 2024-06-01}]. Where he went to and fro, nothing need be changed.',
  wrong: {'pens/2024-B.md': pen('2024-04-01')},
  right: {'pens/2024-B.md': pen('2024-06-02')},
}

interface Days {
  readonly from: PartialDate
  readonly to: PartialDate
}

/** Only days that are certain are held against each other. */
export function check({bench, staysOf, doubtful}: Linked): void {
  for (const [bird, stays] of staysOf) {
    if (doubtful.has(bird)) continue
    const males = stays.filter(({pen, stay}) => pen.males.includes(stay))
    males.forEach(({pen, stay}, index) => {
      const days = daysOf(pen, stay)
      const other = days && males.slice(0, index).find(before => {
        const past = before.pen === pen ? null : daysOf(before.pen, before.stay)
        return past && past.from.last < days.to.first && days.from.last < past.to.first
      })
      if (other) {
        bench.note(slipOf(entry, stay.at, `${bird.band} is in pen ${other.pen.id} at the same time`, `give his days in each pen: {band: ${bird.band}, from: …, to: …}`,
          {at: other.stay.at, note: `in pen ${other.pen.id} here`}))
      }
    })
  }
}

function daysOf(pen: Pen, stay: Stay): Days | null {
  const from = stay.from ?? pen.from, to = stay.to ?? pen.to
  return from && to ? {from, to} : null
}
