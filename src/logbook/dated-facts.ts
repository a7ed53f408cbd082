/** Every day that the records speak of as past: what the latest date is taken from, and what may not lie after the project's as-of. */
import {isoDay, type Day, type PartialDate} from '../records/dates.ts'
import {inside, type Spot} from '../records/problem.ts'
import type {Records} from '../records/records.ts'

export interface DatedFact {
  /** the first day it may mean */
  readonly day: Day
  readonly text: string
  readonly at: Spot
}

/** Ends that may be planned, days that something holds until or has to be reached by, and what is the project's own clock. */
const NOT_PAST: ReadonlySet<string> = new Set(['to', 'until', 'by', 'eggs-withheld-until', 'meat-withheld-until', 'as-of', 'consent', 'consent-committee', 'private', 'at', 'keyAt', 'band', 'others'])

const FILES = ['project', 'keeper', 'bird', 'pen', 'hatch', 'show', 'draft', 'requirements', 'care', 'diary'] as const
const TABLES = ['weighings', 'eggCounts', 'feedings', 'scorings'] as const

/** Takes the first day a date may mean, its text, and where it stands: a file and the way down it, or a row of a table. */
type See = (day: Day, text: string, file: Spot, way: readonly (string | number)[]) => void

/** The latest day that the records speak of; a date that is not known to the day counts by its first. Null when they speak of none. */
export function latestDay(records: Records): Day | null {
  let latest: Day | null = null
  everyDate(records, day => {
    if (latest === null || day > latest) latest = day
  })
  return latest
}

/** What the records date after a day; without one, all that they date. */
export function datedFacts(records: Records, after: Day = -Infinity): readonly DatedFact[] {
  const facts: DatedFact[] = []
  everyDate(records, (day, text, at, way) => {
    if (day > after) facts.push({day, text, at: inside(at, ...way)})
  })
  return facts
}

function everyDate(records: Records, see: See): void {
  for (const kind of FILES) for (const {data, at} of records[kind]) walk(data, at, [], see)
  for (const {data, at} of records.hatch) if (data.laid) see(data.laid.to, isoDay(data.laid.to), at, ['laid'])
  for (const table of TABLES) for (const {on, at} of records[table]) if (on) see(on.first, on.text, at, [])
}

/** Front matter is plain data: whatever has a first and a last day in it is a date; but a requirement’s `from` tells of no fact. `way` grows and shrinks on the way down. */
function walk(value: object, at: Spot, way: (string | number)[], see: See): void {
  if (isDate(value)) {
    see(value.first, value.text, at, way)
    return
  }
  for (const key in value) {
    const inner: unknown = value[key as keyof typeof value]
    if (typeof inner !== 'object' || inner === null || (NOT_PAST.has(key) && !isBandEnd(inner)) || (key === 'from' && way[0] === 'requirements')) continue
    way.push(Array.isArray(value) ? Number(key) : key)
    walk(inner, at, way, see)
    way.pop()
  }
}

/** Nobody plans when a band comes off or is lost. */
const isBandEnd = (value: object): boolean => 'lost' in value

const isDate = (value: object): value is PartialDate => 'first' in value && 'last' in value && 'text' in value
