/** What changed from one draft of the standard to another, put into words, with the words marked and the reason where the keeper wrote one. */
import {changesOfBook, rowId, type ClauseChange, type HeadChange, type SectionChange, type WeightChange} from '../findings/standard-changes.ts'
import type {WordRun} from '../findings/word-changes.ts'
import {slug} from '../logbook/draft-sections.ts'
import type {Clause, Draft, Logbook} from '../logbook/book.ts'
import {MANNER_WORDS} from '../logbook/manners.ts'
import {plainWords} from '../logbook/plain-words.ts'
import {askChangeWords} from './ask-words.ts'
import {metricWeight, weightRange} from './both-weights.ts'
import {reworded, type MarkedWords} from './marked-words.ts'
import {sentence} from './numbers.ts'

export interface Change {
  /** steady from draft to draft: a clause's id, `weights/pullet`, `scale/condition`, `egg` … */
  readonly id: string
  /** `Tail, male` */
  readonly what: string
  /** the sentences that differ, their words marked; empty: what was and what is are told one after the other, or there is nothing to tell */
  readonly marked: readonly MarkedWords[]
  /** only the sentences that differ. Null: it is new, or its words stayed */
  readonly was: string | null
  /** Null: sentences were taken out and none put in their place, or its words stayed */
  readonly now: string | null
  /** what else changed, each a sentence: place, name, range, what it is to miss it */
  readonly more: readonly string[]
  /** the whole piece is new */
  readonly fresh: boolean
  /** the whole piece was taken out */
  readonly gone: boolean
  /** words that can be set in quotation marks, rather than amounts */
  readonly quoted: boolean
  readonly why: string | null
}

/** `general characteristics, male` → `male`: what tells two clauses of one name apart. */
const shortPlace = (sectionTitle: string): string => (sectionTitle.split(/,\s*/).at(-1) ?? sectionTitle).toLowerCase()

/** A clause's name, with its variety or its place where another clause has the same name. */
export function clauseName(draft: Draft, clause: Clause): string {
  if (clause.variety !== null && clause.variety !== clause.title) return `${clause.title}, ${clause.variety}`
  const namesakes = draft.sections.filter(section => section.clauses.some(each => each.title === clause.title))
  const own = draft.sections.find(section => section.clauses.some(each => each.id === clause.id))
  if (own?.kind === 'faults' && /^(?:minor|slight|serious|grave|major)$/i.test(clause.title)) return `${clause.title} faults`
  return namesakes.length > 1 && own ? `${clause.title}, ${shortPlace(own.title)}` : clause.title
}

/** What stands above the first heading: words on the draft, not of the standard. */
export const prefaceOf = (draft: Draft): string => draft.sections.filter(({title}) => title === '').map(({lead}) => lead).join('\n\n')

const orNull = (text: string): string | null => (text === '' ? null : text)
const NOTHING = {marked: [], was: null, now: null} as const
const inWords = (runs: readonly WordRun[] | null): Pick<Change, 'marked' | 'was' | 'now'> => (runs === null ? NOTHING : reworded(runs))

const HEADS: Readonly<Record<HeadChange['id'], string>> = {
  title: 'Title', manner: 'Manner of the standard', origin: 'Origin and purpose', classification: 'Classification', egg: 'Egg', 'egg/at-least': 'Egg, least weight', 'rings/male': 'Ring size, male', 'rings/female': 'Ring size, female',
}
const AMOUNTS: readonly HeadChange['id'][] = ['manner', 'egg/at-least', 'rings/male', 'rings/female']

function headChange({id, before, after, words, why}: HeadChange): Change {
  const told = (value: string | number | null): string | null => (value === null ? null : typeof value === 'number' ? metricWeight(value) : value)
  const amount = AMOUNTS.includes(id)
  if (id === 'manner') return {id, what: HEADS[id], ...NOTHING, more: [after === null ? 'Sections now stand as they were written.' : `Now set in the ${Object.entries(MANNER_WORDS).find(([manner]) => manner === after)?.[1] ?? after} manner.`], fresh: false, gone: false, quoted: false, why}
  return {id, what: HEADS[id], ...(amount ? {...NOTHING, was: told(before), now: told(after)} : inWords(words)), more: [], fresh: before === null, gone: after === null, quoted: !amount, why}
}

function sectionChange({id, before, after, retitled, moved, words, why}: SectionChange): Change {
  const what = after?.title ?? before?.title ?? id
  const more = [...(retitled && before ? [`The section was called ${before.title}.`] : []), ...(moved ? ['The section stands at another place.'] : [])]
  return {id, what, ...inWords(words), more, fresh: before === null, gone: after === null, quoted: true, why}
}

function placeWords({is, before, after, retitled, moved}: ClauseChange): readonly string[] {
  const named = retitled && before ? [`It was called ${before.title}.`] : []
  if (!moved || !before || !after) return named
  const under = after.variety !== null && after.variety !== before.variety ? `Now under ${after.variety}` : 'Moved to another place'
  return [...named, is === 'moved' ? `${under}, the words as they were.` : `${under}.`]
}

function clauseChange(from: Draft, to: Draft, change: ClauseChange, units: Units): Change {
  const {id, is, before, after, words, asks, why} = change
  const what = after ? clauseName(to, after) : before ? clauseName(from, before) : id
  const whole = is === 'added' || is === 'dropped' ? {marked: [], was: orNull(plainWords(before?.text ?? '')), now: orNull(plainWords(after?.text ?? ''))} : inWords(words)
  return {id, what, ...whole, more: [...placeWords(change), ...asks.map(ask => askChangeWords(ask, units))], fresh: is === 'added', gone: is === 'dropped', quoted: true, why}
}

function weightChange({class: name, is, before, after, why}: WeightChange): Change {
  const words = (weight: WeightChange['before']): string | null => weight && weightRange(weight.grams, weight.high, metricWeight)
  const ranged = (before?.high ?? after?.high ?? null) !== null
  const more = ranged && is === 'wider' ? ['Range widened.'] : ranged && is === 'narrower' ? ['Range narrowed.'] : []
  return {id: rowId('weights', name), what: `${sentence(name)}, weight`, marked: [], was: words(before), now: words(after), more, fresh: before === null, gone: after === null, quoted: false, why}
}

type Units = Logbook['project']['units']

/** Every change from one draft to another: its head, its sections and clauses, its weights, its points, its varieties. */
export function changesInWords(book: Pick<Logbook, 'drafts' | 'project'>, from: Draft, to: Draft): readonly Change[] {
  const {head, sections, clauses, rows, weights, points, varieties} = changesOfBook(book, from, to), {units} = book.project
  const asked = new Map(rows.map(({id, asks, before, after, why}) => [id, {more: asks.map(ask => askChangeWords(ask, units)), title: (after ?? before)?.title ?? id, why}]))
  const withAsked = (change: Change): Change => {
    const more = asked.get(change.id)?.more ?? []
    asked.delete(change.id)
    return more.length === 0 ? change : {...change, more: [...change.more, ...more]}
  }
  const told = [
    ...head.map(headChange), ...sections.map(sectionChange), ...clauses.map(change => clauseChange(from, to, change, units)), ...weights.map(weightChange),
    ...points.map(({name, before, after, why}): Change => ({
      id: rowId('scale', name), what: `${sentence(name)}, points`, marked: [], was: before === null ? null : String(before), now: after === null ? null : String(after), more: [], fresh: before === null, gone: after === null, quoted: false, why,
    })),
    ...varieties.map(({name, is, why}): Change => ({
      id: `varieties/${slug(name)}`, what: `Variety, ${name}`, ...NOTHING, more: [is === 'added' ? 'A new variety.' : is === 'dropped' ? 'No longer a variety.' : 'It is told by other looks than before.'], fresh: is === 'added', gone: is === 'dropped', quoted: false, why,
    })),
  ].map(withAsked)
  // what is asked of a row whose table stayed as it was
  return [...told, ...[...asked].map(([id, {more, title, why}]): Change => ({id, what: title, ...NOTHING, more, fresh: false, gone: false, quoted: false, why}))]
}
