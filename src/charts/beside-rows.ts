/** Rows with an egg at the estimate, a line from end to end of its interval, and beside it what it is to be held against: a tick, or a band. The axis runs to both sides of nothing. */
import type {Interval} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {niceStep} from './egg-rows.ts'
import {rowFrame} from './row-chart.ts'

export interface BesideRow {
  readonly label: string
  /** the estimate, in the axis's unit; null: cannot be said */
  readonly value: number | null
  readonly interval: Interval | null
  /** what was to be expected, a tick; null: none */
  readonly expected?: number | null
  /** what others found, a band; its ends may be one */
  readonly band?: Interval | null
}

export interface BesideAxis {
  readonly from: number
  readonly to: number
  readonly ticks: readonly number[]
  /** where a line goes down all rows; null: none */
  readonly mark: number | null
}

const tidy = (number: number): number => Number(number.toPrecision(12))

/**
 * Ends and ticks of an axis that holds 0 and every number, yet goes no further than `most` to either side: what lies beyond is drawn at its end.
 *
 * @param numbers  estimates and limits, in the axis's unit
 * @param mark  where a line goes down
 */
export function axisAround(numbers: readonly number[], most: number, mark: number | null = 0): BesideAxis {
  const low = Math.max(-most, Math.min(0, ...numbers)), high = Math.min(most, Math.max(0, ...numbers))
  let step = niceStep((high - low === 0 ? 1 : high - low) / 3)
  const ends = (): readonly [number, number] => [Math.floor(low / step + 1e-9), Math.max(Math.floor(low / step + 1e-9) + 1, Math.ceil(high / step - 1e-9))]
  // four labels have room
  while (ends()[1] - ends()[0] > 3) step = niceStep(step * 1.01)
  const [first, last] = ends()
  return {from: tidy(first * step), to: tidy(last * step), ticks: Array.from({length: last - first + 1}, (_, index) => tidy((first + index) * step)), mark}
}

/** @param notSaid  what stands in a row that has no estimate */
export function besideRows(rows: Rows<BesideRow>, axis: BesideAxis, notSaid = 'cannot be said'): ChartSpec {
  const {width, height, padding, y} = rowFrame(rows.map(row => row.label), {right: 8, top: 0, bottom: 26}), half = (axis.to - axis.from) / 160
  // a band of no width would not be seen
  const values = rows.map(({label, value, interval, expected = null, band = null}) => ({
    label, value, low: interval?.low ?? null, high: interval?.high ?? null, expected, from: band && Math.min(band.low, (band.low + band.high) / 2 - half), to: band && Math.max(band.high, (band.low + band.high) / 2 + half),
  }))
  const x = {type: 'quantitative', scale: {domain: [axis.from, axis.to], nice: false, clamp: true, zero: false}, axis: {values: axis.ticks}}
  return {
    $schema: SCHEMA, width, height, padding, data: {name: 'rows', values},
    layer: [
      ...(values.some(({from}) => from !== null) ? [{transform: [{filter: 'isValid(datum.from)'}], mark: {type: 'bar', height: 22, style: 'laced'}, encoding: {y, x: {...x, field: 'from'}, x2: {field: 'to'}}}] : []),
      ...(axis.mark === null ? [] : [{mark: {type: 'rule', style: 'standard'}, data: {values: [{mark: axis.mark}]}, encoding: {x: {...x, field: 'mark'}}}]),
      {transform: [{filter: 'isValid(datum.low)'}], mark: {type: 'rule'}, encoding: {y, x: {...x, field: 'low'}, x2: {field: 'high'}}},
      ...(values.some(({expected}) => expected !== null) ? [{transform: [{filter: 'isValid(datum.expected)'}], mark: {type: 'tick', orient: 'vertical', size: 26, thickness: 2, style: 'expected'}, encoding: {y, x: {...x, field: 'expected'}}}] : []),
      {transform: [{filter: 'isValid(datum.value)'}], mark: {type: 'point'}, encoding: {y, x: {...x, field: 'value'}}},
      ...(values.every(({value}) => value !== null) ? [] : [{transform: [{filter: '!isValid(datum.value)'}], mark: {type: 'text', align: 'left', style: 'soft'}, encoding: {y, x: {value: 6}, text: {value: notSaid}}}]),
    ],
  } as ChartSpec
}
