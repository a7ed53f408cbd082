/** A cell that holds a mass: its unit stands in the heading (`feed (kg)`) or in the cell (`12 kg`). */
import type {Note} from './problem.ts'
import {inUnit} from './quantities.ts'
import type {Cell, Column} from './tables.ts'
import {readAmount} from './weigh-day.ts'

/**
 * Grams; null, and noted, where the cell holds no mass.
 *
 * @param heading the column's heading with its unit, as it should be written
 */
export function readMass(cell: Cell, column: Column, heading: string, note: Note): number | null {
  const amount = readAmount(cell, column.unit, note)
  if (amount === null) return null
  const bare = amount.parts.some(part => part.unit === null)
  const grams = bare ? null : inUnit(amount, 'g')
  if (grams === null) {
    note({
      code: 'wrong-unit', severity: 'error', at: cell.at,
      reason: bare ? `“${cell.text}” has no unit, and the heading names none` : `“${cell.text}” is not a mass`,
      remedy: bare ? `write ${heading} as the heading, or the unit in the cell` : 'use mg, g, kg, oz or lb',
    })
  }
  return grams
}
