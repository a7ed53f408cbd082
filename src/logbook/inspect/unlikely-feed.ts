import type {Feeding} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const feed = (first: string, left: string) => `pen,on,feed (kg),left (kg)\n2024-A,2024-03-02,${first},\n2024-A,2024-03-09,6.0,${left}\n`

export const entry: ManualEntry = {
  code: 'unlikely-feed', severity: 'warning', title: 'More feed than they can have eaten, or more left than there was',
  cause: 'By the feed record each bird ate more than a kilogram a day, as when grams are written under a heading in kilograms; or more is written to be left than had been there. The last amount of a sheet, of which nobody knows yet how long it lasted, is too much where it is over twenty times the middle of the others and more than 20 kg a bird.',
  remedy: 'Mend the amount, its unit or the day.',
  wrong: {'measures/feed-2024.csv': feed('6.0', '6.5')},
  right: {'measures/feed-2024.csv': feed('6.0', '0.5')},
}

/** Grams that no fowl eats in a day, even a goose on wet mash. Common practice, no source. */
const MOST_A_DAY = 1000
/** The last amount is looked at where it is so many times the middle, and so many grams a bird. Common practice, no source. */
const MOST_OF_MIDDLE = 20, MOST_AT_ONCE = 20_000

export function check({bench, book}: Linked): void {
  const sheets = new Map<unknown, Feeding[]>()
  for (const feeding of book.feedings) {
    const of = feeding.pen ?? feeding.hatch, own = sheets.get(of)
    if (own) own.push(feeding)
    else sheets.set(of, [feeding])
  }
  for (const own of sheets.values()) {
    const inTurn = [...own].sort((a, b) => a.on.first - b.on.first)
    const birds = birdsOf(own[0]), middle = middleOf(own.map(({feed}) => feed))
    let there = 0
    inTurn.forEach((feeding, place) => {
      const {pen, hatch, on, feed: given, at} = feeding, before = inTurn[place - 1], whose = pen ? `pen ${pen.id}` : `hatch ${hatch?.id ?? ''}`
      const days = before ? on.first - before.on.last : 0
      // what is given twice on a day is there together
      const left = feeding.left ?? (before && days === 0 ? there : 0)
      if (before) {
        const eaten = there - left
        if (left > there * (1 + 1e-9)) {
          bench.note(slipOf(entry, at, `${kilograms(left)} kg left of ${whose} on ${on.text}, and there were ${kilograms(there)} kg`, 'mend the amount, its unit or the day', {at: before.at, note: 'the record before stands here'}))
        } else if (days > 0 && birds > 0 && eaten > MOST_A_DAY * birds * days) {
          bench.note(slipOf(entry, before.at, `${kilograms(eaten)} kg eaten by ${birds} ${birds === 1 ? 'bird' : 'birds'} of ${whose} in ${days} ${days === 1 ? 'day' : 'days'}`, 'mend the amount, its unit or the day', {at, note: 'the next record stands here'}))
        }
      }
      there = left + given
      if (place > 0 && place === inTurn.length - 1 && birds > 0 && given > MOST_OF_MIDDLE * middle && given > MOST_AT_ONCE * birds) {
        bench.note(slipOf(entry, at, `${kilograms(given)} kg given to ${whose} on ${on.text}, while the middle of its records is ${kilograms(middle)} kg`, 'mend the amount or its unit'))
      }
    })
  }
}

/** Of a hatch without a count those it lists. */
function birdsOf(feeding: Feeding | undefined): number {
  const {pen, hatch} = feeding ?? {}
  if (pen) return pen.males.length + pen.females.length
  return hatch ? hatch.hatched ?? hatch.chicks.length + hatch.tallies.reduce((sum, {count}) => sum + count, 0) : 0
}

function middleOf(values: readonly number[]): number {
  const inTurn = [...values].sort((a, b) => a - b)
  return inTurn[(inTurn.length - 1) >> 1] ?? 0
}

const kilograms = (grams: number): string => String(Math.round(grams / 10) / 100)
