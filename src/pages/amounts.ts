/** Measures as they are shown: in the trait's own unit, heavy weights in kilograms, or in pounds and inches where the project asks for them. */
import {limitsOf} from '../findings/against-standard.ts'
import type {Project, Sex, Trait, Wanted} from '../logbook/book.ts'
import {UNITS, isUnit} from '../records/quantities.ts'
import type {Unit} from '../records/quantities.ts'
import {listWords, rounded} from './numbers.ts'

/** How amounts of one trait are shown: `factor` turns the trait's unit into the shown one. */
export interface Shown {
  /** `kg`; empty for a mark without a unit */
  readonly unit: string
  readonly factor: number
  readonly decimals: number
}

const DECIMALS: Readonly<Record<string, number>> = {g: 0, kg: 2, lb: 2, oz: 1, mm: 0, cm: 1, in: 2, m: 2, degrees: 0}

/** The largest number the trait's target names, in its unit; 0 when it has none. */
function targetSize({wanted}: Trait): number {
  const size = (of: Wanted | null): number => (of === null || of.kind === 'states' ? 0 : of.kind === 'between' ? of.high : of.value)
  return Math.max(size(wanted.male), size(wanted.female))
}

function shownUnit(unit: Unit, size: number, units: Project['units']): Unit {
  const dimension = UNITS[unit].of
  if (units === 'imperial') return dimension === 'mass' ? (size * UNITS[unit].size >= UNITS.lb.size ? 'lb' : 'oz') : dimension === 'length' ? 'in' : unit
  return unit === 'g' && size >= 1000 ? 'kg' : unit
}

export function shownIn(trait: Trait, units: Project['units']): Shown {
  if (trait.unit === null || !isUnit(trait.unit)) return {unit: trait.unit ?? '', factor: 1, decimals: trait.kind === 'graded' ? 1 : 2}
  const unit = shownUnit(trait.unit, targetSize(trait), units)
  return {unit, factor: UNITS[trait.unit].size / UNITS[unit].size, decimals: DECIMALS[unit] ?? 1}
}

/** `2.36`, without its unit; a bare mark without needless noughts */
export function amountPlain(value: number, shown: Shown): string {
  const text = rounded(value * shown.factor, shown.decimals)
  return shown.unit === '' && text.includes('.') ? text.replace(/\.?0+$/, '') : text
}

/** `2.36 kg`, `88 mm`, `42°`; what would be rounded away to nought is told more finely: `2.41 g` */
export function amount(value: number, shown: Shown): string {
  return amountInUnit(value, Number(amountPlain(value, shown)) === 0 && value !== 0 ? finer(value, shown) : shown)
}

/** The same in the very unit, nought or not: for differences */
export function amountInUnit(value: number, shown: Shown): string {
  if (shown.unit === 'degrees') return `${amountPlain(value, shown)}°`
  return shown.unit === '' ? amountPlain(value, shown) : `${amountPlain(value, shown)} ${shown.unit}`
}

/** A smaller unit where there is one, and as many places as show something. */
function finer(value: number, {unit, factor}: Shown): Shown {
  const smaller = unit === 'kg' ? 'g' : unit === 'lb' ? 'oz' : null
  const turned = isUnit(unit) && smaller ? {unit: smaller, factor: (factor * UNITS[unit].size) / UNITS[smaller].size} : {unit, factor}
  const places = -Math.floor(Math.log10(Math.abs(value * turned.factor)))
  return {...turned, decimals: Math.min(20, Math.max(smaller ? 2 : 1, places))}
}

const tolerance = (share: number | null): string => (share === null ? '' : `, ${rounded(share * 100, 1).replace(/\.0$/, '')}% either side`)

/** What is wanted: `pea`, `pea or walnut`, `2.40 kg, 10% either side`, `at least 7`, `84 to 92 mm`. */
export function wantedWords(wanted: Wanted, shown: Shown): string {
  switch (wanted.kind) {
    case 'states': return listWords(wanted.states, 'or')
    case 'at-least': return `at least ${amount(wanted.value, shown)}`
    case 'at-most': return `at most ${amount(wanted.value, shown)}`
    case 'about': return `${amount(wanted.value, shown)}${tolerance(wanted.tolerance)}`
    case 'between': return `${amountPlain(wanted.low, shown)} to ${amount(wanted.high, shown)}`
  }
}

/** A mark with its tolerance as the two ends it leaves: `2.25 to 2.75 kg`; any other wish as it is. */
export function withinEnds(wanted: Wanted): Wanted {
  const limits = wanted.kind === 'about' ? limitsOf(wanted) : null
  return limits ? {kind: 'between', ...limits} : wanted
}

/** What is wanted of both sexes, once when it is the same: `males 2.40 kg, females 1.90 kg`; null when nothing is. */
export function wantedOfBoth(trait: Trait, units: Project['units']): string | null {
  const shown = shownIn(trait, units)
  const words = (['male', 'female'] as const).map((sex): readonly [Sex, string | null] => {
    const wanted = trait.wanted[sex]
    return [sex, wanted === null ? null : wantedWords(wanted, shown)]
  }).filter((entry): entry is readonly [Sex, string] => entry[1] !== null && trait.seenIn !== otherSex(entry[0]))
  const [first, second] = words
  if (!first) return null
  if (!second || first[1] === second[1]) return trait.seenIn === null && !second ? `${first[0]}s ${first[1]}` : first[1]
  return `males ${first[1]}; females ${second[1]}`
}

const otherSex = (sex: Sex): Sex => (sex === 'male' ? 'female' : sex === 'female' ? 'male' : 'unknown')
