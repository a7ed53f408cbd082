/** Quantities as people write them: `2.3 kg`, `5 lb 4 oz`, `870 g`, `56 mm`, `42 degrees`, or a bare number. */

export const UNITS = {
  mg: {of: 'mass', size: 0.001}, g: {of: 'mass', size: 1}, kg: {of: 'mass', size: 1000}, oz: {of: 'mass', size: 28.349523125}, lb: {of: 'mass', size: 453.59237},
  mm: {of: 'length', size: 1}, cm: {of: 'length', size: 10}, m: {of: 'length', size: 1000}, in: {of: 'length', size: 25.4},
  degrees: {of: 'angle', size: 1}, points: {of: 'points', size: 1}, eggs: {of: 'eggs', size: 1}, days: {of: 'time', size: 1}, weeks: {of: 'time', size: 7},
} as const
export type Unit = keyof typeof UNITS
export type Dimension = (typeof UNITS)[Unit]['of']

const SPELLINGS: Readonly<Record<string, Unit>> = {
  gram: 'g', grams: 'g', gr: 'g', kilo: 'kg', kilos: 'kg', kilogram: 'kg', kilograms: 'kg', ounce: 'oz', ounces: 'oz', lbs: 'lb', pound: 'lb', pounds: 'lb',
  millimetre: 'mm', millimetres: 'mm', centimetre: 'cm', centimetres: 'cm', inch: 'in', inches: 'in', '°': 'degrees', degree: 'degrees', deg: 'degrees',
  point: 'points', egg: 'eggs', day: 'days', week: 'weeks',
}

export const isUnit = (text: string): text is Unit => Object.hasOwn(UNITS, text)
export const unitOf = (text: string): Unit | null => (isUnit(text) ? text : SPELLINGS[text.toLowerCase()] ?? null)

/** An amount with the unit it was written in; `unit` null for a bare number. */
export interface Quantity {
  readonly text: string
  readonly parts: readonly {readonly amount: number; readonly unit: Unit | null}[]
}

const NUMBER = String.raw`\d+(?:[.,]\d+)?`
const WHOLE = new RegExp(String.raw`^${NUMBER}\s*(?:[^\d\s.,]+)?(?:\s+${NUMBER}\s*[^\d\s.,]+)*$`)
const PART = new RegExp(String.raw`(${NUMBER})\s*([^\d\s.,]+)?`, 'g')

/** A number as written, with a point or a decimal comma; null when it is none. */
export function parseNumber(text: string): number | null {
  return /^[+-]?\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : null
}

/** Reads `2.3 kg`, `2,3 kg`, `5 lb 4 oz`, `870`; null when it is no quantity, the word itself when a unit is unknown. */
export function parseQuantity(text: string): Quantity | {readonly unknownUnit: string} | null {
  const trimmed = text.trim()
  const bare = parseNumber(trimmed)
  if (bare !== null && bare >= 0) return {text: trimmed, parts: [{amount: bare, unit: null}]}
  if (!WHOLE.test(trimmed)) return null
  const parts: {amount: number; unit: Unit | null}[] = []
  for (const match of trimmed.matchAll(PART)) {
    const word = match[2]
    const unit = word === undefined ? null : unitOf(word)
    if (word !== undefined && unit === null) return {unknownUnit: word}
    parts.push({amount: Number(match[1]!.replace(',', '.')), unit})
  }
  return parts.length > 1 && parts.some(part => part.unit === null) ? null : {text: trimmed, parts}
}

/** `1,200 g`: a comma for thousands, or for the decimals of a gram that nobody weighs? Only the keeper knows. */
export function isDoubtful(quantity: Quantity): boolean {
  return /^\d{1,3}[.,]\d{3}(?!\d)/.test(quantity.text) && (quantity.parts[0]?.unit === 'g' || quantity.parts[0]?.unit === 'mg')
}

/**
 * The amount of a quantity in another unit, or null when the units measure different things. A bare number is taken to be in that unit already.
 *
 * @example inUnit({text: '5 lb 4 oz', parts: [{amount: 5, unit: 'lb'}, {amount: 4, unit: 'oz'}]}, 'g')  // 2381.3599425
 */
export function inUnit(quantity: Quantity, unit: Unit): number | null {
  let sum = 0
  for (const part of quantity.parts) {
    if (part.unit === null || part.unit === unit) sum += part.amount
    else if (UNITS[part.unit].of === UNITS[unit].of) sum += (part.amount * UNITS[part.unit].size) / UNITS[unit].size
    else return null
  }
  return sum
}
