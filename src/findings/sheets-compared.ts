import type {Bird, Keeper} from '../logbook/book.ts'
import {limitsOfAgreement, type Agreed} from '../statistics/limits-of-agreement.ts'
import {grouped} from './grouped.ts'
import type {PointsSheet, SheetsOfPoints} from './sheets-of-points.ts'

/** Sheets of one bird further apart than this are not held against each other, since the bird has changed: our convention. */
export const MOST_DAYS_APART = 60

/** Points two gave the same birds under the same draft, heading by heading. */
export interface SheetsCompared {
  /** `judges`: judges first, our keepers second · `keepers`: two keepers, by name */
  readonly between: 'judges' | 'keepers'
  /** those who filled in the first sheets, and the second */
  readonly names: readonly [readonly string[], readonly string[]]
  readonly birds: number
  /** in the order of the first sheet they stand on */
  readonly headings: readonly HeadingCompared[]
  /** differences of a sheet as a whole, where both have the same headings; a bird with several is one, by their mean; null where none has */
  readonly whole: Agreed | null
  /** over all headings, the largest first; no more than five, none of nothing */
  readonly largest: readonly Difference[]
  readonly leftOut: SheetsLeftOut
}

export interface SheetsLeftOut {
  /** first sheets for which the other has none of that bird under that draft */
  readonly noOther: number
  /** only one from after it, or from more than `MOST_DAYS_APART` before */
  readonly notNear: number
  /** headings that no sheet of the other has, or only with other full points */
  readonly otherScale: number
  /** sheets held heading by heading that lack a heading of their draft's scale, and are not held as a whole */
  readonly unfinished: number
}

export interface HeadingCompared {
  readonly heading: string
  readonly of: number | null
  /** first less second, in points; a bird with several sheets is one, by the mean of its differences, since they hang together */
  readonly agreed: Agreed
  readonly differences: readonly Difference[]
}

export interface Difference {
  readonly heading: string
  readonly of: number | null
  readonly bird: Bird
  /** the first's points; the second's, the mean where several keepers filled in a sheet */
  readonly first: number
  readonly second: number
  readonly difference: number
  readonly sheets: readonly PointsSheet[]
}

/** Which of the other's sheets one sheet is held against; one a person, none where there is none near enough. */
type Others = (sheet: PointsSheet) => {readonly near: readonly PointsSheet[]; readonly any: boolean}

/**
 * By how much do judges give other points than we do, and we than each other? Every sheet of a judge against what our keepers gave the same bird under the same draft, on the last sheet of each from
 * the day of the show or up to 60 days before it; then every two keepers who filled in sheets of one bird under one draft within 60 days, the nearest two. Only headings with the same full points
 * are held against each other. Sheets of one bird hang together: a bird that two judges scored counts once, by the mean of its differences.
 *
 * @see `limitsOfAgreement`
 */
export function sheetsCompared({judges, keepers}: SheetsOfPoints): readonly SheetsCompared[] {
  const byKeeper = [...grouped(keepers, ({score}) => (score.by !== null && typeof score.by !== 'string' ? score.by : undefined))].sort(([a], [b]) => (a.id < b.id ? -1 : 1))
  const withJudges = judges.length === 0 ? [] : [compared('judges', judges, sheet => {
    const same = byKeeper.map(([, sheets]) => sheets.filter(other => sameCase(other, sheet)))
    return {near: same.flatMap(sheets => sheets.filter(other => isNear(other, sheet) && daysBefore(other, sheet) >= 0).at(-1) ?? []), any: same.some(({length}) => length > 0)}
  }, [namesOf(judges), byKeeper.map(([keeper]) => keeper.name)])]
  const amongKeepers = byKeeper.flatMap(([one, own], index) => byKeeper.slice(index + 1).map(([other, theirs]) => betweenTwo([one, own], [other, theirs])))
  return [...withJudges, ...amongKeepers].filter(({between, headings, leftOut}) => headings.length > 0 || (between === 'judges' && leftOut.noOther + leftOut.notNear + leftOut.otherScale > 0))
}

/** Each bird and draft once, by the two sheets that are nearest in time. */
function betweenTwo([one, own]: readonly [Keeper, readonly PointsSheet[]], [other, theirs]: readonly [Keeper, readonly PointsSheet[]]): SheetsCompared {
  const nearest = [...grouped(own, sheet => `${sheet.bird.id}\n${sheet.draft ?? ''}`)].flatMap(([, sheets]) => {
    const pairs = sheets.flatMap(sheet => theirs.filter(each => sameCase(each, sheet) && isNear(each, sheet)).map(each => [sheet, each] as const))
    const [best] = pairs.sort((a, b) => Math.abs(daysBefore(a[1], a[0])) - Math.abs(daysBefore(b[1], b[0])))
    return best ? [best] : []
  })
  const found = new Map(nearest)
  return compared('keepers', nearest.map(([sheet]) => sheet), sheet => ({near: [found.get(sheet) ?? []].flat(), any: true}), [[one.name], [other.name]])
}

const namesOf = (sheets: readonly PointsSheet[]): string[] => [...new Set(sheets.flatMap(({score}) => (typeof score.by === 'string' ? [score.by] : [])))]
const sameCase = (one: PointsSheet, other: PointsSheet): boolean => one.bird === other.bird && one.draft === other.draft
/** Infinite where a day is not known. */
const daysBefore = (one: PointsSheet, other: PointsSheet): number => (one.on && other.on ? other.on.last - one.on.first : Infinity)
const isNear = (one: PointsSheet, other: PointsSheet): boolean => Math.abs(daysBefore(one, other)) <= MOST_DAYS_APART

function compared(between: SheetsCompared['between'], firsts: readonly PointsSheet[], others: Others, names: SheetsCompared['names']): SheetsCompared {
  const left = {noOther: 0, notNear: 0, otherScale: 0, unfinished: 0}, all: Difference[] = [], wholes: {readonly bird: Bird; readonly difference: number}[] = []
  for (const sheet of firsts) {
    const {near, any} = others(sheet)
    if (near.length === 0) {
      if (any) left.notNear += 1
      else left.noOther += 1
      continue
    }
    const own = sheet.headings.flatMap(({name, points, of}): Difference[] => {
      const marks = near.flatMap(each => each.headings.filter(heading => alike(heading.name, name)))
      const fit = marks.filter(mark => mark.of === of)
      left.otherScale += fit.length === 0 ? 1 : 0
      if (fit.length === 0) return []
      const second = fit.reduce((sum, mark) => sum + mark.points, 0) / fit.length
      return [{heading: name, of, bird: sheet.bird, first: points, second, difference: points - second, sheets: [sheet, ...near]}]
    })
    all.push(...own)
    if (own.length > 0 && [sheet, ...near].some(each => each.missing.length > 0)) left.unfinished += 1
    if (own.length === sheet.headings.length && near.every(({headings}) => headings.length === own.length)) wholes.push({bird: sheet.bird, difference: own.reduce((sum, {difference}) => sum + difference, 0)})
  }
  const headings = [...grouped(all, ({heading, of}) => `${heading.toLowerCase()}\n${of ?? ''}`).values()].flatMap((differences): HeadingCompared[] => {
    const [first] = differences
    return first ? [{heading: first.heading, of: first.of, agreed: limitsOfAgreement(byBird(differences)), differences}] : []
  })
  const largest = all.filter(({difference}) => difference !== 0).sort((a, b) => Math.abs(b.difference) - Math.abs(a.difference)).slice(0, 5)
  return {between, names, birds: new Set(all.map(({bird}) => bird)).size, headings, whole: wholes.length === 0 ? null : limitsOfAgreement(byBird(wholes)), largest, leftOut: left}
}

const alike = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase()

/** One a bird. */
const byBird = (all: readonly {readonly bird: Bird; readonly difference: number}[]): number[] =>
  [...grouped(all, ({bird}) => bird).values()].map(own => own.reduce((sum, {difference}) => sum + difference, 0) / own.length)
