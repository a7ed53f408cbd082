/** Columns of a scoring day that are headings of the scale of points: each row's own sheet of points, under its draft. */
import {near} from '../records/near.ts'
import type {Note} from '../records/problem.ts'
import type {ScoreRow} from '../records/records.ts'
import type {Bird, Draft, Keeper, KeepersSheet} from './book.ts'
import {draftInForce} from './draft-in-force.ts'
import {draftAfterScoring} from './inspect/draft-after-scoring.ts'
import {headingNotInScale} from './inspect/heading-not-in-scale.ts'
import {tooManyPoints} from './inspect/too-many-points.ts'
import {unknownDraft} from './inspect/unknown-draft.ts'

type Look = ScoreRow['looks'][number]

/** `Type and carriage`, in any case, with hyphens for spaces. */
const plain = (heading: string): string => heading.trim().toLowerCase().replace(/[\s-]+/g, ' ')

/** `26`, `26,5` or `26 of 30`; null where it is none of them. */
export function pointsIn(text: string): {readonly points: number; readonly of: number | null} | null {
  const match = /^(\d+(?:[.,]\d+)?)(?:\s+of\s+(\d+))?$/.exec(text.trim())
  return match && {points: Number((match[1] ?? '').replace(',', '.')), of: match[2] === undefined ? null : Number(match[2])}
}

export interface PointsReader {
  /** does any draft's scale have this heading? */
  isHeading(key: string): boolean
  /** every heading of every scale */
  readonly headings: readonly string[]
  /** The draft a row was scored under, with what is wrong with the one it names. */
  draftOf(row: ScoreRow): Draft | null
  /** The sheet of the points in a row; null where it has none that can be read. */
  sheetOf(row: ScoreRow, points: readonly Look[], draft: Draft | null, bird: Bird, by: Keeper | null): KeepersSheet | null
}

/** @param inDoubt  it is not known which drafts there are, so none is missed, and no heading of a scale */
export function pointsReader(drafts: readonly Draft[], note: Note, inDoubt: boolean): PointsReader {
  const headings = [...new Set(drafts.flatMap(({points}) => points.map(({name}) => name)))], known = new Set(headings.map(plain))
  // a column at fault is told of once
  const strange = new Set<string>()
  return {
    headings,
    isHeading: key => known.has(plain(key)),
    draftOf({draft, on}) {
      const found = draftInForce(drafts, draft?.number, on?.first ?? null)
      if (draft && !found && !inDoubt) note(unknownDraft(draft.number, draft.at, drafts.map(({number}) => number)))
      if (draft && found && on && on.last < found.on.first) note(draftAfterScoring(found, on, draft.at))
      return found
    },
    sheetOf(row, points, draft, bird, by) {
      if (row.draft && !draft) return null
      const read = points.flatMap(({key, value, at, keyAt}): KeepersSheet['headings'] => {
        const heading = draft?.points.find(({name}) => plain(name) === plain(key))
        if (!heading) {
          const slip = `${keyAt.file}\n${key}\n${draft?.number ?? ''}`
          if (!inDoubt && !strange.has(slip)) note(headingNotInScale(key, draft, keyAt, draft ? near(key, draft.points.map(({name}) => name)) : [], drafts.filter(({points: scale}) => scale.some(({name}) => plain(name) === plain(key))).map(({number}) => number)))
          strange.add(slip)
          return []
        }
        const given = pointsIn(value)
        if (!given) note({code: 'unreadable-value', severity: 'error', at, reason: `“${value}” cannot be read as points`, remedy: `write points such as ${heading.points} or ${heading.points} of ${heading.points}`})
        else if (given.points > heading.points || (given.of !== null && given.of !== heading.points)) note(tooManyPoints(value, heading, draft?.number ?? 0, at))
        return given ? [{name: heading.name, points: given.points, of: heading.points}] : []
      })
      return read.length === 0 ? null : {bird, by, draft: draft?.number ?? null, on: row.on, struck: row.struck, headings: read, at: row.at}
    },
  }
}
