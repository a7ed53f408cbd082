/** A share with its interval, step by step, in per cent: an egg at the estimate, a line over the interval, a mark or limit where one is set. */
import type {Share} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import type {RowMark} from './egg-rows.ts'
import {eggRows, percentOf} from './egg-rows.ts'

export interface ShareIntervalRow {
  readonly label: string
  /** null: none scored */
  readonly share: Pick<Share, 'value' | 'interval'> | null
}

export interface ShareMark {
  /** 0 to 1 */
  readonly value: number
  readonly kind: 'standard' | 'limit'
}

/** The axis runs from 0 to 100, or from 50 when nothing lies below. */
export function shareIntervalByStep(rows: Rows<ShareIntervalRow>, mark: ShareMark | null = null): ChartSpec {
  const lowest = Math.min(mark?.value ?? 1, ...rows.map(({share}) => share?.interval.low ?? 1))
  const axis = lowest >= 0.5 ? {from: 50, to: 100, ticks: [50, 75, 100]} : {from: 0, to: 100, ticks: [0, 25, 50, 75, 100]}
  const percent = mapRows(rows, ({label, share}) => ({
    label, value: share === null ? null : percentOf(share.value), interval: share === null ? null : {low: percentOf(share.interval.low), high: percentOf(share.interval.high)},
  }))
  const line: RowMark | null = mark === null ? null
    : {value: percentOf(mark.value), words: `${mark.kind === 'limit' ? 'limit' : 'mark'} ${Number((percentOf(mark.value)).toFixed(1))}`, kind: mark.kind}
  return eggRows(percent, axis, line, 'none scored')
}
