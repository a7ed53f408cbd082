/** All shows: when and where, what each bird won over the years, and what the judges said. */
import type {OneShow, ShowResult, ShowResults} from '../findings/show-results.ts'
import type {Findings} from '../findings/study.ts'
import type {Show} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {dateWords} from './dates.ts'
import {birdPath, SHOWS, showPath} from './links.ts'
import {counted, listWords, NOTHING, saying, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {bandLink} from './show.ts'
import {placing} from './show-words.ts'

export interface ShowsView {
  readonly lead: string
  readonly shows: readonly {readonly when: string; readonly name: string; readonly link: string; readonly place: string | null; readonly words: string; readonly cancelled: string | null}[]
  readonly results: Table | null
  readonly remarks: readonly {
    readonly when: string
    readonly show: {readonly name: string; readonly link: string}
    readonly remarks: readonly {readonly bird: {readonly band: string; readonly link: string}; readonly remark: string; readonly judge: string | null}[]
  }[]
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

const wonWords = ({entry}: ShowResult): string => [entry.class, placing(entry), entry.award].filter(part => part !== null).join(', ')

/** One row a bird, one column a year; a bird shown twice in a year has both results in the cell. */
function resultsTable({shows, birds}: ShowResults): Table | null {
  if (birds.size === 0) return null
  const years = [...new Set(shows.filter(({birds: shown}) => shown > 0).map(({show}) => yearOf(show.on.first)))]
  const rows = [...birds].sort(([a], [b]) => (a.id < b.id ? -1 : 1)).map(([bird, results]): readonly Cell[] => [
    {text: bird.band, link: birdPath(bird)},
    ...years.map(year => results.filter(({show}) => yearOf(show.on.first) === year).map(wonWords).join('; ') || NOTHING),
  ])
  return {columns: [{head: 'Bird'}, ...years.map(year => ({head: String(year)}))], rows}
}

export function showsPage({shows: results}: Findings): Page {
  const all = listed(results)
  const view: ShowsView = {
    lead: showsLead(results, all),
    shows: all.map(({show, held}) => ({
      when: dateWords(show.on), name: show.name, link: showPath(show), place: show.place, words: entryWords(held), cancelled: show.cancelled,
    })),
    results: resultsTable(results),
    remarks: all.map(({show}) => ({
      when: dateWords(show.on), show: {name: show.name, link: showPath(show)},
      remarks: results.remarks.filter(remark => remark.show === show).reverse()
        .flatMap(({entry}) => (entry.remark === null ? [] : [{bird: bandLink(entry.bird), remark: entry.remark, judge: entry.judge}])),
    })).filter(({remarks}) => remarks.length > 0),
  }
  return {path: SHOWS, template: 'shows', title: 'Shows', section: 'shows', view, search: {kind: 'shows', words: 'shows placings judges remarks awards'}}
}
