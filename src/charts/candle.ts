/** An estimate with its interval on a stated scale, as lengths on a strip 160 units wide; the `candle` partial draws it. */
import type {Interval} from '../findings/estimate.ts'

/** Put in a view with `label`, the same in words. */
export interface Candle {
  /** where the egg stands, 0 to 160 */
  readonly egg: number
  /** path of the interval's bar; empty when there is none */
  readonly span: string
  /** where the dotted mark stands, or null */
  readonly mark: number | null
  /** the estimate is off type or over its limit: the egg is plum */
  readonly off: boolean
}

export interface CandleScale {
  /** value at the left end */
  readonly from: number
  /** value at the right end, greater than `from` */
  readonly to: number
}

const WIDTH = 160
const round = (units: number): number => Math.round(units * 10) / 10

/**
 * Where estimate, interval and mark stand on the strip. What lies beyond the scale is drawn at its end; the words beside a candle carry the true figures.
 *
 * @param value  the estimate, in the scale's unit
 * @param interval  its interval, or null
 * @param mark  a mark or limit to draw dotted, or null
 * @throws RangeError when the scale runs nowhere or a number is none
 * @example candle(0.952, {low: 0.867, high: 0.983}, {from: 0, to: 1}, 0.95)  // {egg: 152.3, span: 'M140.7 10H155.3', mark: 152, off: false}
 */
export function candle(value: number, interval: Interval | null, {from, to}: CandleScale, mark: number | null = null, off = false): Candle {
  if (!(to > from)) throw new RangeError(`a scale runs from less to more, not from ${from} to ${to}`)
  if (!Number.isFinite(value)) throw new RangeError(`an estimate is a number, not ${value}`)
  const at = (number: number): number => Math.min(WIDTH, Math.max(0, (WIDTH * (number - from)) / (to - from)))
  return {
    egg: round(at(value)), span: interval === null ? '' : spanPath(at(interval.low), at(interval.high)),
    mark: mark === null ? null : round(at(mark)), off,
  }
}

/** The bar's round ends reach two units past its path, so the path is shortened by as much where there is room. */
function spanPath(low: number, high: number): string {
  const short = Math.min(2, (high - low) / 2)
  return `M${round(low + short)} 10H${round(high - short)}`
}
