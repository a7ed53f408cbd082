import type {Feeding} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const feed = (first: string, left: string) => `pen,on,feed (kg),left (kg)\n2024-A,2024-03-02,${first},\n2024-A,2024-03-09,6.0,${left}\n`

export const entry: ManualEntry = {
  code: 'unlikely-feed', severity: 'warning', title: 'More feed than they can have eaten, or more left than there was',
  cause: 'By the feed record each bird ate more than a kilogram a day, as when grams are written under a heading in kilograms; or more is written to be left than had been there.',
  remedy: 'Mend the amount, its unit or the day.',
  wrong: {'measures/feed-2024.csv': feed('6.0', '6.5')},
  right: {'measures/feed-2024.csv': feed('6.0', '0.5')},
}

/** Grams that no fowl eats in a day, even a goose on wet mash. Common practice, no source. */
const MOST_A_DAY = 1000

export function check({bench, book}: Linked): void {
  const sheets = new Map<unknown, Feeding[]>()
  for (const feeding of book.feedings) {
    const of = feeding.pen ?? feeding.hatch, own = sheets.get(of)
    if (own) own.push(feeding)
    else sheets.set(of, [feeding])
  }
  for (const own of sheets.values()) {
    const inTurn = [...own].sort((a, b) => a.on.first - b.on.first)
    let there = 0
    inTurn.forEach((feeding, place) => {
      const {pen, hatch, on, feed: given, left = 0, at} = feeding, before = inTurn[place - 1], whose = pen ? `pen ${pen.id}` : `hatch ${hatch?.id ?? ''}`
      const birds = pen ? pen.males.length + pen.females.length : (hatch?.hatched ?? 0)
      if (before) {
        const days = on.first - before.on.last, eaten = there - left
        if (left > there * (1 + 1e-9)) {
          bench.note(slipOf(entry, at, `${kilograms(left)} kg left of ${whose} on ${on.text}, and there were ${kilograms(there)} kg`, 'mend the amount, its unit or the day', {at: before.at, note: 'the record before stands here'}))
        } else if (days > 0 && birds > 0 && eaten > MOST_A_DAY * birds * days) {
          bench.note(slipOf(entry, before.at, `${kilograms(eaten)} kg eaten by ${birds} ${birds === 1 ? 'bird' : 'birds'} of ${whose} in ${days} ${days === 1 ? 'day' : 'days'}`, 'mend the amount, its unit or the day', {at, note: 'the next record stands here'}))
        }
      }
      there = left + given
    })
  }
}

const kilograms = (grams: number): string => String(Math.round(grams / 10) / 100)
