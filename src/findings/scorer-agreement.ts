import type {Bird, Keeper, Logbook, Score, Trait} from '../logbook/book.ts'
import {weightedKappa, type Kappa} from '../statistics/weighted-kappa.ts'
import {countedValue} from './counted-value.ts'
import {placeOf} from './grade-places.ts'

/** How far two who grade the same birds agree. */
export interface Agreement {
  readonly trait: Trait
  /** `scorers`: two keepers · `judges`: what counts in the book, against the score sheets of show judges */
  readonly between: 'scorers' | 'judges'
  /** the keepers by the names they may be told by; of `judges`, the headings of their sheets */
  readonly names: readonly string[]
  /** birds graded by both */
  readonly birds: number
  /** of these, given one and the same grade */
  readonly same: number
  /** later less earlier: birds that the second of the two graded higher, and lower */
  readonly higher: number
  readonly lower: number
  /** null where both gave one grade to all, or no bird was graded by both */
  readonly kappa: Kappa | null
  /** birds on a judge's sheet of which the book holds no grade, or of which the sheet does not say out of how many points */
  readonly leftOut: number
}

type Grades = readonly (readonly [one: number, other: number])[]

/**
 * Do two scorers see the same bird? Every two keepers who graded one bird or more in common, each by the last of their own grades that is neither struck nor out of its time;
 * then the grade that counts in the book against the points of show judges, of each bird its latest sheet.
 *
 *     κ weighted by steps: a miss by one grade counts little, one by many counts whole
 *
 * A judge's heading speaks of a trait when the trait's name stands in it as whole words ("Type and carriage" of Type). Its points are brought to the trait's scale,
 * from + (to − from) · points / full, to the nearest grade: our convention. A judge who is strict throughout lowers κ as one does who sees another bird: read the two counts
 * of higher and lower beside it. Sheets that keepers filled in are no judge's.
 *
 * @see `weightedKappa`
 */
export function scorerAgreement(trait: Trait, book: Logbook): readonly Agreement[] {
  const scorers = byScorer(trait, book.birds), names = [...scorers.keys()].sort((a, b) => (a.id < b.id ? -1 : 1))
  const pairs = names.flatMap((one, index) => names.slice(index + 1).map(other => [one, other] as const)).flatMap(([one, other]): Agreement[] => {
    const first = scorers.get(one), second = scorers.get(other)
    const both = [...(first ?? [])].flatMap(([bird, grade]) => {
      const also = second?.get(bird)
      return also === undefined ? [] : [[grade, also] as const]
    })
    return both.length === 0 ? [] : [{trait, between: 'scorers', names: [one.name, other.name], leftOut: 0, ...agreed(trait, both)}]
  })
  return [...pairs, ...withJudges(trait, book)]
}

/** The last grade of each keeper of each bird. */
function byScorer(trait: Trait, birds: readonly Bird[]): ReadonlyMap<Keeper, ReadonlyMap<Bird, number>> {
  const scorers = new Map<Keeper, Map<Bird, number>>()
  const counts = ({struck, outside}: Score): boolean => struck === null && !outside
  for (const bird of birds) for (const score of bird.looks.get(trait)?.scores.filter(counts) ?? []) {
    const place = placeOf(trait, score.value)
    if (score.by === null || place === null) continue
    const own = scorers.get(score.by) ?? new Map<Bird, number>()
    own.set(bird, place)
    scorers.set(score.by, own)
  }
  return scorers
}

function withJudges(trait: Trait, {shows, drafts}: Pick<Logbook, 'shows' | 'drafts'>): Agreement[] {
  const sheets = new Map<Bird, {readonly heading: string; readonly share: number | null}>()
  const held = [...shows].sort((a, b) => a.on.first - b.on.first || (a.id < b.id ? -1 : 1))
  for (const {bird, by, headings, draft} of held.flatMap(show => show.scores ?? [])) {
    const heading = headings.find(({name}) => speaksOf(name, trait))
    if (typeof by !== 'string' || !heading) continue
    const of = heading.of ?? drafts.find(({number}) => number === draft)?.points.find(({name}) => name.toLowerCase() === heading.name.toLowerCase())?.points ?? null
    sheets.set(bird, {heading: heading.name, share: of !== null && of > 0 && heading.points <= of ? heading.points / of : null})
  }
  if (sheets.size === 0) return []
  const {low, high} = scaleOf(trait)
  const both = [...sheets].flatMap(([bird, {share}]) => {
    const own = placeOf(trait, countedValue(bird, trait))
    return own === null || share === null ? [] : [[own, Math.round(low + (high - low) * share)] as const]
  })
  return [{trait, between: 'judges', names: [...new Set([...sheets.values()].map(({heading}) => heading))], leftOut: sheets.size - both.length, ...agreed(trait, both)}]
}

/** Does the trait's name stand in the heading, as whole words? */
function speaksOf(heading: string, {name}: Trait): boolean {
  const words = (text: string): string => ` ${text.toLowerCase().split(/[^\p{L}\p{N}]+/u).filter(word => word !== '').join(' ')} `
  return words(heading).includes(words(name))
}

const scaleOf = ({scale, states}: Trait): {readonly low: number; readonly high: number} => (scale ? {low: scale.from, high: scale.to} : {low: 1, high: states.length})

function agreed(trait: Trait, both: Grades): Pick<Agreement, 'birds' | 'same' | 'higher' | 'lower' | 'kappa'> {
  const count = (of: (difference: number) => boolean): number => both.filter(([one, other]) => of(other - one)).length
  return {birds: both.length, same: count(away => away === 0), higher: count(away => away > 0), lower: count(away => away < 0), kappa: kappaOf(trait, both)}
}

function kappaOf(trait: Trait, both: Grades): Kappa | null {
  const all = both.flat(), {low, high} = scaleOf(trait)
  const from = Math.min(low, ...all.map(Math.floor)), to = Math.max(high, ...all.map(Math.ceil))
  // half marks make grades of their own, as far apart as halves are; finer ones go to the nearest tenth
  const parts = all.every(Number.isInteger) ? 1 : all.every(place => Number.isInteger(2 * place)) ? 2 : 10
  const table = Array.from({length: (to - from) * parts + 1}, () => Array<number>((to - from) * parts + 1).fill(0))
  for (const [one, other] of both) {
    const row = table[Math.round((one - from) * parts)], column = Math.round((other - from) * parts)
    if (row) row[column] = (row[column] ?? 0) + 1
  }
  return table.length < 2 ? null : weightedKappa(table)
}
