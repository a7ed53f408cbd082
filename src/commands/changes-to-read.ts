/** `pinfeather figures changes`: what changed between any two drafts of the standard, as a reader on a terminal wants it. The words that went and came stand in square brackets. */
import {changesTable} from '../findings/changes-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import {changesOfBook} from '../findings/standard-changes.ts'
import type {Findings} from '../findings/study.ts'
import type {Draft} from '../logbook/book.ts'
import {dateWords} from '../pages/dates.ts'
import type {MarkedWords} from '../pages/marked-words.ts'
import {figured} from '../pages/numbers.ts'
import {changesInWords, type Change} from '../pages/standard-changes.ts'
import type {ToRead} from './forecast-to-read.ts'
import {Refusal} from './refusal.ts'

/** The drafts by their numbers; without them the last two. */
export interface DraftsAsked {
  readonly from?: string | undefined
  readonly to?: string | undefined
}

function draftOf(drafts: readonly Draft[], option: string, number: string): Draft {
  const there = `drafts are ${drafts.map(each => each.number).join(', ')}`
  const found = drafts.find(each => String(each.number) === number.trim().replace(/^draft\s+/i, ''))
  if (!found) throw new Refusal(`There is no draft ${number} for ${option}; ${there}.`)
  return found
}

/** @throws {Refusal} where there is nothing between the two */
export function draftsAsked({drafts}: Findings['book'], {from, to}: DraftsAsked): readonly [Draft, Draft] {
  const last = drafts.at(-1)
  if (!last || drafts.length < 2) throw new Refusal(last ? `There is only draft ${last.number} of the standard: nothing has changed yet.` : 'The standard has not been drafted.')
  const later = to === undefined ? last : draftOf(drafts, '--to', to)
  const before = from === undefined ? drafts[drafts.indexOf(later) - 1] : draftOf(drafts, '--from', from)
  if (!before) throw new Refusal(`Draft ${later.number} is the first; nothing changed before it.`)
  if (before === later) throw new Refusal(`Say two drafts; draft ${later.number} cannot have changed from itself.`)
  if (drafts.indexOf(before) > drafts.indexOf(later)) throw new Refusal(`Draft ${before.number} is later than draft ${later.number}; ask --from ${later.number} --to ${before.number}.`)
  return [before, later]
}

export function changesFigures({book}: Findings, asked: DraftsAsked): FiguresTable {
  const [from, to] = draftsAsked(book, asked)
  return changesTable(changesOfBook(book, from, to), book.tellableFiles)
}

const lined = (marked: readonly MarkedWords[], left: 'in' | 'out'): string =>
  marked.filter(each => !each[left]).map(({out, in: put, text}) => (out || put ? `[${text}]` : text)).join('').replace(/\s+/g, ' ').replace(/ (?=[.,;:!?](?: |$))/g, '').trim()

function wordsOf({marked, was, now}: Change): readonly string[] {
  const before = marked.length > 0 ? lined(marked, 'in') : was, after = marked.length > 0 ? lined(marked, 'out') : now
  return [...(before === null ? [] : [`  was  ${before}`]), ...(after === null ? [] : [`  is   ${after}`])]
}

const told = (change: Change): string => [change.what, ...wordsOf(change), ...change.more.map(words => `  ${words}`), ...(change.why === null ? [] : [`  Why: ${change.why}`])].join('\n')

/** `added`, `reworded`, `range narrowed` …; the first two things, and how many more. */
function kindOf({fresh, gone, was, now, marked, more, quoted}: Change): string {
  if (gone || fresh) return gone ? 'dropped' : 'added'
  const words = was === null && now === null && marked.length === 0 ? [] : [quoted ? 'reworded' : 'changed']
  const things = [...words, ...more.map(each => each.replace(/[:,.;].*$/s, '')).map(each => each.charAt(0).toLowerCase() + each.slice(1))]
  return things.length <= 2 ? things.join(', ') : `${things.slice(0, 2).join(', ')} and ${figured(things.length - 2, 'thing')} more`
}

export function changesToRead({book}: Findings, asked: DraftsAsked): ToRead {
  const [from, to] = draftsAsked(book, asked), changes = changesInWords(book, from, to)
  return {
    above: `Draft ${from.number} of ${dateWords(from.on)} and draft ${to.number} of ${dateWords(to.on)}: ${figured(changes.length, 'piece')} ${changes.length === 1 ? 'differs' : 'differ'}.\n\n`,
    table: {columns: ['piece', 'what', 'change'].map(name => ({name, as: 'text'})), rows: changes.map(change => [change.id, change.what, kindOf(change)])},
    beneath: changes.length === 0 ? '' : `\n${changes.map(told).join('\n\n')}\n\nIn square brackets: words that went, and that came. Every single change with --format csv or json.\n`,
  }
}
