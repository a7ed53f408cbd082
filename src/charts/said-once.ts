/**
 * A specification as a file of its own: the scale and axis of a channel that its layers share are said in the first of them alone, and no number with more digits than it means.
 * Vega-Lite puts scales and axes of layers together, so the chart is the same. Source: its documentation, "Layering views", on shared scales and guides.
 */
import type {ChartSpec} from './chart-spec.ts'

/** Twelve digits tell apart whatever the records can: more are the noise of binary fractions. */
const DIGITS = 12

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)

export function saidOnce(spec: ChartSpec): object {
  const plain: unknown = JSON.parse(JSON.stringify(spec, (_, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(DIGITS)) : value)))
  if (!isObject(plain)) throw new Error('a specification is an object')
  return withoutRepeats(plain, new Map())
}

/** @param said  of channel and key what the layers before said; layers within layers share with these */
function withoutRepeats(view: Readonly<Record<string, unknown>>, said: Map<string, string>): object {
  return Object.fromEntries(Object.entries(view).map(([key, value]) => {
    if (key === 'layer' && Array.isArray(value)) return [key, value.map((layer: unknown) => (isObject(layer) ? withoutRepeats(layer, said) : layer))]
    if (key !== 'encoding' || !isObject(value)) return [key, value]
    return [key, Object.fromEntries(Object.entries(value).map(([channel, of]) => [channel, isObject(of) ? channelOnce(channel, of, said) : of]))]
  }))
}

function channelOnce(channel: string, of: Readonly<Record<string, unknown>>, said: Map<string, string>): object {
  return Object.fromEntries(Object.entries(of).filter(([key, value]) => {
    // what is switched off is said by each: left unsaid it would be switched on; so are places of an axis without a form for its numbers, which Vega-Lite would else choose anew
    if ((key !== 'scale' && key !== 'axis') || !isObject(value) || ('values' in value && !('format' in value))) return true
    const before = said.get(`${channel} ${key}`), text = JSON.stringify(value)
    if (before === undefined) said.set(`${channel} ${key}`, text)
    return before !== text
  }))
}
