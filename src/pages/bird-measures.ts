/** A bird against the standard: each measured trait on a strip with what the standard allows shaded, and every weighing with its day. */
import {countedValue} from '../findings/counted-value.ts'
import {looksRight, wantedOf} from '../findings/wanted-look.ts'
import type {Bird, Project, Trait, Wanted} from '../logbook/book.ts'
import {isWhole} from '../records/dates.ts'
import {amount, amountPlain, shownIn, wantedWords} from './amounts.ts'
import {ageWords, dateShort} from './dates.ts'
import {traitPath} from './links.ts'
import {NOTHING} from './numbers.ts'
import type {Cell, Table} from './page.ts'

/** A strip: what is allowed shaded, the mark dotted, the bird an egg. */
export interface Strip {
  /** what of the strip is shaded, and whether there is a mark: `frame` and the stylesheet's `.strip` agree on it */
  readonly allowed: 'about' | 'between' | 'at-least' | 'at-most'
  /** where the egg stands, in percent from the strip's low end */
  readonly at: number
  readonly inside: boolean
  readonly label: string
}

export interface MeasureRow {
  readonly trait: {readonly text: string; readonly link: string}
  readonly value: string
  readonly wanted: string
  readonly strip: Strip | null
  /** in the strip's place when there is none */
  readonly words: string
}

/** Nearer an end an egg would be cut off. */
const EDGE = 5
const within = (percent: number): number => Math.round(Math.min(100 - EDGE, Math.max(EDGE, percent)) * 10) / 10

interface Scale {
  readonly allowed: Strip['allowed']
  /** the least that is allowed */
  readonly low: number
  readonly from: number
  readonly to: number
}

/** The scale's ends in the trait's unit. What is allowed takes the middle 1/2.1 of it, the middle third, or the upper or lower half; a mark stands in its middle. */
function frame(wanted: Wanted): Scale | null {
  if (wanted.kind === 'about' && wanted.tolerance !== null && wanted.tolerance > 0) {
    const half = wanted.value * wanted.tolerance
    return {allowed: 'about', low: wanted.value - half, from: wanted.value - 2.1 * half, to: wanted.value + 2.1 * half}
  }
  if (wanted.kind === 'between' && wanted.high > wanted.low) {
    const width = wanted.high - wanted.low
    return {allowed: 'between', low: wanted.low, from: wanted.low - width, to: wanted.high + width}
  }
  if ((wanted.kind !== 'at-least' && wanted.kind !== 'at-most') || !(wanted.value > 0)) return null
  const from = wanted.value * 0.75, to = wanted.value * 1.25
  return {allowed: wanted.kind, low: wanted.kind === 'at-least' ? wanted.value : from, from, to}
}

function strip(value: number, wanted: Wanted, right: boolean): Strip | null {
  const scale = frame(wanted)
  if (!scale) return null
  const side = value < scale.low ? 'Under' : 'Over'
  return {
    allowed: scale.allowed, at: within((100 * (value - scale.from)) / (scale.to - scale.from)), inside: right,
    label: `${right ? 'Inside' : side} what is allowed`,
  }
}

/** Every measured trait that this bird was measured for at its age. */
export function measureRows(bird: Bird, traits: readonly Trait[], units: Project['units']): readonly MeasureRow[] {
  return traits.flatMap(trait => {
    const value = trait.kind === 'measured' ? countedValue(bird, trait) : null
    if (typeof value !== 'number') return []
    const shown = shownIn(trait, units)
    const wanted = wantedOf(trait, bird.sex), right = looksRight(trait, bird.sex, value)
    const drawn = wanted === null || right === null ? null : strip(value, wanted, right)
    return [{
      trait: {text: trait.name, link: traitPath(trait)}, value: amount(value, shown), wanted: wanted === null ? NOTHING : wantedWords(wanted, shown), strip: drawn,
      words: drawn ? '' : bird.sex === 'unknown' ? 'sex unknown, so not compared' : wanted === null ? 'nothing asked' : 'no tolerance stated',
    }]
  })
}

/** Every weighing, whether a trait counts it or not. */
export function weighingsTable(bird: Bird, traits: readonly Trait[], units: Project['units']): Table | null {
  if (bird.weighings.length === 0) return null
  const hatched = bird.hatched
  const rows = bird.weighings.map((weighing): readonly Cell[] => {
    const trait = traits.find(each => each.measure === weighing.measure)
    const age = hatched && isWhole(hatched) && isWhole(weighing.on) ? ageWords(weighing.on.first - hatched.first) : 'not known'
    const counts = traits.filter(each => each.measure === weighing.measure && bird.looks.get(each)?.counted?.on === weighing.on)
    const value = trait ? amount(weighing.value, shownIn(trait, units)) : amountPlain(weighing.value, {unit: '', factor: 1, decimals: 0})
    return [dateShort(weighing.on), age, counts.length === 0 ? `${weighing.measure}, not counted` : counts.map(each => each.name).join(', '), value]
  })
  return {columns: [{head: 'Day'}, {head: 'Age'}, {head: 'Measure'}, {head: 'Found', number: true}], rows}
}
