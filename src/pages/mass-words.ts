/** Masses in grams as the project's units show them: feed, eggs, growth. */
import type {Interval} from '../findings/estimate.ts'
import type {Project} from '../logbook/book.ts'
import {UNITS} from '../records/quantities.ts'
import {rounded} from './numbers.ts'

interface ShownMass {
  readonly unit: string
  readonly factor: number
  readonly decimals: number
}

/** In the unit that a mass of about this size is spoken of in. */
function massUnit(size: number, units: Project['units']): ShownMass {
  if (units === 'imperial') return size >= UNITS.lb.size ? {unit: 'lb', factor: 1 / UNITS.lb.size, decimals: 2} : {unit: 'oz', factor: 1 / UNITS.oz.size, decimals: 2}
  return size >= 1000 ? {unit: 'kg', factor: 0.001, decimals: 2} : {unit: 'g', factor: 1, decimals: size < 100 ? 1 : 0}
}

/** `128 g`, `2.36 kg`, `55.6 g` */
export function mass(grams: number, units: Project['units']): string {
  const {unit, factor, decimals} = massUnit(Math.abs(grams), units)
  return `${rounded(grams * factor, decimals)} ${unit}`
}

/** `2.30 to 2.42`, in the unit of `mass` of their middle */
export function massLimits({low, high}: Interval, of: number, units: Project['units']): string {
  const {factor, decimals} = massUnit(Math.abs(of), units)
  return `${rounded(low * factor, decimals)} to ${rounded(high * factor, decimals)}`
}
