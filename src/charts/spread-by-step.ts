/** How even the birds of each step are: the coefficient of variation as an egg, in per cent, with its interval where there is one, and the mark it should come under. */
import type {Interval} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {mapRows} from './chart-spec.ts'
import type {RowMark} from './egg-rows.ts'
import {axisFromZero, eggRows, percentOf} from './egg-rows.ts'

export interface SpreadRow {
  readonly label: string
  /** coefficient of variation as a share of the mean, 0.079; null: too few birds */
  readonly cv: number | null
  readonly interval?: Interval | null
}

/** @param mark  the project's own mark as a share, or null */
export function spreadByStep(rows: Rows<SpreadRow>, mark: number | null = null): ChartSpec {
  const percent = mapRows(rows, ({label, cv, interval}) => ({
    label, value: cv === null ? null : percentOf(cv), interval: interval ? {low: percentOf(interval.low), high: percentOf(interval.high)} : null,
  }))
  const line: RowMark | null = mark === null ? null : {value: percentOf(mark), words: `mark ${Number(percentOf(mark).toFixed(1))}`}
  const numbers = percent.flatMap(({value, interval}) => [value ?? 0, interval?.high ?? 0])
  return eggRows(percent, axisFromZero([...numbers, line?.value ?? 0]), line, 'too few birds')
}
