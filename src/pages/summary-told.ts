/** Shows with the judges' words, drafts of the standard, and care in the time of a summary, each a line. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {Findings} from '../findings/study.ts'
import type {Show} from '../logbook/book.ts'
import {careCaution, careWords} from './care-words.ts'
import {dateWords} from './dates.ts'
import {counted, figured, listWords, sentence} from './numbers.ts'
import {byClass, placing} from './show-words.ts'
import {changesInWords} from './standard-changes.ts'

export interface Told {
  readonly when: string
  readonly title: string
  readonly text: string
}

/** Care entries, and remarks of a show, at most; the rest are counted. */
const MOST = 8
const REMARKS = 2
/** Changes of a draft that are named. */
const CHANGES = 3

/** `cock 1 and 2 of 3` */
function classWords({name, entries}: ReturnType<typeof byClass>[number]): string {
  const [first] = entries, alike = entries.every(({place, of, disqualified}) => place !== null && !disqualified && of === first?.of)
  const placed = alike ? `${listWords(entries.map(({place}) => String(place)))}${first?.of === null || first?.of === undefined ? '' : ` of ${first.of}`}` : listWords(entries.map(placing))
  return `${name ?? 'no class'} ${placed}`
}

function showText(show: Show, mine: (step: string) => boolean): string {
  const own = show.entries.filter(({bird}) => mine(bird.step.label)), said = own.filter(({remark}) => remark !== null)
  const remarks = said.slice(0, REMARKS).map(({remark, judge, bird}) => `“${(remark ?? '').replace(/“/g, '‘').replace(/”/g, '’')}” (${judge === null ? '' : `${judge} of `}${bird.band})`)
  return [
    own.length === 0 ? 'No entries on record.' : `${sentence(byClass({...show, entries: own}).map(classWords).join('; '))}.`, ...remarks, ...(said.length > REMARKS ? [`And ${figured(said.length - REMARKS, 'more remark')}.`] : []),
  ].join(' ')
}

export function showsTold({shows, of, name}: FlockSummary): readonly Told[] {
  return shows.toSorted((a, b) => a.on.first - b.on.first).map(show => ({
    when: dateWords(show.on), title: `${show.name}.`,
    text: show.cancelled === null ? showText(show, step => of === 'season' || step === name) : `Officially cancelled: ${show.cancelled.replace(/[.]$/, '')}.`,
  }))
}

export function draftsTold({drafts}: FlockSummary, {book}: Pick<Findings, 'book'>): readonly Told[] {
  return drafts.map(draft => {
    const before = book.drafts[book.drafts.indexOf(draft) - 1], changes = before ? changesInWords(book, before, draft).toSorted((a, b) => Number(a.why === null) - Number(b.why === null)) : []
    const named = changes.slice(0, CHANGES).map(({what, why}) => `${what.charAt(0).toLowerCase()}${what.slice(1)}${why === null ? '' : ` (${why.replace(/[.]$/, '')})`}`)
    return {
      when: dateWords(draft.on), title: `Draft ${draft.number}.`,
      text: !before ? 'The first draft.' : changes.length === 0 ? 'Nothing in it was changed.' : `Changed: ${listWords(named)}${changes.length > CHANGES ? `, and ${counted(changes.length - CHANGES, 'thing')} more` : ''}.`,
    }
  })
}

export function careTold({care}: FlockSummary, {book}: Pick<Findings, 'book'>): {readonly list: readonly Told[]; readonly more: string; readonly caution: string | null} {
  const all = careWords(care, book.asOf).map(({when, title, text}) => ({when, title: `${title}.`, text}))
  return {list: all.slice(0, MOST), more: all.length > MOST ? `And ${figured(all.length - MOST, 'more entry', 'more entries')}.` : '', caution: careCaution(care)}
}
