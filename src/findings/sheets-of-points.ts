import type {Bird, Logbook, Show, ShowScore} from '../logbook/book.ts'
import {draftInForce} from '../logbook/draft-in-force.ts'
import type {PartialDate} from '../records/dates.ts'
import {scoreSheet} from './score-sheet.ts'

/** One sheet of points of a bird, wherever it was filled in. */
export interface PointsSheet {
  readonly score: ShowScore
  readonly bird: Bird
  /** null: of a scoring day at home */
  readonly show: Show | null
  readonly on: PartialDate | null
  /** the number of the draft it names, else of the one in force on its day */
  readonly draft: number | null
  /** with what each heading may have, by the sheet or its draft */
  readonly headings: readonly {readonly name: string; readonly points: number; readonly of: number | null}[]
  /** headings of the draft's scale that are not on the sheet */
  readonly missing: readonly string[]
  /** share of all points of the draft's scale; null where a heading of it is not on the sheet, or full points are not known */
  readonly share: number | null
}

export interface SheetsOfPoints {
  /** by who stands for a judge of the show */
  readonly judges: readonly PointsSheet[]
  readonly keepers: readonly PointsSheet[]
  /** sheets that do not say who filled them in */
  readonly unsigned: number
}

/** All sheets of points, oldest first: of shows that were held, and of scoring days. Struck ones are left aside. */
export function sheetsOfPoints(book: Pick<Logbook, 'shows' | 'sheets' | 'drafts'>): SheetsOfPoints {
  const read = (score: ShowScore, show: Show | null, on: PartialDate | null): PointsSheet => {
    const draft = draftInForce(book.drafts, score.draft, on?.first ?? null), {headings, points, of} = scoreSheet({...score, draft: draft?.number ?? score.draft}, book)
    const missing = (draft?.points ?? []).filter(({name}) => !headings.some(heading => heading.name.toLowerCase() === name.toLowerCase())).map(({name}) => name)
    const full = (draft?.points ?? []).reduce((sum, heading) => sum + heading.points, 0)
    return {score, bird: score.bird, show, on, draft: draft?.number ?? score.draft, headings, missing, share: of === null || full === 0 || of !== full ? null : points / of}
  }
  const all = [
    ...book.shows.flatMap(show => (show.cancelled === null ? (show.scores ?? []).map(score => read(score, show, show.on)) : [])),
    ...book.sheets.flatMap(sheet => (sheet.struck === null ? [read(sheet, null, sheet.on)] : [])),
  ].filter(({headings}) => headings.length > 0)
  const inOrder = all.map((sheet, place) => ({sheet, place})).sort((a, b) => (a.sheet.on?.first ?? -Infinity) - (b.sheet.on?.first ?? -Infinity) || a.place - b.place).map(({sheet}) => sheet)
  return {
    judges: inOrder.filter(({score}) => typeof score.by === 'string'), keepers: inOrder.filter(({score}) => score.by !== null && typeof score.by !== 'string'),
    unsigned: inOrder.filter(({score}) => score.by === null).length,
  }
}
