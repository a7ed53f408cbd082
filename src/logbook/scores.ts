/** One scoring of one trait: what was written, read by the trait's kind, and whether it can count. */
import type {Note, Slip, Spot} from '../records/problem.ts'
import {inUnit, isUnit, parseQuantity} from '../records/quantities.ts'
import {isWhole, type Day, type PartialDate} from '../records/dates.ts'
import type {Chicks, Keeper, Look, Score, Trait} from './book.ts'
import {unknownState} from './inspect/unknown-state.ts'
import {amountIn} from './wanted.ts'

export interface Written {
  readonly trait: Trait
  readonly text: string
  readonly on: PartialDate | null
  readonly by: Keeper | null
  readonly struck: string | null
  /** the draft that is named */
  readonly draft?: number | undefined
  readonly at: Spot
}

/** Who is scored: what decides whether a score can count. */
export interface Scored extends Pick<Chicks, 'hatched' | 'sex'> {
  readonly firstEgg?: PartialDate | null
}

/** The score that is written; null, and a slip, when it is none of the trait's. */
export function readScore({trait, text, on, by, struck, draft, at}: Written, bird: Scored, note: Note): Score | null {
  const value = valueOf(trait, text, at, note)
  return value === null ? null : {trait, value, on, by, struck, outside: isOutside(trait, on, bird), ...(draft === undefined ? {} : {draft}), at}
}

function valueOf(trait: Trait, text: string, at: Spot, note: Note): string | number | null {
  if (trait.kind === 'states' || trait.kind === 'ordered') {
    if (trait.states.includes(text)) return text
    note(unknownState(trait, text, at))
    return null
  }
  const amount = amountIn(text, trait)
  if (amount === null) note(isOtherUnit(trait, text) ? otherUnit(trait, text, at) : unknownState(trait, text, at))
  return amount
}

/** Is it an amount, only not of the trait's kind of unit? */
function isOtherUnit(trait: Trait, text: string): boolean {
  if (trait.kind !== 'measured' || trait.unit === null || !isUnit(trait.unit)) return false
  const quantity = parseQuantity(text)
  return quantity !== null && !('unknownUnit' in quantity) && inUnit(quantity, trait.unit) === null
}

export const otherUnit = (trait: Trait, text: string, at: Spot): Slip => ({
  code: 'wrong-unit', severity: 'error', at, reason: `“${text}” is no amount in ${trait.unit ?? ''}, the unit of ${trait.id}`,
  remedy: `write it in ${trait.unit ?? 'the trait’s unit'} or a unit of the same kind`,
})

/** Certainly before the trait can be scored, off the days of measuring, of the other sex, or before the first egg. An undated score is none of these. */
export function isOutside(trait: Trait, on: PartialDate | null, bird: Scored): boolean {
  if (trait.seenIn !== null && bird.sex !== 'unknown' && bird.sex !== trait.seenIn) return true
  if (on === null) return false
  if (trait.fromFirstEgg && bird.firstEgg && on.last < bird.firstEgg.first) return true
  if (bird.hatched !== null && on.last < bird.hatched.first + trait.scoredFrom) return true
  if (trait.atAge === null) return false
  const off = daysOff(trait.atAge, on, bird.hatched)
  return off === null || off > (trait.window ?? 0)
}

/** How many days from the age of measuring a day is; null when either is not known to the day. */
export function daysOff(atAge: number, on: PartialDate, hatched: PartialDate | null): number | null {
  return hatched === null || !isWhole(hatched) || !isWhole(on) ? null : Math.abs(on.first - hatched.first - atAge)
}

/** The first day on which an undated score can have been seen: at hatch, or from when on the trait can be scored. Null: nobody knows. */
export function seenFrom(trait: Trait, hatched: Day | null, firstEgg: PartialDate | null | undefined): Day | null {
  const grown = hatched === null ? null : hatched + (trait.scoredFrom > 0 ? trait.scoredFrom : trait.atAge ?? 0)
  const laid = trait.fromFirstEgg && firstEgg ? firstEgg.first : null
  return laid === null ? grown : Math.max(grown ?? laid, laid)
}

/** All scores of a trait in turn, with the one that counts of those neither struck nor outside. */
export function lookOf(trait: Trait, scores: readonly Score[], bird: Scored): Look {
  const inTurn = scores.length < 2 ? scores : scores.map((score, index) => ({score, index})).sort((a, b) => compareDates(a.score.on, b.score.on) || a.index - b.index).map(({score}) => score)
  return {counted: countingOf(trait, inTurn.filter(score => score.struck === null && !score.outside), bird.hatched), scores: inTurn}
}

/** Of values that may count, oldest first, the one that does: for a trait measured at an age the nearest to it (of two as near the earlier), for any other the latest. */
export function countingOf<Value extends {readonly on: PartialDate | null}>(trait: Trait, inTurn: readonly Value[], hatched: PartialDate | null): Value | null {
  let counting: Value | null = null
  for (const value of inTurn) if (counting === null || !isNearer(trait, counting.on, value.on, hatched)) counting = value
  return counting
}

/** Does the earlier of two stay nearer to the age of measuring? */
function isNearer({atAge}: Trait, earlier: PartialDate | null, later: PartialDate | null, hatched: PartialDate | null): boolean {
  if (atAge === null || earlier === null || later === null) return false
  return (daysOff(atAge, earlier, hatched) ?? Infinity) <= (daysOff(atAge, later, hatched) ?? Infinity)
}

/** Undated ones first, then by day. */
export function compareDates(a: PartialDate | null, b: PartialDate | null): number {
  if (a === null || b === null) return Number(a !== null) - Number(b !== null)
  return a.first - b.first || a.last - b.last
}
