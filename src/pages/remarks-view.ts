/** What the judges said, under the clauses of the standard that it is about. */
import {grouped} from '../findings/grouped.ts'
import type {RemarksByClause, RemarksOfClause} from '../findings/remarks-by-clause.ts'
import type {ShowResult} from '../findings/show-results.ts'
import type {Bird, Logbook} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {anchorOf} from './clause-view.ts'
import {birdPath, showPath} from './links.ts'
import {figured} from './numbers.ts'
import {quoted} from './show-words.ts'
import {clauseName} from './standard-changes.ts'
import {draftLink} from './standard-view.ts'

interface RemarkView {
  readonly bird: {readonly band: string; readonly link: string}
  readonly remark: string
  /** `2025`, to the show */
  readonly when: {readonly words: string; readonly link: string}
  readonly judge: string | null
  /** by the keeper's own word */
  readonly byUs: boolean
}

/** Remarks since the clause reads as it does now, or before it was changed. */
interface RemarkGroup {
  /** `Before it was changed in draft 5` */
  readonly head: string | null
  readonly remarks: readonly RemarkView[]
}

export interface RemarksView {
  readonly words: string
  readonly clauses: readonly {readonly name: string; readonly link: string; readonly note: string | null; readonly groups: readonly RemarkGroup[]; readonly more: string | null}[]
  readonly unplaced: readonly RemarkView[]
  readonly moreUnplaced: string | null
}

/** Of one clause so many stand here, the newest; the others stand with their shows. */
const MOST = 20

const moreWords = (count: number): string | null => (count <= MOST ? null : `${figured(count - MOST, 'earlier remark')} on the pages of the shows.`)

export function remarksView({clauses, unplaced, byKeeper, byWords}: RemarksByClause, book: Logbook): RemarksView | null {
  if (byKeeper + byWords + unplaced.length === 0) return null
  return {words: placedWords(byKeeper, byWords, unplaced.length), clauses: clauses.map(of => clauseView(of, book)), unplaced: unplaced.slice(0, MOST).map(each => remarkView(each, false)), moreUnplaced: moreWords(unplaced.length)}
}

function placedWords(byKeeper: number, byWords: number, unplaced: number): string {
  const parts = [...(byWords > 0 ? [`${byWords} by the words in ${byWords === 1 ? 'it' : 'them'}`] : []), ...(byKeeper > 0 ? [`${byKeeper} by us, and ${byKeeper === 1 ? 'is' : 'are'} marked so`] : [])]
  const placed = byKeeper + byWords, fit = unplaced === 1 ? 'fits' : 'fit'
  if (placed === 0) return `${figured(unplaced, 'remark')} ${fit} no clause of the standard of the day.`
  return `Of ${figured(placed + unplaced, 'remark')}, ${placed === 1 ? 'one was' : `${placed} were`} put under clauses: ${parts.join('; ')}.${unplaced === 0 ? '' : ` ${unplaced} ${fit} no clause and ${unplaced === 1 ? 'stands' : 'stand'} last.`}`
}

function clauseView(of: RemarksOfClause, book: Logbook): RemarksView['clauses'][number] {
  const {id, weightOf, clause, draft, stands, remarks} = of
  return {
    name: clause ? clauseName(draft, clause) : weightOf === null ? 'Egg' : `Weight, ${weightOf}`, link: `${draftLink(book, draft)}#${anchorOf(id)}`, note: stands ? null : `no longer in draft ${book.drafts.at(-1)?.number ?? ''}`,
    groups: [...grouped(remarks.slice(0, MOST), ({since}) => (since === null ? null : `Before it was ${since.is} in draft ${since.draft.number}`))].map(([head, own]) => ({head, remarks: own.map(each => remarkView(each, each.by === 'keeper'))})),
    more: moreWords(remarks.length),
  }
}

const bandLink = (bird: Bird): RemarkView['bird'] => ({band: bird.band, link: birdPath(bird)})

function remarkView({entry, show}: ShowResult, byUs: boolean): RemarkView {
  return {bird: bandLink(entry.bird), remark: quoted(entry.remark ?? ''), when: {words: String(yearOf(show.on.first)), link: showPath(show)}, judge: entry.judge, byUs}
}
