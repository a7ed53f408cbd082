import {strayings} from '../statistics/relative-deviations.ts'
import {grouped} from './grouped.ts'
import {sireFamilies, type OfASire} from './sire-families.ts'
import type {SpreadRow} from './spread.ts'

/** The values of each class that the spread of a row is worked from: one sex, reared together, five birds or more. */
export const classValues = (row: SpreadRow): readonly (readonly number[])[] => classesOf(row).map(own => own.map(({value}) => value))

/** The birds of those classes. */
export function classesOf({values}: SpreadRow): readonly SpreadRow['values'][] {
  const counted = values.filter(value => value.counted)
  return [...grouped(counted, ({sex, hatch}) => `${sex} ${hatch?.rearing ?? ''}`)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, own]) => own)
}

/** How far each bird strays from the middle of its class, by sire family; a bird weighed without a band stands by its hatch. */
export function strayingByFamily(row: SpreadRow): readonly (readonly number[])[] {
  const birds = classesOf(row).flatMap(own => {
    const away = strayings(own.map(({value}) => value))
    return own.flatMap(({bird, hatch}, place) => {
      const of = ofASire(bird, hatch), far = away[place] ?? null
      return of === null || far === null ? [] : [{...of, far}]
    })
  })
  return sireFamilies(birds).map(own => own.map(({far}) => far))
}

/** How many sire families the birds of a row come of. */
export function familiesWeighed({values}: SpreadRow): number {
  return sireFamilies(values.filter(value => value.counted).flatMap(({bird, hatch}) => ofASire(bird, hatch) ?? [])).length
}

/** By whom a bird's family is told. */
export const ofASire = (bird: SpreadRow['values'][number]['bird'], hatch: SpreadRow['values'][number]['hatch']): OfASire | null =>
  (bird ? {parentage: bird.parentage, hatch: bird.hatch} : hatch ? {parentage: hatch.parentage, hatch} : null)
