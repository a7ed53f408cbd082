/** A weight in both units, as a standard prints it: `3.2 kg` and `7 lb 1 oz`. Rounded for showing only; the records keep grams. */
import {UNITS} from '../records/quantities.ts'
import {rounded} from './numbers.ts'

/** `3.2 kg`, `2.08 kg`, and `870 g` below a kilogram. */
export function metricWeight(grams: number): string {
  if (grams < 1000) return `${rounded(grams, 0)} g`
  return `${rounded(grams / UNITS.kg.size, 2).replace(/0$/, '')} kg`
}

/** `7 lb 1 oz`, `2 lb`, and `12 oz` below a pound; to the nearest ounce. */
export function poundWeight(grams: number): string {
  const ounces = Math.round(grams / UNITS.oz.size)
  const pounds = Math.floor(ounces / 16), rest = ounces % 16
  if (pounds === 0) return `${rest} oz`
  return rest === 0 ? `${pounds} lb` : `${pounds} lb ${rest} oz`
}
