/** The expected share of each founding strain, step by step: the recurrent strain solid, donors by pattern, what descent leaves open speckled. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import type {KeyEntry} from './row-chart.ts'
import {OTHER_PATTERNS, stackedRows} from './stacked-rows.ts'

export interface StrainShareRow {
  readonly label: string
  /** mean expected share, 0 to 1, by the strain's name; together 1 or, where descent is not known, less */
  readonly shares: Readonly<Record<string, number>>
  /** put at the right end: the first strain's share in words, `93.8%` */
  readonly words: string
}

const UNKNOWN = 'not known'

/** `strains`: names in the order to draw them, the recurrent one first. */
export function strainShareByStep(rows: Rows<StrainShareRow>, strains: Rows<string>): ChartSpec {
  const left = (row: StrainShareRow): number => Math.max(0, 1 - strains.reduce((sum, strain) => sum + (row.shares[strain] ?? 0), 0))
  const gaps = rows.some(row => left(row) > 1e-9)
  const key: readonly KeyEntry[] = [
    ...strains.map((name, index): KeyEntry => ({name, pattern: index === 0 ? 'self' : OTHER_PATTERNS[(index - 1) % OTHER_PATTERNS.length] ?? 'laced'})),
    ...(gaps ? [{name: UNKNOWN, pattern: 'speckled'} as const] : []),
  ]
  const stacked = mapRows(rows, row => ({
    label: row.label, words: row.words,
    parts: [...strains.map(name => ({name, amount: row.shares[name] ?? 0})), ...(gaps ? [{name: UNKNOWN, amount: left(row) > 1e-9 ? left(row) : 0}] : [])],
  }))
  return stackedRows(stacked, key, null)
}
