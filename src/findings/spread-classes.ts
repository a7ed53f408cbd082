import {grouped} from './grouped.ts'
import {sireFamilies, type OfASire} from './sire-families.ts'
import type {SpreadRow} from './spread.ts'

/** The values of each class that the spread of a row is worked from: one sex, reared together, five birds or more. */
export function classValues({values}: SpreadRow): readonly (readonly number[])[] {
  const counted = values.filter(value => value.counted)
  return [...grouped(counted, ({sex, hatch}) => `${sex} ${hatch?.rearing ?? ''}`)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, own]) => own.map(({value}) => value))
}

/** How many sire families the birds of a row come of. */
export function familiesWeighed({values}: SpreadRow): number {
  return sireFamilies(values.filter(value => value.counted).flatMap(({bird, hatch}): OfASire[] => (bird ? [bird] : hatch ? [{parentage: hatch.parentage, hatch}] : []))).length
}
