/** What became of the eggs, hatch by hatch or season by season: hatched solid, clear outlined, dead barred, the rest speckled. Bars are as long as the eggs were many. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import type {KeyEntry} from './row-chart.ts'
import {stackedRows} from './stacked-rows.ts'

export interface HatchRow {
  readonly label: string
  /** eggs set */
  readonly eggs: number
  readonly hatched: number
  /** null: not counted */
  readonly clear: number | null
  /** dead in germ and in shell together; null: not counted */
  readonly dead: number | null
}

const HATCHED = 'hatched', CLEAR = 'clear', DEAD = 'dead in germ or shell', UNTOLD = 'not told'
const KEY: readonly KeyEntry[] = [
  {name: HATCHED, pattern: 'self'}, {name: CLEAR, pattern: 'laced'}, {name: DEAD, pattern: 'barred'}, {name: UNTOLD, pattern: 'speckled'},
]

/** Eggs of which nothing is told. */
export const untold = ({eggs, hatched, clear, dead}: HatchRow): number => eggs - hatched - (clear ?? 0) - (dead ?? 0)

/** @throws RangeError when a row has no eggs, or counts beyond them */
export function hatchResults(rows: Rows<HatchRow>): ChartSpec {
  const most = Math.max(...rows.map(row => row.eggs))
  const stacked = mapRows(rows, row => ({
    label: row.label, words: `${row.hatched}/${row.eggs}`,
    parts: [{name: HATCHED, amount: row.hatched}, {name: CLEAR, amount: row.clear ?? 0}, {name: DEAD, amount: row.dead ?? 0}, {name: UNTOLD, amount: untold(row)}],
  }))
  const key = KEY.filter(({name}) => name !== UNTOLD || stacked.some(row => row.parts.some(part => part.name === UNTOLD && part.amount > 0)))
  return stackedRows(stacked, key, most)
}
