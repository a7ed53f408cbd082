import type {Trait} from '../logbook/book.ts'
import {isUnit, UNITS} from '../records/quantities.ts'

/** The measure that stands for a bird in rows, charts and the feather: a weight before anything else, one with a target before one without. */
export function mainMeasure(traits: readonly Trait[]): Trait | null {
  const measured = traits.filter(trait => trait.kind === 'measured')
  const wanted = measured.filter(trait => (trait.wanted.male ?? trait.wanted.female) !== null)
  const isWeight = ({unit}: Trait) => unit !== null && isUnit(unit) && UNITS[unit].of === 'mass'
  return wanted.find(isWeight) ?? measured.find(isWeight) ?? wanted[0] ?? measured[0] ?? null
}
