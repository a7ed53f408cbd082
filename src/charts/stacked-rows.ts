/** Rows of bars made of several kinds of things, each kind with its pattern: the frame of the states, hatch and strain charts. */
import type {ChartSpec, Rows} from './chart-spec.ts'
import {SCHEMA} from './chart-spec.ts'
import type {KeyEntry} from './row-chart.ts'
import {keyHeight, keyLayers, rowFrame, textRoom} from './row-chart.ts'
import type {Pattern} from './theme.ts'

export interface StackedRow {
  readonly label: string
  /** put at the right end */
  readonly words: string
  /** in the key's order; none negative */
  readonly parts: readonly {readonly name: string; readonly amount: number}[]
}

/** `full`: what the whole width stands for, the same for every row; null makes every row's own sum its whole width. */
export function stackedRows(rows: Rows<StackedRow>, key: readonly KeyEntry[], full: number | null): ChartSpec {
  const frame = rowFrame(rows.map(row => row.label), {right: Math.max(40, ...rows.map(({words}) => textRoom(words) + 10)), top: keyHeight(key), bottom: 0})
  const {width, height, padding, y} = frame
  const pieces = rows.flatMap(row => piecesOf(row, full))
  const used = key.filter(({name}) => pieces.some(piece => piece.name === name))
  const x = {type: 'quantitative', scale: {domain: [0, 1], nice: false}, axis: null}
  return {
    $schema: SCHEMA, width, height, padding, data: {name: 'rows', values: pieces},
    layer: [
      ...used.map(({name, pattern}) => ({
        transform: [{filter: {field: 'name', equal: name}}],
        mark: {type: 'bar', style: pattern}, encoding: {y, x: {...x, field: 'from'}, x2: {field: 'to'}},
      })),
      {
        data: {name: 'words', values: rows.map(({label, words}) => ({label, words}))},
        mark: {type: 'text', align: 'right', style: 'soft'}, encoding: {y, x: {value: width + padding.right}, text: {field: 'words'}},
      },
      ...keyLayers(key, frame),
    ],
  } as ChartSpec
}

function piecesOf({label, parts}: StackedRow, full: number | null): readonly {label: string; name: string; from: number; to: number}[] {
  const sum = parts.reduce((total, {amount}) => total + amount, 0)
  const whole = full ?? sum
  if (!(whole > 0)) throw new RangeError(`${label}: there is nothing to draw`)
  let from = 0
  return parts.map(({name, amount}) => {
    if (!(amount >= 0)) throw new RangeError(`${label}: ${name} cannot be ${amount}`)
    const piece = {label, name, from: from / whole, to: (from + amount) / whole}
    from += amount
    return piece
  }).filter(piece => piece.to > piece.from)
}

/** Patterns for kinds that are neither wanted nor off type, in the order they are met. */
export const OTHER_PATTERNS: readonly Pattern[] = ['laced', 'pencilled', 'spangled']
