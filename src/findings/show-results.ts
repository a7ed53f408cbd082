import type {Bird, Logbook, Show, ShowEntry} from '../logbook/book.ts'
import {grouped} from './grouped.ts'

export interface ShowResult {
  readonly show: Show
  readonly entry: ShowEntry
}

export interface ShowResults {
  /** oldest first; officially cancelled ones are not among them */
  readonly shows: readonly OneShow[]
  readonly cancelled: readonly Show[]
  /** every entry of a bird, oldest first */
  readonly birds: ReadonlyMap<Bird, readonly ShowResult[]>
  /** over all shows, in the order classes first appear; null is an entry without a class */
  readonly classes: readonly ClassResults[]
  /** as published, each once, in the order they first appear */
  readonly judges: readonly string[]
  /** what judges said, newest first */
  readonly remarks: readonly ShowResult[]
  readonly entries: number
}

export interface OneShow {
  readonly show: Show
  readonly classes: readonly ClassResults[]
  readonly judges: readonly string[]
  readonly birds: number
}

/** Entries of one class. */
export interface ClassResults {
  readonly class: string | null
  readonly entries: readonly ShowResult[]
  /** different birds */
  readonly birds: number
  readonly firsts: number
  readonly disqualified: number
}

function classesOf(results: readonly ShowResult[]): ClassResults[] {
  return [...grouped(results, ({entry}) => entry.class)].map(([name, entries]) => ({
    class: name, entries, birds: new Set(entries.map(({entry}) => entry.bird)).size, firsts: entries.filter(({entry}) => entry.place === 1).length,
    disqualified: entries.filter(({entry}) => entry.disqualified).length,
  }))
}

const judgesOf = (results: readonly ShowResult[]): string[] => [...new Set(results.flatMap(({entry}) => (entry.judge === null ? [] : [entry.judge])))]

/** What did the judges make of them? Every entry by show, class and bird, with placings and remarks. Nothing is scored or summed up here. */
export function showResults(book: Logbook): ShowResults {
  const held = book.shows.filter(show => show.cancelled === null)
    .sort((a, b) => a.on.first - b.on.first || a.on.last - b.on.last || (a.id < b.id ? -1 : 1))
  const all = held.flatMap(show => show.entries.map(entry => ({show, entry})))
  return {
    shows: held.map(show => {
      const results = show.entries.map(entry => ({show, entry}))
      return {show, classes: classesOf(results), judges: judgesOf(results), birds: new Set(show.entries.map(entry => entry.bird)).size}
    }),
    cancelled: book.shows.filter(show => show.cancelled !== null), birds: grouped(all, ({entry}) => entry.bird), classes: classesOf(all), judges: judgesOf(all),
    remarks: all.filter(({entry}) => entry.remark !== null).reverse(), entries: all.length,
  }
}
