/** Several courses over the seasons to come, a line each, named where it ends and told apart by its dashes; the project's limit across. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {axisFromZero, percentOf} from './egg-rows.ts'
import {textRoom} from './row-chart.ts'
import {spaced} from './spaced.ts'
import {CHART_WIDTH} from './theme.ts'

export interface Course {
  /** stands at the line's end */
  readonly name: string
  /** shares, 0 to 1, a season each */
  readonly points: Rows<number>
}

const HEIGHT = 224, LEFT = 34, BOTTOM = 26, TOP = 10
/** Between the middles of two names. */
export const LINE = 19
/** What tells lines apart. */
export const DASHES = [[1, 0], [7, 3], [12, 4], [7, 3, 2, 3], [4, 5]] as const

/** @param first  year of the first point */
export function courses(list: Rows<Course>, first: number, limit: {readonly value: number; readonly words: string} | null): ChartSpec {
  const right = Math.max(...list.map(({name}) => textRoom(name))) + 10
  const width = CHART_WIDTH - LEFT - right
  const axis = axisFromZero([...list.flatMap(({points}) => points.map(percentOf)), ...(limit === null ? [] : [percentOf(limit.value)])])
  const last = first + Math.max(...list.map(({points}) => points.length)) - 1
  const x = {field: 'year', type: 'quantitative', scale: {domain: [first, Math.max(last, first + 1)], nice: false, zero: false}, axis: {values: last > first ? [first, last] : [first], format: 'd', grid: false}}
  const y = {field: 'percent', type: 'quantitative', scale: {domain: [0, axis.to], nice: false}, axis: {values: axis.ticks, grid: true, labelAlign: 'right', labelPadding: 8}}
  const ends = spaced(list.map(({points}) => HEIGHT * (1 - percentOf(points.at(-1) ?? 0) / axis.to)), LINE, HEIGHT)
  return {
    $schema: SCHEMA, width, height: HEIGHT, padding: {left: LEFT, right, top: TOP, bottom: BOTTOM},
    layer: [
      ...(limit === null ? [] : [
        {data: {values: [{percent: percentOf(limit.value)}]}, mark: {type: 'rule', style: 'standard'}, encoding: {y}},
        {data: {values: [{percent: percentOf(limit.value)}]}, mark: {type: 'text', align: 'right', style: 'soft', dy: 11}, encoding: {y, x: {value: width}, text: {value: limit.words}}},
      ]),
      ...list.map(({points}, index) => ({
        data: {values: points.map((value, season) => ({year: first + season, percent: percentOf(value)}))},
        mark: {type: 'line', color: 'var(--ink)', strokeWidth: 1.75, strokeDash: DASHES[index % DASHES.length]}, encoding: {x, y},
      })),
      ...list.map(({name}, index) => ({
        data: {values: [{}]}, mark: {type: 'text', align: 'left'}, encoding: {x: {value: width + 8}, y: {value: Math.round((ends[index] ?? 0) * 100) / 100}, text: {value: name}},
      })),
    ],
  } as ChartSpec
}
