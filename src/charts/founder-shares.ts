/** What is left of each founder: a bar a founder, as long as its share, the recurrent strain's solid and each other strain in its pattern. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import type {KeyEntry} from './row-chart.ts'
import {OTHER_PATTERNS, stackedRows} from './stacked-rows.ts'

export interface FounderBar {
  /** the founder's band */
  readonly label: string
  /** its strain's name; one of those in the key, else it counts among those not known */
  readonly strain: string | null
  /** of the group's genes, above 0 */
  readonly share: number
  /** put at the right end: `30.0%` */
  readonly words: string
}

const UNKNOWN = 'not known'

/** `strains`: names in the order of the key, the recurrent one first. */
export function founderShares(rows: Rows<FounderBar>, strains: readonly string[]): ChartSpec {
  const nameOf = ({strain}: FounderBar): string => (strain !== null && strains.includes(strain) ? strain : UNKNOWN)
  const key: readonly KeyEntry[] = [
    ...strains.map((name, index): KeyEntry => ({name, pattern: index === 0 ? 'self' : OTHER_PATTERNS[(index - 1) % OTHER_PATTERNS.length] ?? 'laced'})),
    ...(rows.some(row => nameOf(row) === UNKNOWN) ? [{name: UNKNOWN, pattern: 'speckled'} as const] : []),
  ]
  const most = Math.max(...rows.map(({share}) => share))
  return stackedRows(mapRows(rows, row => ({label: row.label, words: row.words, parts: [{name: nameOf(row), amount: row.share}]})), key, most)
}
