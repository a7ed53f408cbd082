/** The diary, newest entry first. */
import type {DiaryEntry, Logbook} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {dateWords} from './dates.ts'
import {DIARY, diaryPath} from './links.ts'
import {counted, sentence} from './numbers.ts'
import type {Page} from './page.ts'

export interface EntryLink {
  readonly when: string
  readonly title: string
  readonly link: string
}

export interface DiaryView {
  readonly lead: string
  readonly years: readonly {readonly year: string; readonly entries: readonly EntryLink[]}[]
}

export const oldestFirst = (book: Logbook): readonly DiaryEntry[] => [...book.diary].sort((a, b) => a.on.first - b.on.first || (a.id < b.id ? -1 : 1))

export const entryLink = (entry: DiaryEntry): EntryLink => ({when: dateWords(entry.on), title: entry.title, link: diaryPath(entry)})

export function diaryPage(book: Logbook): Page {
  const entries = [...oldestFirst(book)].reverse()
  const years = [...new Set(entries.map(entry => yearOf(entry.on.first)))]
  const oldest = entries.at(-1)
  const view: DiaryView = {
    lead: oldest ? `${sentence(counted(entries.length, 'entry', 'entries'))}, kept since ${dateWords(oldest.on)}.` : 'Nothing has been written in the diary yet.',
    years: years.map(year => ({year: String(year), entries: entries.filter(entry => yearOf(entry.on.first) === year).map(entryLink)})),
  }
  return {path: DIARY, template: 'diary', title: 'Diary', section: 'diary', view, search: {kind: 'diary', words: 'diary entries news'}}
}
