/** How birds grow: weight over weeks, a line a step, named where it ends and told apart by its dashes, a ring at every age weighed. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {DASHES, LINE} from './courses.ts'
import {axisFromZero} from './egg-rows.ts'
import {textRoom} from './row-chart.ts'
import {spaced} from './spaced.ts'
import {CHART_WIDTH} from './theme.ts'

export interface GrowthLine {
  /** the step */
  readonly name: string
  /** ascending by weeks; `value` in the axis's unit */
  readonly points: Rows<{readonly weeks: number; readonly value: number}>
}

/** Lines that can be told apart. */
export const MOST_LINES = DASHES.length

const HEIGHT = 190, LEFT = 40, BOTTOM = 26, TOP = 10

export function growth(lines: Rows<GrowthLine>): ChartSpec {
  const right = Math.max(...lines.map(({name}) => textRoom(name))) + 10, width = CHART_WIDTH - LEFT - right
  const axis = axisFromZero(lines.flatMap(({points}) => points.map(({value}) => value))), ages = [...new Set(lines.flatMap(({points}) => points.map(({weeks}) => weeks)))].sort((a, b) => a - b)
  const last = Math.max(1, ...ages), shown = ages.filter((age, index) => index === ages.length - 1 || ((ages[index + 1] ?? age) - age) * (width / last) >= 22)
  const x = {field: 'weeks', type: 'quantitative', scale: {domain: [0, last], nice: false}, axis: {values: shown, grid: false, format: 'd'}}
  const y = {field: 'value', type: 'quantitative', scale: {domain: [0, axis.to], nice: false}, axis: {values: axis.ticks, grid: true, labelAlign: 'right', labelPadding: 8}}
  const ends = spaced(lines.map(({points}) => HEIGHT * (1 - (points.at(-1)?.value ?? 0) / axis.to)), LINE, HEIGHT)
  const names = lines.map(({name}) => name), values = lines.flatMap(({name, points}) => points.map(({weeks, value}) => ({name, weeks, value: Number(value.toPrecision(4))})))
  const texts = lines.map(({name, points}, index) => ({name, x: Math.round((width * (points.at(-1)?.weeks ?? 0)) / last) + 8, y: Math.round((ends[index] ?? 0) * 10) / 10}))
  const strokeDash = {field: 'name', scale: {domain: names, range: DASHES.slice(0, names.length)}, legend: null}, placed = {type: 'quantitative', scale: null, axis: null}
  return {
    $schema: SCHEMA, width, height: HEIGHT, padding: {left: LEFT, right, top: TOP, bottom: BOTTOM}, data: {name: 'rows', values},
    layer: [
      {mark: {type: 'line', color: 'var(--ink)', strokeWidth: 1.75}, encoding: {x, y, strokeDash, detail: {field: 'name'}}},
      {mark: {type: 'point', style: 'ring', size: 40}, encoding: {x, y}},
      {data: {name: 'words', values: texts}, mark: {type: 'text', align: 'left'}, encoding: {x: {...placed, field: 'x'}, y: {...placed, field: 'y'}, text: {field: 'name'}}},
    ],
  } as ChartSpec
}
