/** How common one allele is, step by step: an egg for all that hatched with the line of its interval, a ring for those bred from. */
import type {Interval} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {percentOf} from './egg-rows.ts'
import {rowFrame} from './row-chart.ts'

export interface AlleleRow {
  readonly label: string
  /** share of the genes of all that hatched, 0 to 1 */
  readonly hatched: number
  readonly interval: Interval
  /** of those bred from; null where none was */
  readonly bredFrom: number | null
}

export function alleleByStep(rows: Rows<AlleleRow>): ChartSpec {
  const values = rows.map(({label, hatched, interval, bredFrom}) => ({label, hatched: percentOf(hatched), low: percentOf(interval.low), high: percentOf(interval.high), bred: bredFrom === null ? null : percentOf(bredFrom)}))
  const {width, height, padding, y} = rowFrame(rows.map(row => row.label), {right: 16, top: 0, bottom: 26})
  const x = {type: 'quantitative', scale: {domain: [0, 100], nice: false, zero: true}, axis: {values: [0, 25, 50, 75, 100]}}
  return {
    $schema: SCHEMA, width, height, padding, data: {name: 'rows', values},
    layer: [
      {mark: {type: 'rule'}, encoding: {y, x: {...x, field: 'low'}, x2: {field: 'high'}}},
      {mark: {type: 'point'}, encoding: {y, x: {...x, field: 'hatched'}}},
      {transform: [{filter: 'isValid(datum.bred)'}], mark: {type: 'point', style: 'ring'}, encoding: {y, x: {...x, field: 'bred'}}},
    ],
  } as ChartSpec
}
