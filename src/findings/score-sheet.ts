import type {Logbook, ShowScore} from '../logbook/book.ts'

/** A score sheet as a judge filled it in, with what each heading may have and the sums. */
export interface ScoreSheet {
  readonly score: ShowScore
  /** in the order of the sheet; `of` is null where neither the sheet nor the draft says how many points there are to be had */
  readonly headings: readonly {readonly name: string; readonly points: number; readonly of: number | null}[]
  readonly points: number
  /** null where a heading's full points are not known */
  readonly of: number | null
}

/**
 * What did the judge give, heading by heading? Full points that the sheet leaves out are those of the heading of the same name
 * in the draft it was scored under. Points are an order on one sheet by one judge: nothing is averaged over sheets.
 */
export function scoreSheet(score: ShowScore, {drafts}: Pick<Logbook, 'drafts'>): ScoreSheet {
  const scale = drafts.find(({number}) => number === score.draft)?.points ?? []
  const full = (heading: string): number | null => scale.find(({name}) => name.toLowerCase() === heading.toLowerCase())?.points ?? null
  const headings = score.headings.map(({name, points, of}) => ({name, points, of: of ?? full(name)}))
  const points = headings.reduce((sum, each) => sum + each.points, 0)
  const of = headings.reduce<number | null>((sum, each) => (sum === null || each.of === null ? null : sum + each.of), 0)
  return {score, headings, points, of}
}
