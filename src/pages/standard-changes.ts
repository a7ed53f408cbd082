/** What changed from one draft of the standard to the next, put into words, with the reason where the keeper wrote one. */
import {changesBetween as found} from '../findings/standard-changes.ts'
import type {AmountChange, ClauseChange} from '../findings/standard-changes.ts'
import type {Clause, Draft} from '../logbook/book.ts'
import {metricWeight} from './both-weights.ts'
import {sentence} from './numbers.ts'

export interface Change {
  /** steady from draft to draft: a clause's id, `weights/pullet`, `scale/condition`, `egg` … */
  readonly id: string
  /** `Tail, male` */
  readonly what: string
  /** Markdown; only the sentences that differ. Null: it is new, or only moved */
  readonly was: string | null
  /** Null: sentences were taken out and none put in their place, or it was only moved */
  readonly now: string | null
  /** the whole piece was taken out */
  readonly gone: boolean
  readonly moved: boolean
  /** words that can be set in quotation marks, rather than amounts */
  readonly quoted: boolean
  readonly why: string | null
}

/** `general characteristics, male` → `male`: what tells two clauses of one name apart. */
const shortPlace = (sectionTitle: string): string => (sectionTitle.split(/,\s*/).at(-1) ?? sectionTitle).toLowerCase()

/** `weights/pullet`, `scale/type-and-carriage`: the id of a row in a table of the standard. */
export const rowId = (table: 'weights' | 'scale', name: string): string => `${table}/${name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '')}`

/** A clause's name, with its place where another clause has the same name. */
export function clauseName(draft: Draft, clause: Clause): string {
  const namesakes = draft.sections.filter(section => section.clauses.some(each => each.title === clause.title))
  const own = draft.sections.find(section => section.clauses.some(each => each.id === clause.id))
  return namesakes.length > 1 && own ? `${clause.title}, ${shortPlace(own.title)}` : clause.title
}

const sentencesOf = (text: string): string[] => text.split(/(?<=[.;:!?])\s+/)

/** The sentences of two texts that differ, without those they begin and end with alike. */
export function differing(was: string, now: string): {readonly was: string; readonly now: string} {
  const before = sentencesOf(was.trim()), after = sentencesOf(now.trim())
  let start = 0
  while (start < before.length && start < after.length && before[start] === after[start]) start += 1
  let end = 0
  while (end < before.length - start && end < after.length - start && before.at(-1 - end) === after.at(-1 - end)) end += 1
  const between = (pieces: readonly string[]): string => pieces.slice(start, pieces.length - end).join(' ').replace(/[;:]$/, '')
  return {was: between(before), now: between(after)}
}

/** The reason written for a piece: by its whole id, else by its part's (`weights` for every weight). */
const reasonFor = (draft: Draft, id: string): string | null => draft.reasons.get(id) ?? draft.reasons.get(id.split('/')[0] ?? id) ?? null

const orNull = (text: string): string | null => (text === '' ? null : text)

function textChange(draft: Draft, id: string, what: string, before: string | null, after: string | null, quoted: boolean): Change | null {
  const was = before?.trim() ?? '', now = after?.trim() ?? ''
  if (was === now) return null
  const shown = quoted ? differing(was, now) : {was, now}
  return {id, what, was: orNull(shown.was), now: orNull(shown.now), gone: now === '', moved: false, quoted, why: reasonFor(draft, id)}
}

export const ORIGIN = /origin|purpose/i

/** Has the draft a section of its own on its origin? */
export const tellsOrigin = (draft: Draft): boolean => draft.sections.some(({title}) => ORIGIN.test(title))

/** What stands above the first heading: words on the draft, not of the standard. */
export const prefaceOf = (draft: Draft): string => draft.sections.filter(({title}) => title === '').map(({lead}) => lead).join('\n\n')

/** What stands in the head of a draft, and what leads its sections in. */
function headChanges(from: Draft, to: Draft): readonly Change[] {
  const sections = [...to.sections, ...from.sections.filter(old => !to.sections.some(({id}) => id === old.id))].filter(({title}) => title !== '')
  const leadOf = (draft: Draft, id: string): string | null => draft.sections.find(section => section.id === id)?.lead ?? null
  return [
    tellsOrigin(from) || tellsOrigin(to) ? null : textChange(to, 'origin', 'Origin and purpose', from.origin, to.origin, true),
    textChange(to, 'classification', 'Classification', from.classification, to.classification, true),
    textChange(to, 'egg', 'Egg', from.egg, to.egg, true),
    textChange(to, 'rings/male', 'Ring size, male', from.rings.male, to.rings.male, false),
    textChange(to, 'rings/female', 'Ring size, female', from.rings.female, to.rings.female, false),
    ...sections.map(({id, title}) => textChange(to, id, title, leadOf(from, id), leadOf(to, id), true)),
  ].filter(change => change !== null)
}

function clauseChange(from: Draft, to: Draft, {id, is, before, after, why}: ClauseChange): Change {
  const what = after ? clauseName(to, after) : before ? clauseName(from, before) : id
  const shown = is === 'moved' ? {was: '', now: ''} : differing(before?.text ?? '', after?.text ?? '')
  return {id, what, was: orNull(shown.was), now: orNull(shown.now), gone: is === 'dropped', moved: is === 'moved', quoted: true, why: why ?? reasonFor(to, id)}
}

function amountChange(to: Draft, table: 'weights' | 'scale', {name, before, after}: AmountChange): Change {
  const words = (value: number | null): string | null => (value === null ? null : table === 'weights' ? metricWeight(value) : String(value))
  const id = rowId(table, name)
  const what = `${sentence(name)}, ${table === 'weights' ? 'weight' : 'points'}`
  return {id, what, was: words(before), now: words(after), gone: after === null, moved: false, quoted: false, why: reasonFor(to, id)}
}

/** Every change from one draft to the next: its head, its clauses, its weights and its points. */
export function changesInWords(from: Draft, to: Draft): readonly Change[] {
  const {clauses, weights, points} = found(from, to)
  return [
    ...headChanges(from, to), ...clauses.map(change => clauseChange(from, to, change)),
    ...weights.map(change => amountChange(to, 'weights', change)), ...points.map(change => amountChange(to, 'scale', change)),
  ]
}
