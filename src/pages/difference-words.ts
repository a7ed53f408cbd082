/** Differences of what is measured: with a sign, in a unit small enough to tell them, their limits beside. */
import type {Interval} from '../findings/estimate.ts'
import type {Project, Trait} from '../logbook/book.ts'
import {isUnit, UNITS} from '../records/quantities.ts'
import {limits, percent, rounded, signed} from './numbers.ts'

/** How differences of one trait are shown: `factor` turns the trait's unit into the shown one. */
interface Finely {
  readonly unit: string
  readonly factor: number
  readonly decimals: number
}

/** Weights in grams or ounces, marks as marks, all else in the trait's own unit. */
function finely({unit}: Pick<Trait, 'unit'>, units: Project['units']): Finely {
  if (unit === null) return {unit: ' marks', factor: 1, decimals: 2}
  if (unit === 'degrees') return {unit: '°', factor: 1, decimals: 1}
  if (!isUnit(unit)) return {unit: ` ${unit}`, factor: 1, decimals: 2}
  const dimension = UNITS[unit].of
  if (dimension === 'mass') return units === 'imperial' ? {unit: ' oz', factor: UNITS[unit].size / UNITS.oz.size, decimals: 1} : {unit: ' g', factor: UNITS[unit].size / UNITS.g.size, decimals: 0}
  return {unit: ` ${unit}`, factor: 1, decimals: 1}
}

/** `+47 g`, `−1.0°`, `+1.25 marks` */
export function difference(value: number, trait: Pick<Trait, 'unit'>, units: Project['units']): string {
  const {unit, factor, decimals} = finely(trait, units)
  return `${signed(rounded(value * factor, decimals))}${unit}`
}

/** The same without a sign: `47 g` */
export const size = (value: number, trait: Pick<Trait, 'unit'>, units: Project['units']): string => difference(Math.abs(value), trait, units).replace(/^\+/, '')

/** `−72 to +61` */
export function differenceLimits({low, high}: Interval, trait: Pick<Trait, 'unit'>, units: Project['units']): string {
  const {factor, decimals} = finely(trait, units), write = (value: number): string => signed(rounded(value * factor, decimals))
  return `${write(low)} to ${write(high)}`
}

/** Points of a share: `+5.2`, `−2.6` */
export const points = (share: number): string => signed(rounded(share * 100, 1))

/** `−5.6 to +1.2` */
export const pointLimits = ({low, high}: Interval): string => `${points(low)} to ${points(high)}`

/** Limits of shares that may lie below nothing: `−3.1 to 96.4` */
export const shareLimits = (interval: Interval): string => limits(interval).replaceAll('-', '−')
/** Likewise `−3.1` */
export const sharePoints = (share: number): string => percent(share).replace('-', '−')
