/** How many of the scored chicks showed what is wanted, step by step: a bar of wanted, the rest barred, the count at its end. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {rowFrame, textRoom} from './row-chart.ts'

export interface ShareRow {
  /** the step: `BC1` */
  readonly label: string
  readonly count: number
  /** 1 or more */
  readonly total: number
  /** share that descent leads one to expect, 0 to 1, drawn as a dotted tick; null when nothing is */
  readonly expected?: number | null
}

/** @throws RangeError when a count is not one of its total */
export function shareByStep(rows: Rows<ShareRow>): ChartSpec {
  const values = rows.map(({label, count, total, expected}) => {
    if (!(total >= 1 && count >= 0 && count <= total)) throw new RangeError(`${label}: ${count} of ${total} is no share`)
    return {label, share: count / total, words: `${count}/${total}`, expected: expected ?? null}
  })
  const frame = rowFrame(rows.map(row => row.label), {right: Math.max(58, ...values.map(({words}) => textRoom(words) + 10)), top: 0, bottom: 0})
  const {width, height, padding, y} = frame
  const x = {type: 'quantitative', scale: {domain: [0, 1], nice: false}, axis: null}
  const ticks = values.filter(row => row.expected !== null)
  return {
    $schema: SCHEMA, width, height, padding, data: {name: 'rows', values},
    layer: [
      {transform: [{filter: 'datum.share > 0'}], mark: {type: 'bar', style: 'self'}, encoding: {y, x: {...x, field: 'share'}, x2: {datum: 0}}},
      {transform: [{filter: 'datum.share < 1'}], mark: {type: 'bar', style: 'barred'}, encoding: {y, x: {...x, field: 'share'}, x2: {datum: 1}}},
      ...(ticks.length === 0 ? [] : [{
        transform: [{filter: 'isValid(datum.expected)'}],
        mark: {type: 'tick', orient: 'vertical', size: 26, thickness: 2, style: 'expected'}, encoding: {y, x: {...x, field: 'expected'}},
      }]),
      {mark: {type: 'text', align: 'right', style: 'soft'}, encoding: {y, x: {value: width + padding.right}, text: {field: 'words'}}},
    ],
  } as ChartSpec
}
