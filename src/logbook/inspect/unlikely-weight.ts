import {orNear} from '../../records/near.ts'
import type {Spot} from '../../records/problem.ts'
import {isUnit, UNITS, type Unit} from '../../records/quantities.ts'
import type {Records} from '../../records/records.ts'
import type {Bench} from '../bench.ts'
import type {Bird, Weighing} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n  - {band: 24-903, sex: male}\n  - {band: 24-904, sex: male}\n---\n'
const weights = (odd: string) => `band,on,weight\n24-901,2024-08-10,2310\n24-902,2024-08-10,2405\n24-903,2024-08-10,${odd}\n24-904,2024-08-10,2280\n`

export const entry: ManualEntry = {
  code: 'unlikely-weight', severity: 'warning', title: 'An amount far from the others’',
  cause: 'A weight or measure is under a quarter or over four times the middle of the birds measured with it: kilograms written as grams, a figure left out or doubled. Or a weight is over five robust standard deviations from the middle of four or more other hatch mates of its sex weighed that day, or where they are fewer of the birds of its sex, step and age (none is taken as less than 10 % of the middle, so it is never within half of it): a band misread, or 2900 written for 1900.',
  remedy: 'Mend the amount, or write its unit: 2.4 kg.',
  wrong: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('2.4')},
  right: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('2.4 kg')},
}

/** So many times the middle, or so many times less. */
const FACTOR = 4
/** Fewer than this tell no middle. */
const LEAST = 3
/** Hatch mates of one sex, the bird among them, from which on the spread of the others says something. */
const LEAST_MATES = 5
/** So many robust standard deviations (1.4826 times the middle distance from the middle: what it is in a normal sample) are told. */
const SPREADS = 5, TO_DEVIATION = 1.4826
/** Mates may be alike by chance: no spread is taken as less than this share of the middle. Common practice, no source: a hatch of one sex has some 8 to 12 %. */
const LEAST_SPREAD = 0.1
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
      const unit = units.get(each.weighing.measure) ?? '', amount = asWritten(each.weighing, unit, bench)
      bench.note(slipOf(entry, each.weighing.at,
        `${each.bird.band}: ${each.weighing.measure} ${inUnit(each.weighing.value, unit)}, while the middle of the birds measured with it is ${inUnit(typical, unit)}`,
        orNear(likelyUnits(amount, typical, unit).map(other => inUnit(amount, other)), 'mend the amount, or write its unit, such as 2.4 kg')))
    }
  }
  noteApart(book.birds, units, bench)
}

/** Weights that are out of the way among hatch mates of one sex weighed on one day, or where those are few among birds of its sex, step and age, though not so far as to be told of above. */
function noteApart(birds: readonly Bird[], units: ReadonlyMap<string, string>, bench: Bench): void {
  const mates = new Map<string, Measured[]>(), fellows = new Map<string, Measured[]>()
  for (const bird of birds) {
    for (const weighing of bird.hatch ? bird.weighings : []) {
      const unit = units.get(weighing.measure) ?? ''
      if (!isUnit(unit) || UNITS[unit].of !== 'mass') continue
      put(mates, `${bird.sex}\n${matesKey(bird, weighing)}`, {bird, weighing})
      put(fellows, fellowsKey(bird, weighing), {bird, weighing})
    }
  }
  const told = (own: readonly Measured[], whose: string, asked: (one: Measured) => boolean) => {
    if (own.length < LEAST_MATES) return
    const whole = middleOf(own.map(({weighing}) => weighing.value))
    for (const one of own) {
      const {bird: {band, sex}, weighing: {value, measure, at}} = one, unit = units.get(measure) ?? ''
      // few are so far off that the others have to be asked
      if (Math.abs(value - whole) <= (SPREADS * LEAST_SPREAD * whole) / 2 || !asked(one)) continue
      const others = own.filter(other => other !== one).map(({weighing}) => weighing.value), middle = middleOf(others), times = value / middle
      const spread = Math.max(LEAST_SPREAD * middle, TO_DEVIATION * middleOf(others.map(other => Math.abs(other - middle))))
      if (times < 1 / FACTOR || times > FACTOR || Math.abs(value - middle) <= SPREADS * spread) continue
      bench.note(slipOf(entry, at, `${band}: ${measure} ${inUnit(value, unit)}, while the middle of the ${others.length} other ${sex === 'unknown' ? 'birds' : `${sex}s`} of its ${whose} weighed that day is ${inUnit(middle, unit)}`,
        'mend the amount or the band; if both are right, see whether the bird is ill or of another hatch'))
    }
  }
  for (const own of mates.values()) told(own, 'hatch', () => true)
  for (const own of fellows.values()) told(own, 'step and age', ({bird, weighing}) => (mates.get(`${bird.sex}\n${matesKey(bird, weighing)}`)?.length ?? 0) < LEAST_MATES)
}

/** Birds of one sex, step and age weighed on one day. */
const fellowsKey = (bird: Bird, weighing: Weighing): string => `${bird.sex}\n${bird.step.label}\n${weighing.on.text}\n${ageKey(bird, weighing)}`

const matesKey = ({hatch, strain}: Bird, {measure, on}: Weighing): string => `${measure}\n${on.text}\n${hatch?.id ?? strain?.id ?? ''}`
const ageKey = ({hatched}: Bird, {measure, on}: Weighing): string => (hatched ? `${measure}\n${Math.floor((on.first - hatched.first) / AGE_DAYS)}` : '')

function put(groups: Map<string, Measured[]>, key: string, one: Measured): void {
  const own = groups.get(key)
  if (own) own.push(one)
  else groups.set(key, [one])
}

/** The middle of each group that is large enough to have one. */
function middles(groups: ReadonlyMap<string, readonly Measured[]>): ReadonlyMap<string, number> {
  return new Map([...groups].filter(([key, group]) => key !== '' && group.length >= LEAST).map(([key, group]) => [key, middleOf(group.map(({weighing}) => weighing.value))]))
}

function middleOf(values: readonly number[]): number {
  const inTurn = [...values].sort((a, b) => a - b)
  return inTurn[inTurn.length >> 1] ?? 0
}

/** The number as it stands in the sheet: of 1580 kg, kept as 1,580,000 g, it is 1580. */
export function asWritten({value, at}: Weighing, unit: string, {records}: Bench): number {
  const written = unitsOf(records).get(at) ?? null
  return written === null || !isUnit(unit) ? value : (value * UNITS[unit].size) / UNITS[written].size
}

const known = new WeakMap<Records, ReadonlyMap<Spot, Unit>>()

/** The unit of each amount that is written with one; looked through once, and only where something is to be told. */
function unitsOf(records: Records): ReadonlyMap<Spot, Unit> {
  const before = known.get(records)
  if (before) return before
  const units = new Map(records.weighings.flatMap(({values}) => values.flatMap(({at, quantity: {parts: [first, second]}}) => (first?.unit && !second ? [[at, first.unit] as const] : []))))
  known.set(records, units)
  return units
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
