/** The frame of charts with a row a step: labels at the left edge, the measure in the middle, counts at the right. */
import type {Pattern} from './theme.ts'
import {CHART_WIDTH, ROW_HEIGHT} from './theme.ts'

export interface RowFrame {
  /** units of the measure's own field */
  readonly width: number
  readonly height: number
  readonly padding: {readonly left: number; readonly right: number; readonly top: number; readonly bottom: number}
  /** the y channel of every layer */
  readonly y: object
}

/**
 * Units that a text of 16 may take, a little generous: measured here, never by a canvas, so that charts are the same on every machine.
 * The face's widths run from .25 (i, l) to .85 (m, w) of its size.
 */
export function textRoom(text: string): number {
  let room = 0
  for (const letter of text) {
    if (/[il.,:;'|!]/.test(letter)) room += 4.6
    else if (/[fjrt\-()[\]/ ]/.test(letter)) room += 6.2
    else if (/[mwMW%—]/.test(letter)) room += 13.4
    else if (/[A-Z]/.test(letter)) room += 10.8
    else if (/\d/.test(letter)) room += 9.4
    else room += 8.4
  }
  return Math.ceil(room)
}

/** A text shortened to fit, with a sign that something is missing; the chart's table carries it whole. */
export function fitText(text: string, room: number): string {
  if (textRoom(text) <= room) return text
  let kept = [...text]
  while (kept.length > 1 && textRoom(`${kept.join('')}…`) > room) kept = kept.slice(0, -1)
  return `${kept.join('').trimEnd()}…`
}

const MOST_LABEL = 156

/** Where labels, rows and counts go. Two labels must differ, each is a row. */
export function rowFrame(labels: readonly string[], {right, top, bottom}: {right: number; top: number; bottom: number}): RowFrame {
  const rows = [...new Set(labels)]
  const left = Math.max(62, Math.min(MOST_LABEL, Math.max(...rows.map(label => textRoom(label)))) + 12)
  const short = Object.fromEntries(rows.filter(label => textRoom(label) > left - 12).map(label => [label, fitText(label, left - 12)]))
  const labelExpr = Object.keys(short).length === 0 ? {} : {labelExpr: `${JSON.stringify(short)}[datum.value] || datum.value`}
  return {
    width: CHART_WIDTH - left - right, height: rows.length * ROW_HEIGHT, padding: {left, right, top, bottom},
    y: {field: 'label', type: 'nominal', scale: {domain: rows, padding: 0}, axis: {labelPadding: left, ...labelExpr}},
  }
}

/** A key: patterns and their names, above the rows, in a column or two. */
export interface KeyEntry {
  readonly name: string
  readonly pattern: Pattern
}

const KEY_LINE = 24

const inTwoColumns = (key: readonly KeyEntry[]): boolean => key.every(({name}) => textRoom(name) <= 118)

/** Units that the key takes above the rows. */
export function keyHeight(key: readonly KeyEntry[]): number {
  return Math.ceil(key.length / (inTwoColumns(key) ? 2 : 1)) * KEY_LINE + 8
}

/** The key's layers, drawn in the room that `keyHeight` asked for. */
export function keyLayers(key: readonly KeyEntry[], {padding}: RowFrame): readonly object[] {
  const columns = inTwoColumns(key) ? 2 : 1
  return key.flatMap(({name, pattern}, index) => {
    const x = (index % columns) * (CHART_WIDTH / 2) - padding.left
    const y = Math.floor(index / columns) * KEY_LINE - padding.top + 8
    return [
      {data: {values: [{}]}, mark: {type: 'rect', style: pattern}, encoding: {x: {value: x + 0.5}, x2: {value: x + 26}, y: {value: y - 6}, y2: {value: y + 6}}},
      {data: {values: [{}]}, mark: {type: 'text', align: 'left'}, encoding: {text: {value: fitText(name, CHART_WIDTH / columns - 36)}, x: {value: x + 34}, y: {value: y}}},
    ]
  })
}
