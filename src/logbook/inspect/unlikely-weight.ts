import {orNear} from '../../records/near.ts'
import {isUnit, UNITS, type Unit} from '../../records/quantities.ts'
import type {Bird, Weighing} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n  - {band: 24-903, sex: male}\n  - {band: 24-904, sex: male}\n---\n'
const weights = (odd: string) => `band,on,weight\n24-901,2024-08-10,2310\n24-902,2024-08-10,2405\n24-903,2024-08-10,${odd}\n24-904,2024-08-10,2280\n`

export const entry: ManualEntry = {
  code: 'unlikely-weight', severity: 'warning', title: 'An amount far from the others’',
  cause: 'A weight or measure is under a quarter or over four times the middle of the birds measured with it: kilograms written as grams, a figure left out or doubled.',
  remedy: 'Mend the amount, or write its unit: 2.4 kg.',
  wrong: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('2.4')},
  right: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('2.4 kg')},
}

/** So many times the middle, or so many times less. */
const FACTOR = 4
/** Fewer than this tell no middle. */
const LEAST = 3
/** A unit that brings an amount within so many times the middle is likely the one that was meant. */
const NEAR = 2
/** Birds that were not measured on one day with hatch mates are compared with all of about their age. */
const AGE_DAYS = 28

interface Measured {
  readonly bird: Bird
  readonly weighing: Weighing
}

export function check({bench, book}: Linked): void {
  const mates = new Map<string, Measured[]>(), ages = new Map<string, Measured[]>()
  for (const bird of book.birds) {
    for (const weighing of bird.weighings) {
      put(mates, matesKey(bird, weighing), {bird, weighing})
      put(ages, ageKey(bird, weighing), {bird, weighing})
    }
  }
  const units = new Map(book.traits.flatMap(({id, measure, unit}) => (unit === null ? [] : [[measure ?? id, unit] as const])))
  const ofMates = middles(mates), ofAges = middles(ages)
  for (const own of mates.values()) {
    for (const each of own) {
      const typical = ofMates.get(matesKey(each.bird, each.weighing)) ?? ofAges.get(ageKey(each.bird, each.weighing)) ?? null
      if (typical === null || typical === 0) continue
      const times = each.weighing.value / typical
      if (times >= 1 / FACTOR && times <= FACTOR) continue
      const unit = units.get(each.weighing.measure) ?? ''
      bench.note(slipOf(entry, each.weighing.at,
        `${each.bird.band}: ${each.weighing.measure} ${inUnit(each.weighing.value, unit)}, while the middle of the birds measured with it is ${inUnit(typical, unit)}`,
        orNear(likelyUnits(each.weighing.value, typical, unit).map(other => inUnit(each.weighing.value, other)), 'mend the amount, or write its unit, such as 2.4 kg')))
    }
  }
}

const matesKey = ({hatch, strain}: Bird, {measure, on}: Weighing): string => `${measure}\n${on.text}\n${hatch?.id ?? strain?.id ?? ''}`
const ageKey = ({hatched}: Bird, {measure, on}: Weighing): string => (hatched ? `${measure}\n${Math.floor((on.first - hatched.first) / AGE_DAYS)}` : '')

function put(groups: Map<string, Measured[]>, key: string, one: Measured): void {
  const own = groups.get(key)
  if (own) own.push(one)
  else groups.set(key, [one])
}

/** The middle of each group that is large enough to have one. */
function middles(groups: ReadonlyMap<string, readonly Measured[]>): ReadonlyMap<string, number> {
  return new Map([...groups].filter(([key, group]) => key !== '' && group.length >= LEAST).map(([key, group]) => {
    const values = group.map(({weighing}) => weighing.value).sort((a, b) => a - b)
    return [key, values[values.length >> 1] ?? 0]
  }))
}

/** The unit that brings a number nearest to what is typical, where one brings it near. */
export function likelyUnits(value: number, typical: number, unit: string): readonly Unit[] {
  if (!isUnit(unit)) return []
  const off = (other: Unit) => Math.abs(Math.log((value * UNITS[other].size) / UNITS[unit].size / typical))
  const others = Object.keys(UNITS).filter(isUnit).filter(other => UNITS[other].of === UNITS[unit].of && off(other) < Math.log(NEAR))
  const [nearest] = others.sort((a, b) => off(a) - off(b))
  return nearest ? [nearest] : []
}

export const inUnit = (value: number, unit: string): string => `${Math.round(value * 1000) / 1000} ${unit}`.trim()
