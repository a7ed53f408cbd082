import type {Wanted} from '../logbook/book.ts'
import {familyShare, FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {familyVariation} from '../statistics/family-variation.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {countWithin} from '../statistics/count-within.ts'
import type {Interval} from './estimate.ts'
import {FAMILY_SEED, sireFamilies} from './sire-families.ts'
import {classesOf, ofASire} from './spread-classes.ts'
import {WITHIN, type Measured, type SpreadRow} from './spread.ts'
import {meets} from './wanted-look.ts'

/** What sire families leave open of one figure of evenness. */
export interface EndsByFamily {
  /** null under five families, or where they cannot be held against each other */
  readonly interval: Interval | null
  readonly families: number
  /** so many birds that are no kin would tell as much of a share; null of a spread */
  readonly effective: number | null
}

/**
 * How even would birds bred like these be, where chicks of one cock are alike? The CV, the share within a tenth of their class's mean and the share inside what is wanted, each with its interval by sire
 * families. Twenty-five chicks of one family say next to nothing of it, however many they are.
 *
 * @see `familyVariation`, `familyShare`
 */
export function evenByFamily(row: SpreadRow, wanted: Wanted | null): Readonly<Record<'cv' | 'within-tenth' | 'inside', EndsByFamily>> {
  const classes = classesOf(row), familyOf = familiesOf(classes.flat()), spread = familyVariation(classes.map(own => own.map(value => ({family: familyOf.get(value) ?? 0, value: value.value}))))
  const near = new Map(classes.flatMap(own => {
    const {mean} = meanAndDeviation(own.map(({value}) => value))
    return own.map(each => [each, countWithin([each.value], mean, WITHIN) === 1] as const)
  }))
  return {
    'cv': {interval: spread, families: new Set(familyOf.values()).size, effective: null},
    'within-tenth': shareByFamily(classes.flat(), each => near.get(each) ?? null), 'inside': shareByFamily(row.values, ({value}) => wanted && meets(wanted, value)),
  }
}

function shareByFamily(values: readonly Measured[], is: (value: Measured) => boolean | null): EndsByFamily {
  const judged = values.filter(value => is(value) !== null), familyOf = familiesOf(judged), counts = Array.from({length: new Set(familyOf.values()).size}, () => ({k: 0, n: 0}))
  for (const value of judged) {
    const count = counts[familyOf.get(value) ?? 0]
    if (!count) continue
    count.n += 1
    if (is(value) === true) count.k += 1
  }
  const found = familyShare(counts, {seed: FAMILY_SEED})
  return {interval: found && found.families >= FEWEST_FAMILIES ? {low: found.low, high: found.high} : null, families: counts.length, effective: found?.effective ?? null}
}

/** By number, from 0 on; a bird weighed without a band stands by its hatch. */
function familiesOf(values: readonly Measured[]): ReadonlyMap<Measured, number> {
  const birds = values.flatMap(value => {
    const of = ofASire(value.bird, value.hatch)
    return of === null ? [] : [{...of, value}]
  })
  return new Map(sireFamilies(birds).flatMap((own, number) => own.map(({value}) => [value, number] as const)))
}
