import {parseQuantity, UNITS} from '../records/quantities.ts'

/** What keepers put into a cell that they cannot fill in. */
const PLACEHOLDERS = new Set(['unknown', 'not known', 'not seen', 'not recorded', 'n/a', 'na', 'n.a', 'not applicable', 'to do', 'tbd', 'open'])

const plain = (text: string): string => text.normalize('NFKC').trim().replace(/\s+/g, ' ').replace(/\.$/, '').toLowerCase()

/** Does a cell of the table of distinctness say anything? Not where it has neither letter nor figure, or a word for what nobody knows. */
export const isFilled = (cell: string): boolean => /[\p{L}\p{N}]/u.test(cell) && !PLACEHOLDERS.has(plain(cell))

/** Do two filled cells say different things? Capitals and white space count for nothing, and one size in two units is one: `45°`, `45 degrees` and `45`, `2.5 kg` and `2500 g`. */
export function differ(one: string, other: string): boolean {
  const [a, b] = [sizeOf(one), sizeOf(other)]
  if (a === null || b === null) return plain(one) !== plain(other)
  if (a.of === 'number' || b.of === 'number') return a.amount !== b.amount
  if (a.of !== b.of) return true
  return Math.abs(a.size - b.size) > 1e-9 * Math.max(Math.abs(a.size), Math.abs(b.size))
}

/** A number with its unit, in the smallest unit of its kind; null where it is none. */
function sizeOf(text: string): {readonly of: string; readonly size: number; readonly amount: number} | null {
  const read = parseQuantity(plain(text))
  if (read === null || 'unknownUnit' in read) return null
  const kinds = new Set(read.parts.map(({unit}) => (unit === null ? 'number' : UNITS[unit].of))), [of = '', other] = kinds
  return other === undefined ? {of, size: read.parts.reduce((sum, {amount, unit}) => sum + amount * (unit === null ? 1 : UNITS[unit].size), 0), amount: read.parts.reduce((sum, {amount}) => sum + amount, 0)} : null
}

/** Characters are one whatever their capitals and white space. */
export const characterName = plain
