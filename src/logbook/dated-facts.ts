/** Every day that the records speak of as past: what the latest date is taken from, and what may not lie after the project's as-of. */
import type {Day, PartialDate} from '../records/dates.ts'
import {inside, type Spot} from '../records/problem.ts'
import type {Records} from '../records/records.ts'

export interface DatedFact {
  /** the first day it may mean */
  readonly day: Day
  readonly text: string
  readonly at: Spot
}

/** Ends that may be planned, days that something holds until, and what is the project's own clock. */
const NOT_PAST: readonly string[] = ['to', 'until', 'eggs-withheld-until', 'meat-withheld-until', 'as-of', 'consent', 'private', 'at']

const FILES = ['project', 'keeper', 'bird', 'pen', 'hatch', 'show', 'draft', 'requirements', 'care', 'diary'] as const
const TABLES = ['weighings', 'eggCounts', 'feedings', 'scorings'] as const

export function datedFacts(records: Records): readonly DatedFact[] {
  const facts: DatedFact[] = []
  for (const kind of FILES) for (const {data, at} of records[kind]) walk(data, at, facts)
  for (const {data, at} of records.hatch) {
    if (data.laid) facts.push({day: data.laid.to, text: 'laid', at: inside(at, 'laid')})
  }
  for (const table of TABLES) {
    for (const {on, at} of records[table]) if (on) facts.push({day: on.first, text: on.text, at})
  }
  return facts
}

/** Front matter is plain data: whatever has a first and a last day in it is a date. */
function walk(value: unknown, at: Spot, facts: DatedFact[]): void {
  if (typeof value !== 'object' || value === null) return
  if (isDate(value)) {
    facts.push({day: value.first, text: value.text, at})
    return
  }
  if (Array.isArray(value)) value.forEach((entry, index) => walk(entry, inside(at, index), facts))
  else for (const [key, inner] of Object.entries(value)) if (typeof inner === 'object' && !NOT_PAST.includes(key)) walk(inner, inside(at, key), facts)
}

const isDate = (value: object): value is PartialDate => 'first' in value && 'last' in value && 'text' in value

/** The latest day that the records speak of; a date that is not known to the day counts by its first. */
export function latestDay(facts: readonly DatedFact[]): Day | null {
  return facts.reduce<Day | null>((latest, {day}) => (latest === null || day > latest ? day : latest), null)
}
