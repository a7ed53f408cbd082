import type {Bird} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {Shown} from './evidence-shown.ts'
import type {Way} from './ways.ts'

/** What one requirement found in the records. */
export interface Finding {
  readonly state: 'met' | 'not-yet' | 'cannot-tell'
  readonly shown: Shown
  readonly behind: Behind
  /** what would meet it, step by step, the shortest way; empty where it is met */
  readonly ways: readonly Way[]
  readonly aged: Aged
}

/** What was counted, so that every figure can be followed back. */
export interface Behind {
  /** each once, in the order they were counted */
  readonly birds: readonly Bird[]
  /** each once: entries, hatches, pens, scores, papers, drafts */
  readonly records: readonly Spot[]
  /** the latest day of what was counted; null where nothing was, or nothing has a day */
  readonly on: Day | null
}

/** What was there and does not count: `older` than the rule allows, `earlier` than the first day that counts, `later` than the last, or of no day that could tell; entries of birds of a `pure` strain, which are not of the breed. */
export interface Aged {
  readonly older: number
  readonly earlier: number
  readonly later: number
  readonly undated: number
  readonly pure: number
  readonly records: readonly Spot[]
  /** the latest day among the older; null where there are none */
  readonly last: Day | null
}

const NOTHING_BEHIND: Behind = {birds: [], records: [], on: null}
export const NONE_AGED: Aged = {older: 0, earlier: 0, later: 0, undated: 0, pure: 0, records: [], last: null}

type More = Partial<Omit<Finding, 'state' | 'shown'>>

/** The records hold nothing on it. */
export const nothing: Finding = {state: 'cannot-tell', shown: {kind: 'nothing-recorded'}, behind: NOTHING_BEHIND, ways: [], aged: NONE_AGED}

/** Met or not yet by a comparison; cannot be told where that is null, as where the requirement names no figure to reach. A way is only kept where it is not met. */
export const judged = (met: boolean | null, shown: Shown, {behind = NOTHING_BEHIND, ways = [], aged = NONE_AGED}: More = {}): Finding =>
  ({state: met === null ? 'cannot-tell' : met ? 'met' : 'not-yet', shown, behind, ways: met === true ? [] : ways, aged})

/** Does a number reach what is asked? Null when nothing is. */
export const reaches = (have: number, atLeast: number | null): boolean | null => (atLeast === null ? null : have >= atLeast)

/** The same where the records do not tell of `untold` more whether they count: null where these could make the number, and only there. */
export const judgedWith = (have: number, atLeast: number | null, untold: number): boolean | null => (atLeast === null ? null : have >= atLeast ? true : have + untold >= atLeast ? null : false)

/** All of these: false where one is, null where one of the rest is not told. */
export const allOf = (answers: readonly (boolean | null)[]): boolean | null => (answers.includes(false) ? false : answers.includes(null) ? null : true)

/** How many records do not count, whatever the reason. */
export const leftOut = ({older, earlier, later, undated, pure}: Aged): number => older + earlier + later + undated + pure

/** Each once, with the latest day. A bird is also a record of its own only where its spot is given. */
export function behind(birds: Iterable<Bird>, records: Iterable<{readonly at: Spot}>, days: Iterable<Day | null | undefined> = []): Behind {
  const on = [...days].reduce<Day | null>((latest, day) => (day === null || day === undefined ? latest : Math.max(latest ?? day, day)), null)
  const spots = new Map([...records].map(({at}) => [spotKey(at), at]))
  return {birds: [...new Set(birds)], records: [...spots.values()], on}
}

const spotKey = (at: Spot): string => ('path' in at ? `${at.file} ${at.path.join('/')}` : `${at.file}:${at.line}:${at.column}`)
