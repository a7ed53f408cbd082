/** The standard: its latest draft, as it would be printed. */
import type {Draft, Logbook} from '../logbook/book.ts'
import {STANDARD, STANDARD_PDF} from './links.ts'
import type {Page, PageHeads} from './page.ts'
import {standardView, type StandardView} from './standard-view.ts'

export interface StandardPage {
  /** null while nobody has written one */
  readonly standard: StandardView | null
  readonly breed: string
}

/** The words of a draft that a reader may search for. */
export const standardWords = (view: StandardView): string =>
  [view.title, ...view.parts.flatMap(({section}) => (section ? [section.title, ...section.clauses.flatMap(({title, variety}) => [...(variety ? [variety.title] : []), title])] : []))].join(' ')

export const standardHeads = ({project}: Logbook, draft: Draft): PageHeads => ({left: project.name, right: `Proposed standard, draft ${draft.number}`})

export function standardPage(book: Logbook): Page {
  const latest = book.drafts.at(-1)
  if (!latest) {
    const view: StandardPage = {standard: null, breed: book.project.name}
    return {path: STANDARD, template: 'standard', title: 'Standard', section: 'standard', view}
  }
  const standard = standardView(book, latest)
  return {
    path: STANDARD, template: 'standard', title: `Proposed standard, draft ${latest.number}`, section: 'standard', look: 'standard', heads: standardHeads(book, latest), pdf: STANDARD_PDF,
    view: {standard, breed: book.project.name} satisfies StandardPage, search: {kind: 'standard', words: standardWords(standard)},
  }
}
