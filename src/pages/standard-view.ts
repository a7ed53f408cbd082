/** One draft of the standard, arranged as the pages of a book: title block, sections with run-in heads, weights, scale of points, faults, changes. */
import type {Draft, Logbook} from '../logbook/book.ts'
import {rowId} from '../findings/standard-changes.ts'
import {isOfFaults, tellsOrigin} from '../logbook/parts-of-standard.ts'
import {inQuarters, metricWeight, ounceWeight, poundQuarters, poundWeight, weightRange} from './both-weights.ts'
import {anchorOf, expiredTolerances, missedWords, rowNote, seasonOf, sectionView, type PrintedAs, type SectionView} from './clause-view.ts'
import {dateWords} from './dates.ts'
import {draftPath, STANDARD} from './links.ts'
import {sentence} from './numbers.ts'
import {plates, type Plate} from './plates.ts'
import {changesInWords, prefaceOf, type Change} from './standard-changes.ts'
import {pieceName, standardOrder, weightsShown, type BriefKind, type StandardPiece} from './standard-order.ts'

interface BriefEntry {
  readonly id: string
  readonly term: string
  readonly words: string
  readonly changed: boolean
}

/** One piece of the standard in its place: a section, a table, or facts in a line each; what it is not is empty. */
export interface PartView {
  readonly section: SectionView | null
  readonly brief: readonly BriefEntry[]
  /** of a table */
  readonly id: string
  readonly title: string
  readonly heads: readonly string[]
  readonly weights: readonly {readonly id: string; readonly name: string; readonly amounts: readonly string[]; readonly note: string; readonly changed: boolean}[]
  readonly points: readonly {readonly id: string; readonly name: string; readonly points: number; readonly changed: boolean}[]
  readonly sum: number
}

export interface StandardView {
  readonly number: number
  readonly title: string
  readonly lead: string
  readonly replaces: string | null
  /** for an earlier draft: the one that took its place */
  readonly replacedBy: {readonly words: string; readonly link: string} | null
  readonly barNote: string | null
  readonly parts: readonly PartView[]
  /** facts that stand in the first section */
  readonly brief: readonly BriefEntry[]
  /** what the clauses say of missing them, where no section of faults holds it; null: nothing */
  readonly missed: string | null
  readonly plates: readonly Plate[]
  readonly changes: readonly ChangeView[]
  readonly changesHead: string
  readonly changesNote: string | null
  /** what was accepted for some seasons and no longer is */
  readonly expired: readonly Expired[]
  /** Markdown: what the keeper wrote above the first heading, on this draft as a whole */
  readonly preface: string
  /** few enough to stay on one sheet of paper */
  readonly fewChanges: boolean
  readonly drafts: readonly {readonly words: string; readonly link: string}[]
}

export type Expired = ReturnType<typeof expiredTolerances>[number]

export interface ChangeView extends Change {
  /** the anchor of what changed, on the page that prints it; null where it stands nowhere there */
  readonly anchor: string | null
}

/** Where a draft stands: the latest is the standard itself. */
export function draftLink(book: Logbook, draft: Draft): string {
  return draft === book.drafts.at(-1) ? STANDARD : draftPath(draft)
}

const UNPRINTED = /^(?:title|manner)$|^varieties\//

export function changeViews(changes: readonly Change[]): readonly ChangeView[] {
  return changes.map(change => ({...change, anchor: change.gone || UNPRINTED.test(change.id) ? null : anchorOf(change.id)}))
}

const NONE: PartView = {section: null, brief: [], id: '', title: '', heads: [], weights: [], points: [], sum: 0}

function eggWords({egg, eggAtLeast, manner}: Draft): string {
  if (eggAtLeast === null) return sentence(egg ?? '')
  const least = manner === 'north-american' ? `${ounceWeight(eggAtLeast)} (${metricWeight(eggAtLeast)})` : metricWeight(eggAtLeast)
  return `${sentence(egg ?? '')}, at least ${least} for hatching`
}

function briefEntry(draft: Draft, kind: BriefKind, printed: PrintedAs): readonly BriefEntry[] {
  const {male, female} = draft.rings, {changed} = printed
  const entries: Readonly<Record<BriefKind, Omit<BriefEntry, 'id'>>> = {
    classification: {term: 'Classification', words: draft.classification ?? '', changed: changed.has('classification')},
    egg: {term: pieceName(draft, 'egg', 'Egg'), words: [eggWords(draft), rowNote(draft, 'egg', printed)].filter(part => part !== '').join('. '), changed: changed.has('egg') || changed.has('egg/at-least')},
    rings: {
      term: pieceName(draft, 'rings', 'Ring sizes'), words: sentence([male && `male ${male}`, female && `female ${female}`].filter(part => part !== null && part !== '').join(', ')),
      changed: changed.has('rings/male') || changed.has('rings/female'),
    },
  }
  return entries[kind].words === '' ? [] : [{id: kind, ...entries[kind]}]
}

function weightsPart(draft: Draft, printed: PrintedAs): PartView {
  // a table in quarters of a pound is so throughout
  const quarters = draft.weights.every(({grams, high}) => inQuarters(grams) && inQuarters(high ?? grams))
  const shown = weightsShown(draft), kilos = {head: 'Metric', words: metricWeight}, pounds = {head: 'Pounds and ounces', words: shown === 'lb-then-kg' && quarters ? poundQuarters : poundWeight}
  const columns = shown === 'kg' ? [kilos] : shown === 'lb-then-kg' ? [pounds, kilos] : [kilos, pounds]
  return {
    ...NONE, id: 'weights', title: pieceName(draft, 'weights', 'Weights'), heads: columns.map(({head}) => head),
    weights: draft.weights.map(({class: name, grams, high}) => {
      const id = rowId('weights', name)
      return {id: anchorOf(id), name: sentence(name), amounts: columns.map(({words}) => weightRange(grams, high, words)), note: rowNote(draft, id, printed), changed: printed.changed.has(id)}
    }),
  }
}

const pointsPart = (draft: Draft, {changed}: PrintedAs): PartView => ({
  ...NONE, id: 'scale', title: pieceName(draft, 'points', 'Scale of points'), sum: draft.points.reduce((sum, entry) => sum + entry.points, 0),
  points: draft.points.map(({name, points}) => ({id: anchorOf(rowId('scale', name)), name: sentence(name), points, changed: changed.has(rowId('scale', name))})),
})

/** An origin written in the head stands in where no section tells it; without one the place serves the facts in brief. */
function originPart(draft: Draft, {changed}: PrintedAs): PartView {
  const lead = tellsOrigin(draft) ? '' : draft.origin ?? ''
  return {...NONE, section: {id: 'origin', title: lead === '' ? 'In brief' : pieceName(draft, 'origin', 'Origin and purpose'), lead, leadChanged: changed.has('origin'), clauses: [], first: false, note: null}}
}

function partOf(draft: Draft, piece: StandardPiece, printed: PrintedAs): PartView {
  switch (piece.is) {
    case 'section': return {...NONE, section: sectionView(piece.section, piece.title, printed)}
    case 'origin': return originPart(draft, printed)
    case 'weights': return weightsPart(draft, printed)
    case 'points': return pointsPart(draft, printed)
    default: return {...NONE, brief: briefEntry(draft, piece.is, printed)}
  }
}

const isEmpty = ({section, brief, weights, points}: PartView): boolean => section === null && brief.length === 0 && weights.length === 0 && points.length === 0

/** Facts that follow each other make one list; those that follow the first section stand in it. */
function arranged(parts: readonly PartView[], hasPlates: boolean): {readonly parts: readonly PartView[]; readonly brief: readonly BriefEntry[]} {
  const joined: PartView[] = []
  for (const part of parts.filter(each => !isEmpty(each))) {
    const last = joined.at(-1)
    if (last && last.section === null && last.brief.length > 0 && part.brief.length > 0) joined.splice(-1, 1, {...last, brief: [...last.brief, ...part.brief]})
    else joined.push(part)
  }
  const place = joined.findIndex(({section}) => section !== null), first = joined[place], next = joined[place + 1]
  if (!first?.section) return {parts: joined, brief: []}
  const brief = next?.brief ?? []
  const rest = joined.filter((_, index) => index !== place && (brief.length === 0 || index !== place + 1))
  const isBare = first.section.id === 'origin' && first.section.lead === '' && first.section.clauses.length === 0 && first.section.title === 'In brief' && brief.length === 0 && !hasPlates
  if (isBare) return arranged(rest, hasPlates)
  return {parts: [...rest.slice(0, place), {...first, section: {...first.section, first: true}}, ...rest.slice(place)], brief}
}

function changesNote(draft: Draft, before: Draft | undefined, changes: readonly Change[]): string | null {
  if (!before) return 'This is the first draft.'
  if (changes.length === 0) return `Nothing in the wording, the weights or the points differs from draft ${before.number}.`
  return `Birds scored under draft ${before.number} are not compared with birds scored under draft ${draft.number} on what these clauses now ask otherwise.`
}

/** A draft as a view, with its bars and changes against the draft before. */
export function standardView(book: Logbook, draft: Draft): StandardView {
  const index = book.drafts.indexOf(draft)
  const before = book.drafts[index - 1], after = book.drafts[index + 1]
  const changes = before ? changesInWords(book, before, draft) : []
  const printed: PrintedAs = {changed: new Set(changes.map(change => change.id)), units: book.project.units, season: after ? null : seasonOf(book.asOf)}
  const pictures = plates(draft.photos, book.project.name, true)
  const order = standardOrder(draft), faults = order.findLastIndex(piece => piece.is === 'section' && isOfFaults(piece.section)), missed = missedWords(draft)
  const noted = (part: PartView, place: number): PartView => (place === faults && part.section ? {...part, section: {...part.section, note: missed}} : part)
  const {parts, brief} = arranged(order.map((piece, place) => noted(partOf(draft, piece, printed), place)), pictures.length > 0)
  return {
    number: draft.number, title: draft.title === '' ? `The ${book.project.name}` : draft.title,
    lead: `Proposed breed standard, ${dateWords(draft.on)}.`, replaces: before ? `Replaces draft ${before.number} of ${dateWords(before.on)}.` : null,
    replacedBy: after ? {words: `draft ${after.number} of ${dateWords(after.on)}`, link: draftLink(book, after)} : null,
    barNote: before && changes.length > 0 ? `A bar beside a clause marks a change since draft ${before.number}.` : null,
    parts, brief, missed: faults === -1 ? missed : null, plates: pictures,
    changes: changeViews(changes), changesHead: `What changed in draft ${draft.number}`, changesNote: changesNote(draft, before, changes), expired: after ? [] : expiredTolerances(draft, book.asOf),
    preface: prefaceOf(draft), fewChanges: changes.length <= 8,
    drafts: book.drafts.filter(each => each !== draft).map(each => ({words: `Draft ${each.number}, ${dateWords(each.on)}`, link: draftLink(book, each)})).reverse(),
  }
}
