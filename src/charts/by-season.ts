/** One share season by season: an egg at the estimate and a line from end to end of its interval, in per cent. */
import type {Interval} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import {eggRows, percentOf} from './egg-rows.ts'

export interface SeasonRow {
  /** the year */
  readonly label: string
  /** a share, 0 to 1; null: cannot be said */
  readonly share: number | null
  readonly interval: Interval | null
}

/** Shares that all lie above half are drawn from half on, where they are best told apart. */
export function bySeason(rows: Rows<SeasonRow>): ChartSpec {
  const from = rows.every(({share, interval}) => share === null || Math.min(share, interval?.low ?? 1) >= 0.5) ? 50 : 0
  const ticks = from === 0 ? [0, 25, 50, 75, 100] : [50, 60, 70, 80, 90, 100]
  return eggRows(mapRows(rows, ({label, share, interval}) => ({label, value: share === null ? null : percentOf(share), interval: interval && {low: percentOf(interval.low), high: percentOf(Math.min(1, interval.high))}})), {from, to: 100, ticks}, null, 'none')
}
