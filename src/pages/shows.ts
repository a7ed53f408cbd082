/** All shows: when and where, what each bird won over the years, and what the judges said. */
import type {OneShow, ShowResults} from '../findings/show-results.ts'
import type {Findings} from '../findings/study.ts'
import type {Show} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {dateWords} from './dates.ts'
import {birdPath, SHOWS, showPath} from './links.ts'
import {counted, listWords, NOTHING, saying, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {placingsView, pointsViews, type PlacingsView, type PointsView} from './judges-against-keepers.ts'
import {remarksView, type RemarksView} from './remarks-view.ts'
import {showYearsView, type ShowYearsView} from './show-years.ts'
import {cancelledWords, resultWords} from './show-words.ts'

export interface ShowsView {
  readonly lead: string
  readonly shows: readonly {readonly when: string; readonly name: string; readonly link: string; readonly place: string | null; readonly words: string; readonly cancelled: string | null}[]
  readonly results: Table | null
  readonly years: ShowYearsView | null
  readonly placings: PlacingsView | null
  readonly points: readonly PointsView[]
  readonly remarks: RemarksView | null
}

interface Listed {
  readonly show: Show
  /** null: officially cancelled */
  readonly held: OneShow | null
}

/** Newest first, those officially cancelled among them. */
function listed({shows, cancelled}: ShowResults): readonly Listed[] {
  const all = [...shows.map((held): Listed => ({show: held.show, held})), ...cancelled.map((show): Listed => ({show, held: null}))]
  return all.sort((a, b) => b.show.on.first - a.show.on.first || (a.show.id < b.show.id ? -1 : 1))
}

function showsLead({shows, cancelled}: ShowResults, all: readonly Listed[]): string {
  const newest = all[0]?.show, oldest = all.at(-1)?.show
  if (!newest || !oldest) return 'No show is on record yet.'
  const years = [...new Set([yearOf(oldest.on.first), yearOf(newest.on.first)])].join(' to ')
  const say = saying(shows.length, cancelled.length)
  return `${sentence(say(shows.length, 'show'))}, ${years}${cancelled.length === 0 ? '' : `; ${say(cancelled.length, 'more was', 'more were')} officially cancelled`}.`
}

function entryWords(held: OneShow | null): string {
  if (held === null || held.show.entries.length === 0) return 'No entries on record.'
  return `${sentence(counted(held.birds, 'bird'))}${held.judges.length === 0 ? '' : `, judged by ${listWords(held.judges)}`}.`
}

/** One row a bird, one column a year; a bird shown twice in a year has both results in the cell. */
function resultsTable({shows, birds}: ShowResults): Table | null {
  if (birds.size === 0) return null
  const years = [...new Set(shows.filter(({birds: shown}) => shown > 0).map(({show}) => yearOf(show.on.first)))]
  const rows = [...birds].sort(([a], [b]) => (a.band === b.band ? (a.id < b.id ? -1 : 1) : a.band < b.band ? -1 : 1)).map(([bird, results]): readonly Cell[] => [
    {text: bird.band, link: birdPath(bird)},
    ...years.map(year => results.filter(({show}) => yearOf(show.on.first) === year).map(({entry}) => resultWords(entry)).join('; ') || NOTHING),
  ])
  return {columns: [{head: 'Bird'}, ...years.map(year => ({head: String(year)}))], rows}
}

export function showsPage({book, shows: results, showYears, judgeAgreement, sheetsCompared, remarksByClause}: Findings): Page {
  const all = listed(results)
  const view: ShowsView = {
    lead: showsLead(results, all),
    shows: all.map(({show, held}) => ({
      when: dateWords(show.on), name: show.name, link: showPath(show), place: show.place, words: entryWords(held), cancelled: show.cancelled === null ? null : cancelledWords(show),
    })),
    years: showYearsView(showYears), results: resultsTable(results), placings: placingsView(judgeAgreement), points: pointsViews(sheetsCompared), remarks: remarksView(remarksByClause, book),
  }
  return {path: SHOWS, template: 'shows', title: 'Shows', section: 'shows', view, search: {kind: 'shows', words: 'shows placings judges remarks awards'}}
}
