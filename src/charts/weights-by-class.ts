/** Every weighed bird as a mark above its weight, sex by sex, with the standard and its tolerance behind: squares males, circles females, open ones fail a required trait. */
import type {Sex} from '../logbook/book.ts'
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import {niceStep} from './egg-rows.ts'
import {CHART_WIDTH} from './theme.ts'

export interface WeightClass {
  readonly sex: Sex
  /** above the marks: `Cockerels, 27` */
  readonly title: string
  /** what the standard asks, in the axis's unit; null when it asks nothing */
  readonly standard: {readonly mark: number | null; readonly low: number | null; readonly high: number | null} | null
  /** `value` in the axis's unit; `right`: shows every required trait, fails one, or not fully scored */
  readonly birds: Rows<{readonly value: number; readonly right: boolean | null}>
}

const PITCH = 9.6, TITLE = 22, GAP = 16, BOTTOM = 26, MARGIN = 6
/** Marks of one column at most; above that columns become plain bars, since a tower of dots cannot be counted anyway. */
const MOST_STACKED = 18
const BAR_ROOM = 120

interface Placed {
  readonly value: number
  readonly right: 'right' | 'off' | 'unknown'
  /** place in its column from the base line, from 0 */
  readonly level: number
}

/** Are the classes so large that columns are drawn as bars? The caption then says so. */
export function weightsAsBars(classes: Rows<WeightClass>): boolean {
  return Math.max(...placeAll(classes).flatMap(({placed}) => placed.map(({level}) => level + 1))) > MOST_STACKED
}

export function weightsByClass(classes: Rows<WeightClass>): ChartSpec {
  const axis = axisOf(classes)
  const bars = weightsAsBars(classes)
  let top = 0
  const parts = placeAll(classes).map(({group, placed, binWidth}) => {
    const peak = Math.max(...placed.map(({level}) => level + 1))
    const pitch = bars ? Math.min(PITCH, BAR_ROOM / peak) : PITCH
    const room = Math.max(24, peak * pitch + 4)
    const part = {group, placed, binWidth, pitch, from: top + TITLE, base: top + TITLE + room, title: top + 9}
    top = part.base + GAP
    return part
  })
  const height = top - GAP
  const x = {type: 'quantitative', scale: {domain: [axis.from, axis.to], nice: false, zero: false}, axis: {values: axis.ticks, grid: false, format: axis.format}}
  return {
    $schema: SCHEMA, width: CHART_WIDTH - 2 * MARGIN, height, padding: {left: MARGIN, right: MARGIN, top: 0, bottom: BOTTOM},
    layer: parts.flatMap(({group, placed, binWidth, pitch, from, base, title}) => [
      {data: {values: [{}]}, mark: {type: 'text', align: 'left'}, encoding: {text: {value: group.title}, x: {value: -MARGIN}, y: {value: title}}},
      ...standardLayers(group, x, from, base, axis),
      {data: {values: [{}]}, mark: {type: 'rule'}, encoding: {x: {value: -MARGIN}, x2: {value: CHART_WIDTH - MARGIN}, y: {value: base}}},
      ...(bars ? barLayers(placed, x, binWidth, base, pitch) : markLayers(group.sex, placed, x, base, pitch)),
    ]),
  } as ChartSpec
}

function standardLayers({standard}: WeightClass, x: object, from: number, base: number, axis: {from: number; to: number}): readonly object[] {
  if (standard === null) return []
  const {mark, low, high} = standard
  const layers: object[] = []
  if (low !== null || high !== null) {
    const zone = {low: Math.max(axis.from, low ?? axis.from), high: Math.min(axis.to, high ?? axis.to)}
    layers.push({data: {values: [zone]}, mark: {type: 'rect', style: 'zone'}, encoding: {x: {...x, field: 'low'}, x2: {field: 'high'}, y: {value: from}, y2: {value: base}}})
  }
  if (mark !== null) {
    layers.push({data: {values: [{mark}]}, mark: {type: 'rule', style: 'standard'}, encoding: {x: {...x, field: 'mark'}, y: {value: from}, y2: {value: base}}})
  }
  return layers
}

const SHAPES = {male: 'male', female: 'female', unknown: 'unsexed'} as const
const FILLS = [['right', null], ['off', 'open'], ['unknown', 'unscored']] as const

function markLayers(sex: Sex, placed: readonly Placed[], x: object, base: number, pitch: number): readonly object[] {
  return FILLS.flatMap(([right, style]) => {
    const values = placed.filter(bird => bird.right === right).map(({value, level}) => ({value, y: base - pitch * (level + 0.5) - 1}))
    if (values.length === 0) return []
    return [{
      data: {values}, mark: {type: 'point', style: style === null ? SHAPES[sex] : [SHAPES[sex], style]},
      encoding: {x: {...x, field: 'value'}, y: {field: 'y', type: 'quantitative', scale: null, axis: null}},
    }]
  })
}

function barLayers(placed: readonly Placed[], x: object, binWidth: number, base: number, pitch: number): readonly object[] {
  return FILLS.flatMap(([right, style]) => {
    const columns = new Map<number, {low: number; high: number}>()
    for (const {value, level, right: is} of placed) {
      if (is !== right) continue
      const column = columns.get(value)
      columns.set(value, {low: Math.min(column?.low ?? level, level), high: Math.max(column?.high ?? 0, level + 1)})
    }
    const values = [...columns].map(([value, {low, high}]) =>
      ({from: value - binWidth * 0.42, to: value + binWidth * 0.42, y: base - pitch * low, y2: base - pitch * high}))
    if (values.length === 0) return []
    return [{
      data: {values}, mark: {type: 'rect', style: style ?? 'self'},
      encoding: {x: {...x, field: 'from'}, x2: {field: 'to'}, y: {field: 'y', type: 'quantitative', scale: null, axis: null}, y2: {field: 'y2'}},
    }]
  })
}

interface WeightAxis {
  readonly from: number
  readonly to: number
  readonly ticks: readonly number[]
  readonly format: string
}

/** From a tick below the least to a tick above the most, standards counted in. */
function axisOf(classes: Rows<WeightClass>): WeightAxis {
  const numbers = classes.flatMap(({birds, standard}) => [...birds.map(bird => bird.value), ...[standard?.mark, standard?.low, standard?.high].filter(each => typeof each === 'number')])
  for (const number of numbers) if (!Number.isFinite(number)) throw new RangeError(`a weight is a number, not ${number}`)
  const least = Math.min(...numbers), most = Math.max(...numbers)
  const step = niceStep(Math.max((most - least) / 4, Math.abs(most) / 1000, 1e-9))
  const first = Math.floor(least / step + 1e-9), last = Math.max(first + 1, Math.ceil(most / step - 1e-9))
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const ticks = Array.from({length: last - first + 1}, (_, index) => Number(((first + index) * step).toPrecision(12)))
  return {from: ticks[0] ?? 0, to: ticks.at(-1) ?? 1, ticks, format: `.${decimals}f`}
}

/** Each bird in its column, right ones at the base. A column is as wide as a mark. */
function placeAll(classes: Rows<WeightClass>): readonly {group: WeightClass; placed: readonly Placed[]; binWidth: number}[] {
  const {from, to} = axisOf(classes)
  const columns = Math.floor((CHART_WIDTH - 2 * MARGIN) / PITCH)
  const binWidth = (to - from) / columns
  const order = (right: boolean | null): number => (right === true ? 0 : right === null ? 1 : 2)
  return classes.map(group => {
    const heights = new Map<number, number>()
    const placed = [...group.birds].sort((a, b) => order(a.right) - order(b.right) || a.value - b.value).map(({value, right}): Placed => {
      const column = Math.min(columns - 1, Math.max(0, Math.floor((value - from) / binWidth + 1e-9)))
      const level = heights.get(column) ?? 0
      heights.set(column, level + 1)
      return {value: Number((from + (column + 0.5) * binWidth).toPrecision(12)), level, right: right === true ? 'right' : right === null ? 'unknown' : 'off'}
    })
    return {group, placed, binWidth}
  })
}
