import type {Show, ShowEntry} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {grouped} from './grouped.ts'
import type {ShowResult, ShowResults} from './show-results.ts'

/** Entries of one class need to be as many before their mean place says anything: our convention. */
export const LEAST_PLACED = 5

/** Where birds stood in their classes on average, 0 last and 1 first. */
export interface MeanPlace {
  /** entries with a relative place */
  readonly placed: number
  /** null: fewer than `LEAST_PLACED` */
  readonly mean: number | null
  /** not placed, disqualified, alone in the class, or without word of how many were shown */
  readonly leftOut: number
}

export interface TallyOfEntries {
  readonly entries: number
  /** different birds */
  readonly birds: number
  readonly firsts: number
  readonly awards: number
  readonly disqualified: number
  readonly place: MeanPlace
  /** the judges' words, in the order they first appear */
  readonly grades: readonly {readonly grade: string; readonly entries: number}[]
  /** the least and the most that were given with a placing; null where none were. Judges are strict each in his own way, so there is no mean */
  readonly points: {readonly low: number; readonly high: number; readonly entries: number} | null
}

export interface YearOfShows extends TallyOfEntries {
  readonly year: number
  readonly shows: readonly Show[]
  readonly cancelled: readonly Show[]
}

export interface ClassOverYears extends TallyOfEntries {
  /** null: no class on record */
  readonly class: string | null
  readonly years: readonly (TallyOfEntries & {readonly year: number})[]
}

export interface ShowYears {
  /** every year with a show, oldest first, those in which all were cancelled among them */
  readonly years: readonly YearOfShows[]
  /** in the order classes first appear */
  readonly classes: readonly ClassOverYears[]
  readonly all: TallyOfEntries
}

/**
 * How high in its class: (of − place)/(of − 1), 1 for the first and 0 for the last. Null where the bird was not placed or disqualified, stood alone, or nothing says how many there were.
 *
 * @example relativePlace({place: 2, of: 6, disqualified: false})  // 0.8
 */
export function relativePlace({place, of, disqualified}: Pick<ShowEntry, 'place' | 'of' | 'disqualified'>): number | null {
  return disqualified || place === null || of === null || of < 2 ? null : (of - place) / (of - 1)
}

/**
 * How did the birds do over the years, and in which class? Counts by year and class, and the mean of their relative places. A class is what it is on the day: the same place is worth more where
 * others were better, so the mean tells how the birds stood among those they met, and has no interval.
 */
export function showYears({shows, cancelled, classes}: ShowResults): ShowYears {
  const held = shows.map(({show}) => show), all = held.flatMap(resultsOf)
  const years = [...new Set([...held, ...cancelled].map(yearOfShow))].sort((a, b) => a - b)
  return {
    years: years.map(year => {
      const own = held.filter(show => yearOfShow(show) === year)
      return {year, shows: own, cancelled: cancelled.filter(show => yearOfShow(show) === year), ...tallyOf(own.flatMap(resultsOf))}
    }),
    classes: classes.map(({class: name, entries}) => ({
      class: name, ...tallyOf(entries), years: [...grouped(entries, ({show}) => yearOfShow(show))].map(([year, own]) => ({year, ...tallyOf(own)})),
    })),
    all: tallyOf(all),
  }
}

const resultsOf = (show: Show): ShowResult[] => show.entries.map(entry => ({show, entry}))
const yearOfShow = ({on}: Show): number => yearOf(on.first)

function tallyOf(results: readonly ShowResult[]): TallyOfEntries {
  const entries = results.map(({entry}) => entry), points = entries.flatMap(each => each.points ?? []), places = entries.map(relativePlace).filter(place => place !== null)
  return {
    entries: entries.length, birds: new Set(entries.map(({bird}) => bird)).size, firsts: entries.filter(({place, disqualified}) => place === 1 && !disqualified).length,
    awards: entries.filter(({award}) => award !== null).length, disqualified: entries.filter(({disqualified}) => disqualified).length,
    place: {placed: places.length, mean: places.length < LEAST_PLACED ? null : meanAndDeviation(places).mean, leftOut: entries.length - places.length},
    grades: [...grouped(entries, ({grade}) => grade ?? undefined)].map(([grade, own]) => ({grade, entries: own.length})),
    points: points.length === 0 ? null : {low: Math.min(...points), high: Math.max(...points), entries: points.length},
  }
}
