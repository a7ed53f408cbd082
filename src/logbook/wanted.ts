/** What the breed is to show of a trait, read by the trait's kind: `pea`, `at least 7`, `40 to 45`, `2.4 kg`, or one for each sex. */
import type {Note, Slip} from '../records/problem.ts'
import {inUnit, isUnit, parseNumber, parseQuantity} from '../records/quantities.ts'
import type {Ref} from '../records/scalars.ts'
import type {TraitRecord} from '../records/schema/trait.ts'
import type {Trait, Wanted} from './book.ts'
import {unknownState} from './inspect/unknown-state.ts'

/** The parts of a trait that reading its target needs. */
type Scored = Pick<Trait, 'kind' | 'states' | 'unit' | 'scale'>

export function wantedOf(target: TraitRecord['target'], tolerance: number | undefined, trait: Trait, note: Note): Trait['wanted'] {
  if (target === undefined) return {male: null, female: null}
  const read = (refs: readonly Ref[]) => readWanted(refs, tolerance ?? null, trait, note)
  if ('text' in target) {
    const both = read([target])
    return {male: both, female: both}
  }
  if (!isBySex(target)) {
    const both = read(target)
    return {male: both, female: both}
  }
  const bySex: {male: Wanted | null; female: Wanted | null} = {male: null, female: null}
  for (const {key, value, keyAt} of target) {
    if (key === 'male' || key === 'female') bySex[key] = read([value])
    else note(unreadable({text: key, at: keyAt}, 'male or female', 'write male: and female:, each with what is wanted'))
  }
  return bySex
}

type BySex = Extract<Exclude<TraitRecord['target'], undefined>, readonly {readonly key: string}[]>

function isBySex(target: readonly unknown[]): target is BySex {
  const [first] = target
  return typeof first === 'object' && first !== null && 'key' in first
}

function readWanted(refs: readonly Ref[], tolerance: number | null, trait: Trait, note: Note): Wanted | null {
  if (trait.kind === 'states' || trait.kind === 'ordered') {
    const states = refs.flatMap(ref => statesOf(ref, trait, note))
    return states.length === 0 ? null : {kind: 'states', states: trait.states.filter(state => states.includes(state))}
  }
  const [ref] = refs
  if (ref === undefined) return null
  const wanted = amountWanted(ref.text, tolerance, trait)
  if (wanted === null) note(unreadable(ref, trait.kind === 'graded' ? 'marks' : `amounts in ${trait.unit ?? 'the unit'}`, example(trait)))
  return wanted
}

/** One state; for ordered ones also `at least tinted` and `at most tinted`. */
function statesOf(ref: Ref, trait: Trait, note: Note): readonly string[] {
  if (trait.states.includes(ref.text)) return [ref.text]
  const match = trait.kind === 'ordered' ? /^at (least|most)\s+(.+)$/.exec(ref.text) : null
  const from = match ? trait.states.indexOf(match[2] ?? '') : -1
  if (match && from !== -1) return match[1] === 'least' ? trait.states.slice(from) : trait.states.slice(0, from + 1)
  note(unknownState(trait, match?.[2] ?? ref.text, ref.at))
  return []
}

/** A target in marks or amounts; null when it cannot be read. */
export function amountWanted(text: string, tolerance: number | null, trait: Scored): Wanted | null {
  const bound = /^at\s+(least|most)\s+(.+)$/.exec(text)
  if (bound) {
    const value = amountIn(bound[2] ?? '', trait)
    return value === null ? null : {kind: bound[1] === 'least' ? 'at-least' : 'at-most', value}
  }
  const range = /^(.+?)\s+to\s+(.+)$/.exec(text) ?? /^([^–]+)–([^–]+)$/.exec(text)
  if (range) {
    // a unit said once is that of both: `2.3 to 2.7 kg` of a trait in grams
    const [, from = '', to = ''] = range, unit = /[\d\s]([^\d\s.,]+)\s*$/.exec(to)?.[1]
    const low = amountIn(unit !== undefined && /\d\s*$/.test(from) ? `${from.trim()} ${unit}` : from, trait), high = amountIn(to, trait)
    return low === null || high === null || low > high ? null : {kind: 'between', low, high}
  }
  const value = amountIn(text, trait)
  return value === null ? null : {kind: 'about', value, tolerance}
}

/** `7` or `7 of 10` on a scale, `2.4 kg` in the trait's unit; a bare number is in that unit already. */
export function amountIn(text: string, {unit, scale, kind}: Pick<Trait, 'unit' | 'scale' | 'kind'>): number | null {
  if (kind === 'graded') {
    const match = /^(\S+)(?:\s+of\s+(\d+))?$/.exec(text.trim())
    const mark = match ? parseNumber(match[1] ?? '') : null
    if (mark === null || !scale || mark < scale.from || mark > scale.to) return null
    return match?.[2] === undefined || Number(match[2]) === scale.to ? mark : null
  }
  const quantity = parseQuantity(text)
  if (quantity === null || 'unknownUnit' in quantity || unit === null || !isUnit(unit)) return null
  return inUnit(quantity, unit)
}

const example = (trait: Trait) =>
  trait.kind === 'graded' ? 'write a mark, “at least 7” or “6 to 8”' : `write an amount such as 40 ${trait.unit ?? ''}, “at least 40” or “40 to 45”`

const unreadable = (ref: Ref, what: string, remedy: string): Slip =>
  ({code: 'unreadable-value', severity: 'error', at: ref.at, reason: `“${ref.text}” cannot be read as ${what}`, remedy})
