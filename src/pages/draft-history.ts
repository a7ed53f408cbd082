/** Every draft of the standard, newest first, with what changed and why. */
import type {Logbook} from '../logbook/book.ts'
import {expiredTolerances} from './clause-view.ts'
import {dateWords} from './dates.ts'
import {DRAFT_HISTORY} from './links.ts'
import {counted, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {changesInWords, prefaceOf} from './standard-changes.ts'
import {changeViews, draftLink, type ChangeView, type Expired} from './standard-view.ts'

interface DraftEntry {
  readonly number: number
  readonly date: string
  readonly link: string
  readonly latest: boolean
  readonly changes: readonly ChangeView[]
  readonly note: string
  /** Markdown */
  readonly preface: string
}

export interface DraftHistory {
  readonly lead: string
  readonly drafts: readonly DraftEntry[]
  /** what was accepted for some seasons and no longer is, by the latest draft */
  readonly expired: readonly Expired[]
  /** from the first draft to the latest, where others lie between them; null: there is nothing between, or nothing changed */
  readonly overall: {readonly title: string; readonly link: string; readonly changes: readonly ChangeView[]} | null
}

/** Null while there are fewer than two drafts: nothing has changed yet. */
export function draftHistoryPage(book: Logbook): Page | null {
  if (book.drafts.length < 2) return null
  const drafts = book.drafts.map((draft, index): DraftEntry => {
    const before = book.drafts[index - 1]
    const changes = before ? changeViews(changesInWords(book, before, draft)) : []
    return {
      number: draft.number, date: dateWords(draft.on), link: draftLink(book, draft), latest: index === book.drafts.length - 1, changes, preface: prefaceOf(draft),
      note: !before ? 'The first draft.' : changes.length === 0 ? 'Nothing in the wording, the weights or the points was changed.' : `${sentence(counted(changes.length, 'change'))}.`,
    }
  })
  const first = book.drafts[0], last = book.drafts.at(-1)
  const whole = first && last && book.drafts.length > 2 ? changeViews(changesInWords(book, first, last)).map(change => ({...change, why: null})) : []
  const overall = first && last && whole.length > 0 ? {title: `From draft ${first.number} to draft ${last.number}`, link: draftLink(book, last), changes: whole} : null
  const lead = first && last ? `${sentence(counted(book.drafts.length, 'draft'))}, ${dateWords(first.on)} to ${dateWords(last.on)}.` : ''
  return {
    path: DRAFT_HISTORY, template: 'draft-history', title: 'What changed from draft to draft', section: 'standard',
    view: {lead, drafts: drafts.reverse(), expired: last ? expiredTolerances(last, book.asOf) : [], overall} satisfies DraftHistory, search: {kind: 'standard', words: 'drafts changes reasons'},
  }
}
