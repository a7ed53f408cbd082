import type {Species} from '../../records/species.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const eggs = (weight: string) => `pen,on,eggs,weight (g)\n2024-A,2024-03-01,4,${weight}\n`

export const entry: ManualEntry = {
  code: 'unlikely-egg-weight', severity: 'warning', title: 'An egg weight that no egg has',
  cause: 'The weight of an egg record, shared out over the eggs weighed, is far from any egg of the species: the weight of one egg was written where that of all belongs, or the unit is another. Also where more eggs were weighed than gathered.',
  remedy: 'Write what all the eggs weighed together; where only some were on the scales, write their number under weighed.',
  wrong: {'measures/eggs-2024.csv': eggs('56')},
  right: {'measures/eggs-2024.csv': eggs('224')},
}

/** Grams that an egg has at the least and at the most, from the smallest bantam's first to a double yolk. Common practice, no source. */
const LIKELY: Readonly<Record<Species, readonly [number, number]>> = {
  chicken: [20, 120], duck: [40, 150], 'muscovy-duck': [45, 130], turkey: [45, 140], goose: [90, 270], 'guinea-fowl': [25, 70], 'japanese-quail': [6, 22], 'ringneck-pheasant': [20, 50],
}

export function check({bench, book}: Linked): void {
  const [least, most] = LIKELY[book.project.species]
  for (const {pen, bird, on, eggs: laid, weight, at} of book.eggCounts) {
    if (!weight) continue
    const whose = bird?.band ?? `pen ${pen?.id ?? ''}`
    if (weight.eggs > laid) {
      bench.note(slipOf(entry, at, `${weight.eggs} eggs of ${whose} weighed on ${on.text}, and ${laid} gathered`, 'mend the number weighed or the number of eggs'))
      continue
    }
    const each = weight.eggs === 0 ? 0 : weight.grams / weight.eggs
    if (each >= least && each <= most) continue
    bench.note(slipOf(entry, at, weight.eggs === 0 ? `a weight of ${whose} on ${on.text}, and no egg` : `${weight.eggs} ${weight.eggs === 1 ? 'egg' : 'eggs'} of ${whose} with ${Math.round(weight.grams)} g together, ${Math.round(each)} g an egg`,
      'write what all the eggs weighed together, or their number under weighed'))
  }
}
