/** Every bird as a dot above its measure, on a strip 240 units wide: where the standard's band lies, how far they stray, how many they are. The `dot-strip` partial draws it. */

export interface DotStripScale {
  readonly from: number
  /** greater than `from` */
  readonly to: number
}

export interface DotStripBird {
  readonly value: number
  /** it fails something required: a cross in place of a dot */
  readonly off: boolean
}

/** Put in a view with `label`, the same in words. */
export interface DotStrip {
  readonly height: number
  /** what is allowed, `x` and `width`; null where nothing is said */
  readonly zone: {readonly x: number; readonly width: number} | null
  /** where the mark stands, or null */
  readonly mark: number | null
  /** paths, empty where there is none: dots, or columns where they would be too many to count; and crosses */
  readonly dots: string
  readonly crosses: string
}

const WIDTH = 240, COLUMN = 6, LEAST = 14
/** Dots of one column at most; taller ones are drawn as columns, all on one scale. */
const MOST = 10
const round = (units: number): number => Math.round(units * 10) / 10

/** From a little below the least to a little above the most of everything that is to be seen; a scale about one value where all are equal. */
export function dotScale(values: readonly number[]): DotStripScale {
  const seen = values.filter(Number.isFinite)
  if (seen.length === 0) return {from: 0, to: 1}
  const least = Math.min(...seen), most = Math.max(...seen), room = (most - least) * 0.04 || Math.abs(most) * 0.1 || 1
  return {from: least - room, to: most + room}
}

/**
 * Where the birds, the band and the mark stand. Birds beyond the scale stand at its end.
 *
 * @param allowed limits of what is allowed, an open side infinite; null where nothing is said
 * @throws RangeError when the scale runs nowhere or a value is no number
 */
export function dotStrip(birds: readonly DotStripBird[], {from, to}: DotStripScale, allowed: {readonly low: number; readonly high: number} | null, mark: number | null): DotStrip {
  if (!(to > from)) throw new RangeError(`a scale runs from less to more, not from ${from} to ${to}`)
  const at = (value: number): number => {
    if (Number.isNaN(value)) throw new RangeError('a measure is a number')
    return Math.min(WIDTH, Math.max(0, (WIDTH * (value - from)) / (to - from)))
  }
  const columns = new Map<number, {dots: number; crosses: number}>()
  for (const {value, off} of birds) {
    const column = Math.min(WIDTH / COLUMN - 1, Math.floor(at(value) / COLUMN)), own = columns.get(column) ?? {dots: 0, crosses: 0}
    columns.set(column, own)
    if (off) own.crosses += 1
    else own.dots += 1
  }
  const tallest = Math.max(1, ...[...columns.values()].map(({dots, crosses}) => dots + crosses)), bars = tallest > MOST, pitch = bars ? (MOST * COLUMN) / tallest : COLUMN
  const height = Math.max(LEAST, Math.min(tallest, MOST) * COLUMN + 2), dots: string[] = [], crosses: string[] = []
  for (const [column, own] of [...columns].sort(([a], [b]) => a - b)) {
    const x = column * COLUMN + COLUMN / 2, top = (level: number): number => round(height - 1 - level * pitch)
    if (bars) {
      if (own.dots > 0) dots.push(`M${x} ${top(0)}V${top(own.dots)}`)
      if (own.crosses > 0) crosses.push(`M${x} ${top(own.dots)}V${top(own.dots + own.crosses)}`)
      continue
    }
    for (let level = 0; level < own.dots + own.crosses; level += 1) {
      const y = top(level + 0.5)
      // a stroke of no length has square ends on a screen and none on paper
      if (level < own.dots) dots.push(level === 0 ? `M${x} ${y}h.01` : `m-.01-${COLUMN}h.01`)
      else crosses.push(`M${x - 2} ${round(y - 2)}l4 4m0-4l-4 4`)
    }
  }
  const [low, high] = allowed ? [at(allowed.low), at(allowed.high)] : [0, 0]
  return {height, zone: allowed && high > low ? {x: round(low), width: round(high - low)} : null, mark: mark === null ? null : round(at(mark)), dots: dots.join(''), crosses: crosses.join('')}
}
