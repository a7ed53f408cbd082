/** One entry of the diary, with the entries before and after it. */
import type {Logbook} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {entryLink, oldestFirst, type EntryLink} from './diary.ts'
import {diaryPath} from './links.ts'
import type {Page} from './page.ts'
import {plates, type Plate} from './plates.ts'

export interface DiaryEntryView {
  readonly title: string
  readonly date: string
  /** Markdown */
  readonly body: string
  readonly plates: readonly Plate[]
  readonly before: EntryLink | null
  readonly after: EntryLink | null
}

export function diaryEntryPages(book: Logbook): readonly Page[] {
  const entries = oldestFirst(book)
  return entries.map((entry, index) => {
    const before = entries[index - 1], after = entries[index + 1]
    const view: DiaryEntryView = {
      title: entry.title, date: dateWords(entry.on), body: entry.body, plates: plates(entry.photos, entry.title, false),
      before: before ? entryLink(before) : null, after: after ? entryLink(after) : null,
    }
    return {
      path: diaryPath(entry), template: 'diary-entry', title: entry.title, section: 'diary', view,
      search: {kind: 'diary', words: `${entry.title} ${dateWords(entry.on)}`},
    }
  })
}
