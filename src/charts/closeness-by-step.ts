/**
 * How closely bred each step is and how closely its birds are kin: a solid egg for mean F with the line of its range, a ring for mean kinship, the most F
 * that the project's limit a generation allowed as a tick, its limit for a mating as a line across.
 */
import type {Interval} from '../findings/estimate.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {axisFromZero, percentOf} from './egg-rows.ts'
import {rowFrame, textRoom} from './row-chart.ts'
import {CHART_WIDTH} from './theme.ts'

export interface ClosenessRow {
  readonly label: string
  /** mean F, 0 to 1, and between what it lies by the parents in doubt; null where nothing is in doubt */
  readonly inbreeding: number
  readonly range: Interval | null
  readonly kinship: number
  /** F at which the project's limit a generation would be reached; null where there is none */
  readonly allowed?: number | null
}

const LINE = 26

/** @param limit the project's for one mating, as a share, or null */
export function closenessByStep(rows: Rows<ClosenessRow>, limit: number | null = null): ChartSpec {
  const values = rows.map(({label, inbreeding, range, kinship, allowed}) => ({
    label, inbreeding: percentOf(inbreeding), low: range && percentOf(range.low), high: range && percentOf(range.high), kinship: percentOf(kinship),
    allowed: allowed === null || allowed === undefined ? null : percentOf(allowed),
  }))
  const hasAllowed = values.some(row => row.allowed !== null)
  const {width, height, padding, y} = rowFrame(rows.map(row => row.label), {right: 10, top: LINE + (limit === null ? 6 : LINE + 6), bottom: 26})
  const axis = axisFromZero([...values.flatMap(row => [row.inbreeding, row.high ?? 0, row.kinship, row.allowed ?? 0]), limit === null ? 0 : percentOf(limit)])
  const x = {type: 'quantitative', scale: {domain: [0, axis.to], nice: false, zero: true}, axis: {values: axis.ticks}}
  const line = limit === null ? [] : limitLayers({at: percentOf(limit), to: axis.to, width, left: padding.left, x})
  return {
    $schema: SCHEMA, width, height, padding, data: {name: 'rows', values},
    layer: [
      ...line, ...keyLayers(padding, hasAllowed),
      {transform: [{filter: 'isValid(datum.low)'}], mark: {type: 'rule'}, encoding: {y, x: {...x, field: 'low'}, x2: {field: 'high'}}},
      ...(hasAllowed ? [{
        transform: [{filter: 'isValid(datum.allowed)'}], mark: {type: 'tick', orient: 'vertical', size: 26, thickness: 2, style: 'expected'}, encoding: {y, x: {...x, field: 'allowed'}},
      }] : []),
      {mark: {type: 'point', style: 'ring'}, encoding: {y, x: {...x, field: 'kinship'}}},
      {mark: {type: 'point'}, encoding: {y, x: {...x, field: 'inbreeding'}}},
    ],
  } as ChartSpec
}

/** The limit's line, and its name above it, kept inside the drawing. */
function limitLayers({at, to, width, left, x}: {readonly at: number; readonly to: number; readonly width: number; readonly left: number; readonly x: object}): readonly object[] {
  const words = `limit ${Number(at.toFixed(1))}`, half = textRoom(words) / 2
  const middle = Math.min(CHART_WIDTH - left - half, Math.max(half - left, (width * at) / to))
  return [
    {mark: {type: 'rule', style: 'standard'}, data: {values: [{limit: at}]}, encoding: {x: {...x, field: 'limit'}}},
    {mark: {type: 'text', align: 'center', style: 'soft'}, data: {values: [{}]}, encoding: {x: {value: Math.round(middle * 100) / 100}, y: {value: -14}, text: {value: words}}},
  ]
}

/** What egg, ring and tick are, in one line above all. */
function keyLayers({left, top}: {readonly left: number; readonly top: number}, hasAllowed: boolean): readonly object[] {
  const y = {value: 10 - top}
  const words = (text: string, x: number) => ({data: {values: [{}]}, mark: {type: 'text', align: 'left'}, encoding: {text: {value: text}, x: {value: x - left}, y}})
  const point = (x: number, style?: string) => ({data: {values: [{}]}, mark: {type: 'point', ...(style === undefined ? {} : {style})}, encoding: {x: {value: x - left}, y}})
  return [
    point(7), words('mean F', 20), point(99, 'ring'), words('mean kinship', 112),
    ...(hasAllowed ? [
      {data: {values: [{}]}, mark: {type: 'rule', style: 'expected'}, encoding: {x: {value: 228 - left}, y: {value: -top}, y2: {value: 20 - top}}}, words('allowed', 238),
    ] : []),
  ]
}
