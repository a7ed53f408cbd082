/** What changed from one draft of the standard to the next, clause by clause, with the reason where the keeper wrote one. */
import type {Clause, Draft} from '../logbook/book.ts'
import {metricWeight} from './both-weights.ts'
import {sentence} from './numbers.ts'

export interface Change {
  /** steady from draft to draft: a clause's id, `weights/pullet`, `scale/condition`, `egg` … */
  readonly id: string
  /** `Tail, male` */
  readonly what: string
  /** Markdown; only the sentences that differ. Null: it is new */
  readonly was: string | null
  /** Null: sentences were taken out and none put in their place */
  readonly now: string | null
  /** the whole piece was taken out */
  readonly gone: boolean
  /** words that can be set in quotation marks, rather than amounts */
  readonly quoted: boolean
  readonly why: string | null
}

type Piece = {readonly what: string; readonly words: string; readonly quoted: boolean}

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

/** Everything a draft says, piece by piece, in the order it is printed. */
function piecesOf(draft: Draft): Map<string, Piece> {
  const pieces = new Map<string, Piece>()
  const put = (id: string, what: string, words: string | null, quoted: boolean): void => {
    if (words !== null && words.trim() !== '') pieces.set(id, {what, words: words.trim(), quoted})
  }
  put('origin', 'Origin and purpose', draft.origin, true)
  put('classification', 'Classification', draft.classification, true)
  put('egg', 'Egg', draft.egg, true)
  put('rings/male', 'Ring, male', draft.rings.male, false)
  put('rings/female', 'Ring, female', draft.rings.female, false)
  for (const section of draft.sections) {
    put(section.id, section.title, section.lead, true)
    for (const clause of section.clauses) put(clause.id, clauseName(draft, clause), clause.text, true)
  }
  for (const {class: name, grams} of draft.weights) put(rowId('weights', name), `${sentence(name)}, weight`, metricWeight(grams), false)
  for (const {name, points} of draft.points) put(rowId('scale', name), `${sentence(name)}, points`, String(points), false)
  return pieces
}

const sentencesOf = (text: string): string[] => text.split(/(?<=[.;:!?])\s+/)

/** The sentences of two texts that differ, without those they begin and end with alike. */
export function differing(was: string, now: string): {readonly was: string; readonly now: string} {
  const before = sentencesOf(was), after = sentencesOf(now)
  let start = 0
  while (start < before.length && start < after.length && before[start] === after[start]) start += 1
  let end = 0
  while (end < before.length - start && end < after.length - start && before.at(-1 - end) === after.at(-1 - end)) end += 1
  const between = (pieces: readonly string[]): string => pieces.slice(start, pieces.length - end).join(' ').replace(/[;:]$/, '')
  return {was: between(before), now: between(after)}
}

/** The reason written for a piece: by its whole id, else by its section's (`weights` for every weight). */
function reasonFor(draft: Draft, id: string): string | null {
  return draft.reasons.get(id) ?? draft.reasons.get(id.split('/')[0] ?? id) ?? null
}

/** Every change from one draft to the next, in the order the newer one prints it; what was taken out comes last. */
export function changesBetween(before: Draft, after: Draft): readonly Change[] {
  const old = piecesOf(before), fresh = piecesOf(after)
  const changes: Change[] = []
  for (const [id, piece] of fresh) {
    const past = old.get(id)
    if (past?.words === piece.words) continue
    const shown = past && piece.quoted ? differing(past.words, piece.words) : {was: past?.words ?? null, now: piece.words}
    const was = shown.was === '' ? null : shown.was, now = shown.now === '' ? null : shown.now
    changes.push({id, what: piece.what, was, now, gone: false, quoted: piece.quoted, why: reasonFor(after, id)})
  }
  for (const [id, past] of old) {
    if (!fresh.has(id)) changes.push({id, what: past.what, was: past.words, now: null, gone: true, quoted: past.quoted, why: reasonFor(after, id)})
  }
  return changes
}
