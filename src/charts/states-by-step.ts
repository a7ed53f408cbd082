/** The states of a trait that has more than two, step by step. Wanted solid, the first off type barred, further ones told apart by pattern. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import type {KeyEntry} from './row-chart.ts'
import {OTHER_PATTERNS, stackedRows} from './stacked-rows.ts'
import type {Pattern} from './theme.ts'

export interface StatesRow {
  readonly label: string
  /** chicks of each state, by its name */
  readonly counts: Readonly<Record<string, number>>
}

export interface StateKey {
  readonly name: string
  /** null: the standard says nothing about it */
  readonly wanted: boolean | null
}

/** A pattern for each state; from the seventh on patterns come round again, and the table must tell. */
export function statePatterns(states: readonly StateKey[]): readonly KeyEntry[] {
  const wanted: Pattern[] = ['self'], off: Pattern[] = ['barred'], spare = [...OTHER_PATTERNS]
  const next = (own: Pattern[]): Pattern => own.shift() ?? spare.shift() ?? 'laced'
  return states.map(({name, wanted: is}) => ({name, pattern: is === true ? next(wanted) : is === false ? next(off) : next([])}))
}

/** @throws RangeError when a row has nothing scored */
export function statesByStep(rows: Rows<StatesRow>, states: Rows<StateKey>): ChartSpec {
  const stacked = mapRows(rows, ({label, counts}) => {
    const parts = states.map(({name}) => ({name, amount: counts[name] ?? 0}))
    return {label, parts, words: String(parts.reduce((sum, {amount}) => sum + amount, 0))}
  })
  return stackedRows(stacked, statePatterns(states), null)
}
