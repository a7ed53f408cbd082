/** All shows: when and where, what each bird won over the years, and what the judges said. */
import type {Bird, Logbook, Show} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {dateWords} from './dates.ts'
import {birdPath, SHOWS, showPath} from './links.ts'
import {counted, listWords, NOTHING, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {bandLink} from './show.ts'
import {judgesOf, placing} from './show-words.ts'

export interface ShowsView {
  readonly lead: string
  readonly shows: readonly {readonly when: string; readonly name: string; readonly link: string; readonly place: string | null; readonly words: string; readonly cancelled: string | null}[]
  readonly results: Table | null
  readonly wide: boolean
  readonly remarks: readonly {
    readonly when: string
    readonly show: {readonly name: string; readonly link: string}
    readonly remarks: readonly {readonly bird: {readonly band: string; readonly link: string}; readonly remark: string; readonly judge: string | null}[]
  }[]
}

const newestFirst = (book: Logbook): readonly Show[] => [...book.shows].sort((a, b) => b.on.first - a.on.first || (a.id < b.id ? -1 : 1))

function showsLead(shows: readonly Show[]): string {
  const newest = shows[0], oldest = shows.at(-1)
  if (!newest || !oldest) return 'No show is on record yet.'
  const held = shows.filter(show => show.cancelled === null).length, cancelled = shows.length - held
  const years = [...new Set([yearOf(oldest.on.first), yearOf(newest.on.first)])].join(' to ')
  return `${sentence(counted(held, 'show'))}, ${years}${cancelled === 0 ? '' : `; ${counted(cancelled, 'more was', 'more were')} officially cancelled`}.`
}

function entryWords(show: Show): string {
  if (show.entries.length === 0) return 'No entries on record.'
  const judges = judgesOf(show)
  return `${sentence(counted(show.entries.length, 'bird'))}${judges.length === 0 ? '' : `, judged by ${listWords(judges)}`}.`
}

/** One row a bird, one column a year; a bird shown twice in a year has both results in the cell. */
function resultsTable(shows: readonly Show[]): Table | null {
  const oldestFirst = [...shows].reverse()
  const years = [...new Set(oldestFirst.filter(show => show.entries.length > 0).map(show => yearOf(show.on.first)))]
  const results = new Map<Bird, Map<number, string[]>>()
  for (const show of oldestFirst) {
    for (const entry of show.entries) {
      const year = yearOf(show.on.first), of = results.get(entry.bird) ?? new Map<number, string[]>()
      const won = [entry.class, placing(entry), entry.award].filter(part => part !== null).join(', ')
      results.set(entry.bird, of.set(year, [...(of.get(year) ?? []), won]))
    }
  }
  if (results.size === 0) return null
  const rows = [...results].sort(([a], [b]) => (a.id < b.id ? -1 : 1)).map(([bird, of]): readonly Cell[] =>
    [{text: bird.band, link: birdPath(bird)}, ...years.map(year => (of.get(year) ?? [NOTHING]).join('; '))])
  return {columns: [{head: 'Bird'}, ...years.map(year => ({head: String(year)}))], rows}
}

export function showsPage(book: Logbook): Page {
  const shows = newestFirst(book)
  const results = resultsTable(shows)
  const view: ShowsView = {
    lead: showsLead(shows),
    shows: shows.map(show => ({
      when: dateWords(show.on), name: show.name, link: showPath(show), place: show.place, words: entryWords(show), cancelled: show.cancelled,
    })),
    results, wide: results !== null && results.columns.length > 4,
    remarks: shows.map(show => ({
      when: dateWords(show.on), show: {name: show.name, link: showPath(show)},
      remarks: show.entries.flatMap(entry => (entry.remark === null ? [] : [{bird: bandLink(entry.bird), remark: entry.remark, judge: entry.judge}])),
    })).filter(({remarks}) => remarks.length > 0),
  }
  return {path: SHOWS, template: 'shows', title: 'Shows', section: 'shows', view, search: {kind: 'shows', words: 'shows placings judges remarks awards'}}
}
