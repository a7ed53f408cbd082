/** Shows with the judges' words, drafts of the standard, and care in the time of a summary, each a line. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {Findings} from '../findings/study.ts'
import type {Show} from '../logbook/book.ts'
import {careCaution, careWords} from './care-words.ts'
import {dateWords} from './dates.ts'
import {counted, figured, listWords, sentence} from './numbers.ts'
import {placing} from './show-words.ts'
import {changesInWords} from './standard-changes.ts'

export interface Told {
  readonly when: string
  readonly title: string
  readonly text: string
}

/** Remarks and entries of one list at most; the rest are counted. */
const MOST = 8
/** Changes of a draft that are named. */
const CHANGES = 5

const more = (count: number, thing: string): string => (count > 0 ? ` And ${figured(count, `more ${thing}`)}.` : '')

function showText({entries}: Show, mine: (step: string) => boolean): string {
  const own = entries.filter(({bird}) => mine(bird.step.label)), said = own.filter(({remark}) => remark !== null)
  const placed = own.map(entry => `${entry.bird.band} ${entry.class === null ? '' : `${entry.class}, `}${placing(entry)}`)
  return [
    ...(placed.length === 0 ? ['No entries on record.'] : [`${sentence(placed.slice(0, MOST).join('; '))}.${more(placed.length - MOST, 'entry')}`.replace(/entrys/, 'entries')]),
    ...said.slice(0, MOST).map(({remark, judge, bird}) => `“${remark ?? ''}” ${judge === null ? '' : `${judge} `}of ${bird.band}.`), ...(said.length > MOST ? [more(said.length - MOST, 'remark').trim()] : []),
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
    const before = book.drafts[book.drafts.indexOf(draft) - 1], changes = before ? changesInWords(before, draft) : []
    const named = changes.slice(0, CHANGES).map(({what, why}) => `${what.charAt(0).toLowerCase()}${what.slice(1)}${why === null ? '' : ` (${why.replace(/[.]$/, '')})`}`)
    return {
      when: dateWords(draft.on), title: `Draft ${draft.number}.`,
      text: !before ? 'The first draft.' : changes.length === 0 ? 'Nothing in it was changed.' : `Changed: ${listWords(named)}${changes.length > CHANGES ? `, and ${counted(changes.length - CHANGES, 'thing')} more` : ''}.`,
    }
  })
}

export function careTold({care}: FlockSummary, {book}: Pick<Findings, 'book'>): {readonly list: readonly Told[]; readonly more: string; readonly caution: string | null} {
  const all = careWords(care, book.asOf).map(({when, title, text}) => ({when, title: `${title}.`, text}))
  return {list: all.slice(0, MOST), more: more(all.length - MOST, 'entry').trim().replace(/entrys/, 'entries'), caution: careCaution(care)}
}
