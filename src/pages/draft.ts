/** Each earlier draft of the standard, kept as it was, with a note of the one that took its place. */
import type {Logbook} from '../logbook/book.ts'
import {draftPath} from './links.ts'
import type {Page} from './page.ts'
import {standardHeads, type StandardPage} from './standard.ts'
import {standardView} from './standard-view.ts'

export function draftPages(book: Logbook): readonly Page[] {
  return book.drafts.slice(0, -1).map(draft => ({
    path: draftPath(draft), template: 'standard', title: `Standard, draft ${draft.number}`, section: 'standard', look: 'standard', heads: standardHeads(book, draft),
    view: {standard: standardView(book, draft), breed: book.project.name} satisfies StandardPage,
  }))
}
