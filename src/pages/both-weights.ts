/** A weight in both units, as a standard prints it: `3.2 kg` and `7 lb 1 oz`. Rounded for showing only; the records keep grams. */
import {UNITS} from '../records/quantities.ts'
import {rounded} from './numbers.ts'

const kilos = (grams: number): string => rounded(grams / UNITS.kg.size, 2).replace(/0$/, '')

/** `3.2 kg`, `2.08 kg`, and `870 g` below a kilogram. */
export const metricWeight = (grams: number): string => (grams < 1000 ? `${rounded(grams, 0)} g` : `${kilos(grams)} kg`)

/** `7 lb 1 oz`, `2 lb`, and `12 oz` below a pound; to the nearest ounce. */
export function poundWeight(grams: number): string {
  const ounces = Math.round(grams / UNITS.oz.size)
  const pounds = Math.floor(ounces / 16), rest = ounces % 16
  if (pounds === 0) return `${rest} oz`
  return rest === 0 ? `${pounds} lb` : `${pounds} lb ${rest} oz`
}

const QUARTERS = ['', '¼', '½', '¾'] as const

/** Does the nearest ounce come out in quarters of a pound? */
export const inQuarters = (grams: number): boolean => grams / UNITS.oz.size >= 15.5 && Math.round(grams / UNITS.oz.size) % 4 === 0

/** `5½ lb` where it comes out in quarters of a pound, else as `poundWeight` has it. */
export function poundQuarters(grams: number): string {
  const ounces = Math.round(grams / UNITS.oz.size)
  return inQuarters(grams) ? `${Math.floor(ounces / 16)}${QUARTERS[(ounces % 16) / 4] ?? ''} lb` : poundWeight(grams)
}

/** `1.9 oz`, for what weighs a few ounces. */
export const ounceWeight = (grams: number): string => `${rounded(grams / UNITS.oz.size, 1)} oz`

/** From one to another, the unit said once where it is the same: `2.3 to 2.7 kg`, `900 g to 1.1 kg`, `5 lb 1 oz to 6 lb`. `high` null: one weight. */
export function weightRange(low: number, high: number | null, words: (grams: number) => string): string {
  const from = words(low)
  if (high === null) return from
  const to = words(high), one = /^(\S+) (\S+)$/.exec(from), other = /^(\S+) (\S+)$/.exec(to)
  return from === to ? from : one && other && one[2] === other[2] ? `${one[1] ?? ''} to ${to}` : `${from} to ${to}`
}
