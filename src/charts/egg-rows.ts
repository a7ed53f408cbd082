/** Rows with an egg at the estimate and a line from end to end of its interval: the frame of the spread chart. */
import type {Interval} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {rowFrame, textRoom} from './row-chart.ts'
import {CHART_WIDTH} from './theme.ts'

export interface EggRow {
  readonly label: string
  /** the estimate, in the axis's unit; null: cannot be said, and words say so in its place */
  readonly value: number | null
  readonly interval: Interval | null
}

/** A line across all rows, named where it stands. */
export interface RowMark {
  readonly value: number
  /** `mark 10` */
  readonly words: string
}

export interface EggAxis {
  readonly from: number
  readonly to: number
  readonly ticks: readonly number[]
}

/** @param notSaid  what stands in a row that has no estimate */
export function eggRows(rows: Rows<EggRow>, axis: EggAxis, mark: RowMark | null, notSaid: string): ChartSpec {
  const {width, height, padding, y} = rowFrame(rows.map(row => row.label), {right: 8, top: mark === null ? 0 : 28, bottom: 26})
  const values = rows.map(({label, value, interval}) => ({label, value, low: interval?.low ?? null, high: interval?.high ?? null}))
  const x = {
    type: 'quantitative', scale: {domain: [axis.from, axis.to], nice: false, clamp: true, zero: false},
    axis: {values: axis.ticks, labelExpr: "replace(datum.label, '−', '-')"},
  }
  return {
    $schema: SCHEMA, width, height, padding, data: {name: 'rows', values},
    layer: [
      ...(mark === null ? [] : markLayers(mark, axis, {width, left: padding.left}, x)),
      {transform: [{filter: 'isValid(datum.low)'}], mark: {type: 'rule'}, encoding: {y, x: {...x, field: 'low'}, x2: {field: 'high'}}},
      {transform: [{filter: 'isValid(datum.value)'}], mark: {type: 'point'}, encoding: {y, x: {...x, field: 'value'}}},
      ...(values.every(row => row.value !== null) ? [] : [{
        transform: [{filter: '!isValid(datum.value)'}], mark: {type: 'text', align: 'left', style: 'soft'}, encoding: {y, x: {value: 6}, text: {value: notSaid}},
      }]),
    ],
  } as ChartSpec
}

/** The mark's line, and its name above it, kept inside the drawing. */
function markLayers(mark: RowMark, axis: EggAxis, {width, left}: {width: number; left: number}, x: object): readonly object[] {
  const at = (width * (Math.min(axis.to, Math.max(axis.from, mark.value)) - axis.from)) / (axis.to - axis.from)
  const half = textRoom(mark.words) / 2
  const middle = Math.min(CHART_WIDTH - left - half, Math.max(half - left, at))
  return [
    {mark: {type: 'rule', style: 'standard'}, data: {values: [{mark: mark.value}]}, encoding: {x: {...x, field: 'mark'}}},
    {mark: {type: 'text', align: 'center', style: 'soft'}, data: {values: [{}]}, encoding: {x: {value: Math.round(middle * 100) / 100}, y: {value: -14}, text: {value: mark.words}}},
  ]
}

/** A share as per cent, without the dust of binary fractions: 0.118 → 11.8. */
export const percentOf = (share: number): number => tidy(share * 100)

/** Ends and ticks of an axis from 0 that holds every number: steps of 1, 2 or 5 times a power of ten, at most five of them. */
export function axisFromZero(numbers: readonly number[]): EggAxis {
  const most = Math.max(...numbers, 0)
  const step = niceStep(most === 0 ? 1 : most / 4)
  const count = Math.max(1, Math.ceil(most / step - 1e-9))
  return {from: 0, to: tidy(count * step), ticks: Array.from({length: count + 1}, (_, index) => tidy(index * step))}
}

/** The least of 1, 2, 5 times a power of ten that is `size` or more. */
export function niceStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size))
  const factor = [1, 2, 5, 10].find(each => each * power >= size * (1 - 1e-9)) ?? 10
  return factor * power
}

const tidy = (number: number): number => Number(number.toPrecision(12))
