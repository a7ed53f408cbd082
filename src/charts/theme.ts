/**
 * The look of every chart. Colours are the stylesheet's variables, which pass through the SVG renderer untouched, so that a chart
 * set into a page follows dark mode and print; `literalColours` puts plain ones in their place for use elsewhere.
 * Kinds of things are told apart by plumage patterns, never by colour alone.
 */
import type {Config} from 'vega-lite'

/** Units across of every chart. */
export const CHART_WIDTH = 320
/** Units down of one row: a step, a hatch, a season. */
export const ROW_HEIGHT = 34

/** Patterns a bar may carry, from wanted to not known. The sprite of every page defines those that are not plain. */
export type Pattern = 'self' | 'laced' | 'pencilled' | 'spangled' | 'barred' | 'speckled'

/** The egg of `egg.ts` as Vega takes shapes: divided by 6.82, half the square root of the `size` below. */
const VEGA_EGG = 'M0,-1.1C.53,-1.1,.82,0,.82,.32A.82,.78,0,0,1,-.82,.32C-.82,0,-.53,-1.1,0,-1.1Z'

const outlined = (stroke: string) => ({stroke: `var(--${stroke})`, strokeWidth: 1})

export const theme: Config = {
  background: 'transparent', padding: 0, view: {stroke: null}, font: 'Brygada 1918, Georgia, serif',
  autosize: {type: 'none'}, legend: {disable: true}, aria: false,
  axis: {
    domain: false, ticks: false, grid: true, gridColor: 'var(--rule)', labelColor: 'var(--soft)', labelFontSize: 16, labelPadding: 8,
    titleColor: 'var(--soft)', titleFontSize: 16, titleFontWeight: 'normal', labelOverlap: false, labelBound: false, labelFlush: false,
  },
  // the outermost labels stay inside the drawing, where no paper cuts them off
  axisX: {title: null, labelFlush: true},
  axisY: {grid: false, labelColor: 'var(--ink)', labelAlign: 'left', title: null, labelLimit: 0},
  text: {color: 'var(--ink)', fontSize: 16, baseline: 'middle', limit: 0},
  rule: {color: 'var(--line)', strokeWidth: 1.5},
  bar: {color: 'var(--beetle)', height: 14},
  rect: {color: 'var(--beetle)'},
  point: {filled: true, opacity: 1, color: 'var(--beetle)', size: 187, shape: VEGA_EGG},
  style: {
    self: {color: 'var(--beetle)'},
    laced: {color: 'var(--paper)', ...outlined('ink')},
    pencilled: {color: 'url(#pencilled)', ...outlined('ink')},
    spangled: {color: 'url(#spangled)', ...outlined('ink')},
    barred: {color: 'url(#barred)', ...outlined('plum')},
    speckled: {color: 'url(#speckled)', ...outlined('soft')},
    soft: {color: 'var(--soft)'},
    standard: {color: 'var(--ink)', strokeDash: [1, 3], strokeCap: 'round'},
    expected: {color: 'var(--ink)', opacity: 1},
    zone: {color: 'var(--shell)'},
    open: {color: 'var(--paper)', stroke: 'var(--plum)', strokeWidth: 1.25},
    unscored: {color: 'url(#speckled)', ...outlined('soft')},
    ring: {shape: 'circle', size: 110, color: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 1.5},
    male: {shape: 'square', size: 60},
    female: {shape: 'circle', size: 54},
    unsexed: {shape: 'diamond', size: 54},
  },
}

/** How each kind of mark looks; one that a specification has none of needs none of it. */
const MARKS: ReadonlySet<string> = new Set(['text', 'rule', 'bar', 'rect', 'point'])

/** The theme with the marks and styles that a specification names, for one that leaves the site. */
export function themeOf(spec: object): Config {
  const text = JSON.stringify(spec), named = ([name]: readonly [string, unknown]): boolean => text.includes(`"${name}"`)
  const kept = Object.entries(theme).filter(entry => !MARKS.has(entry[0]) || named(entry))
  return {...Object.fromEntries(kept), style: Object.fromEntries(Object.entries(theme.style ?? {}).filter(named))}
}

/** Light-mode values of the stylesheet's variables, and plain stand-ins for its patterns. */
const LITERAL: Readonly<Record<string, string>> = {
  'var(--paper)': '#f5f8f4', 'var(--shell)': '#e8ede6', 'var(--ink)': '#14201c', 'var(--soft)': '#495750', 'var(--line)': '#75837b', 'var(--rule)': '#bfc9c1',
  'var(--beetle)': '#0b5c4a', 'var(--plum)': '#7c2a5a', 'var(--horn)': '#6d520d',
  'url(#barred)': '#d9bfcd', 'url(#speckled)': '#cdd3cf', 'url(#pencilled)': '#8d9691', 'url(#spangled)': '#b9c0bb',
}

/** The same text with colours that stand on their own, for a specification or drawing that leaves the site. */
export function literalColours(text: string): string {
  return text.replace(/var\(--\w+\)|url\(#\w+\)/g, name => LITERAL[name] ?? name)
}
