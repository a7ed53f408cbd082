import {isWhole} from '../../records/dates.ts'
import type {Weighing} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const weights = (...rows: string[]) => ['band,on,weight', ...rows, ''].join('\n')

export const entry: ManualEntry = {
  code: 'weighed-twice', severity: 'warning', title: 'A bird weighed twice on one day, with two results',
  cause: 'The weigh days give one bird two different amounts of one measure on the same day: a band misread, a row copied, or the bird put on the scales again.',
  remedy: 'Mend the band, the day or the amount that is wrong; of two that are both right keep the one that is to count.',
  wrong: {'measures/2024-08-10.csv': weights('H-1,2024-08-10,2310', 'H-1,2024-08-10,2130')},
  right: {'measures/2024-08-10.csv': weights('H-1,2024-08-10,2310', 'H-2,2024-08-10,2130')},
}

/** Pounds and grams of one weighing differ in their last digits. */
const SAME = 1e-9

export function check({bench, book, doubtful}: Linked): void {
  const unitOf = (measure: string) => book.traits.find(trait => (trait.measure ?? trait.id) === measure)?.unit ?? ''
  const words = ({value, measure}: Weighing) => `${Math.round(value * 1000) / 1000} ${unitOf(measure)}`.trim()
  for (const bird of book.birds) {
    if (bird.weighings.length < 2 || doubtful.has(bird)) continue
    const first = new Map<string, Weighing>()
    for (const weighing of bird.weighings) {
      const {measure, on, value, at} = weighing
      const key = `${measure}\n${on.text}`
      const before = first.get(key)
      if (!before) first.set(key, weighing)
      else if (isWhole(on) && Math.abs(value - before.value) > SAME * before.value) {
        bench.note(slipOf(entry, at, `${bird.band}: ${measure} ${words(weighing)} here, ${words(before)} in another row of ${on.text}`,
          'mend the band, the day or the amount; of two that are right keep the one that is to count', {at: before.at, note: 'the other row stands here'}))
      }
    }
  }
}
