/**
 * A Vega-Lite specification as an inline SVG: measured without a canvas and rounded, so that every machine draws the same bytes;
 * with title and description for those who cannot see it. A specification seen before with other data is not parsed again.
 */
import type {Config, TopLevelSpec} from 'vega-lite'
import {compile} from 'vega-lite'
import * as vega from 'vega'
import {tidySvg} from './tidy-svg.ts'
import {theme} from './theme.ts'

export interface ChartWords {
  /** unique on its page; letters, digits, hyphens: the ids of title and description are made from it */
  readonly id: string
  readonly title: string
  readonly description: string
}

interface Prepared {
  readonly runtime: vega.Runtime
}

type NamedData = {readonly name: string; readonly values: object[]}

// the estimate of text widths, even where a canvas happens to be installed; vega's types do not know it
const {textMetrics} = vega as unknown as {textMetrics: {canvas: (use: boolean) => void}}
textMetrics.canvas(false)

/** Warnings are slips in our own specifications. */
const strictLogger: vega.LoggerInterface = {
  level: (() => 0) as unknown as vega.LoggerInterface['level'],
  error: (...words: readonly unknown[]) => fail(words), warn: (...words: readonly unknown[]) => fail(words),
  info: () => strictLogger, debug: () => strictLogger,
}

function fail(words: readonly unknown[]): never {
  throw new Error(`chart: ${words.map(String).join(' ')}`)
}

const prepared = new Map<string, Prepared>()

/** Draws a chart; the caller has made sure that there is something to draw. */
export async function renderChart(spec: TopLevelSpec, words: ChartWords): Promise<string> {
  const data = namedData(spec)
  const key = JSON.stringify(spec, (_, value: unknown) => (isNamed(value) ? {name: value.name} : value))
  let known = prepared.get(key)
  if (!known) {
    const {spec: compiled} = compile(spec, {config: theme as Config, logger: strictLogger})
    known = {runtime: vega.parse(compiled)}
    prepared.set(key, known)
  }
  const view = new vega.View(known.runtime, {renderer: 'none', logger: strictLogger})
  try {
    for (const {name, values} of data) view.data(name, values.map(value => ({...value})))
    return tidySvg(await view.toSVG(), words)
  } finally {
    view.finalize()
  }
}

const isNamed = (value: unknown): value is NamedData =>
  value !== null && typeof value === 'object' && 'name' in value && typeof value.name === 'string' && 'values' in value && Array.isArray(value.values)

/** Data with a name, at the top or in a layer. */
function namedData(spec: object): readonly NamedData[] {
  const found: NamedData[] = []
  const own = (spec as {data?: unknown}).data
  if (isNamed(own)) found.push(own)
  const layers = (spec as {layer?: readonly object[]}).layer ?? []
  return [...found, ...layers.flatMap(namedData)]
}
