/** One draft of the standard, arranged as the pages of a book: title block, sections with run-in heads, weights, scale of points, faults, changes. */
import type {Clause, Draft, Logbook} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {metricWeight, poundWeight} from './both-weights.ts'
import {dateWords} from './dates.ts'
import {draftPath, STANDARD, traitPath} from './links.ts'
import {sentence} from './numbers.ts'
import {plates, type Plate} from './plates.ts'
import {changesInWords, ORIGIN, prefaceOf, rowId, tellsOrigin, type Change} from './standard-changes.ts'

interface ClauseView {
  readonly id: string
  readonly title: string
  /** Markdown */
  readonly text: string
  readonly changed: boolean
  readonly trait: string | null
}

interface SectionView {
  readonly id: string
  readonly title: string
  /** Markdown */
  readonly lead: string
  readonly leadChanged: boolean
  readonly clauses: readonly ClauseView[]
  /** the section after which classification, egg, ring and plates stand */
  readonly first: boolean
}

export interface StandardView {
  readonly number: number
  readonly title: string
  readonly lead: string
  readonly replaces: string | null
  /** for an earlier draft: the one that took its place */
  readonly replacedBy: {readonly words: string; readonly link: string} | null
  readonly barNote: string | null
  readonly body: readonly SectionView[]
  readonly faults: readonly SectionView[]
  readonly brief: readonly {readonly id: string; readonly term: string; readonly words: string; readonly changed: boolean}[]
  readonly plates: readonly Plate[]
  readonly weights: readonly {readonly id: string; readonly name: string; readonly metric: string; readonly pounds: string; readonly changed: boolean}[]
  readonly points: readonly {readonly id: string; readonly name: string; readonly points: number; readonly changed: boolean}[]
  readonly sum: number
  readonly changes: readonly ChangeView[]
  readonly changesHead: string
  readonly changesNote: string | null
  /** Markdown: what the keeper wrote above the first heading, on this draft as a whole */
  readonly preface: string
  /** few enough to stay on one sheet of paper */
  readonly fewChanges: boolean
  readonly drafts: readonly {readonly words: string; readonly link: string}[]
}

export interface ChangeView extends Change {
  /** the anchor of what changed, on the page that prints it; null when it was taken out */
  readonly anchor: string | null
}

/** Where a draft stands: the latest is the standard itself. */
export function draftLink(book: Logbook, draft: Draft): string {
  return draft === book.drafts.at(-1) ? STANDARD : draftPath(draft)
}

const FAULTS = /fault|defect|disqualif/i
/** Both rings stand in one line of the brief facts, so they share its anchor. */
const anchorOf = (id: string): string => (id.startsWith('rings/') ? 'rings' : fileName(id.replaceAll('/', '-')))

export function changeViews(changes: readonly Change[]): readonly ChangeView[] {
  return changes.map(change => ({...change, anchor: change.gone ? null : anchorOf(change.id)}))
}

function clauseView(clause: Clause, changed: ReadonlySet<string>): ClauseView {
  return {id: anchorOf(clause.id), title: clause.title, text: clause.text, changed: changed.has(clause.id), trait: clause.trait ? traitPath(clause.trait) : null}
}

/** The sections with a heading; the first one carries the brief facts and plates. An origin written in the head stands in where no section tells it. */
function sectionViews(draft: Draft, changed: ReadonlySet<string>): readonly SectionView[] {
  const views = draft.sections.filter(section => section.title !== '').map((section): SectionView => ({
    id: anchorOf(section.id), title: section.title, lead: section.lead, leadChanged: changed.has(section.id),
    clauses: section.clauses.map(clause => clauseView(clause, changed)), first: false,
  }))
  const [opening, ...rest] = views
  if (opening && ORIGIN.test(opening.title)) return [{...opening, first: true}, ...rest]
  const lead = tellsOrigin(draft) ? '' : draft.origin ?? ''
  return [{id: 'origin', title: lead === '' ? 'In brief' : 'Origin and purpose', lead, leadChanged: changed.has('origin'), clauses: [], first: true}, ...views]
}

function briefOf(draft: Draft, changed: ReadonlySet<string>): StandardView['brief'] {
  const {male, female} = draft.rings
  const rings = [male && `male ${male}`, female && `female ${female}`].filter(part => part !== null && part !== '').join(', ')
  return [
    {id: 'classification', term: 'Classification', words: draft.classification ?? '', changed: changed.has('classification')},
    {id: 'egg', term: 'Egg', words: sentence(draft.egg ?? ''), changed: changed.has('egg')},
    {id: 'rings', term: 'Ring sizes', words: sentence(rings), changed: changed.has('rings/male') || changed.has('rings/female')},
  ].filter(entry => entry.words !== '')
}

function changesNote(draft: Draft, before: Draft | undefined, changes: readonly Change[]): string | null {
  if (!before) return 'This is the first draft.'
  if (changes.length === 0) return `Nothing in the wording, the weights or the points differs from draft ${before.number}.`
  return `Birds scored under draft ${before.number} are not compared with birds scored under draft ${draft.number} on these clauses.`
}

/** A draft as a view, with its bars and changes against the draft before. */
export function standardView(book: Logbook, draft: Draft): StandardView {
  const index = book.drafts.indexOf(draft)
  const before = book.drafts[index - 1], after = book.drafts[index + 1]
  const changes = before ? changesInWords(before, draft) : []
  const changed = new Set(changes.map(change => change.id))
  const sections = sectionViews(draft, changed)
  const replaces = before ? `Replaces draft ${before.number} of ${dateWords(before.on)}.` : null
  return {
    number: draft.number, title: draft.title === '' ? `The ${book.project.name}` : draft.title,
    lead: `Proposed breed standard, ${dateWords(draft.on)}.`, replaces,
    replacedBy: after ? {words: `draft ${after.number} of ${dateWords(after.on)}`, link: draftLink(book, after)} : null,
    barNote: before && changes.length > 0 ? `A bar beside a clause marks a change since draft ${before.number}.` : null,
    body: sections.filter(section => !FAULTS.test(section.title)), faults: sections.filter(section => FAULTS.test(section.title)),
    brief: briefOf(draft, changed), plates: plates(draft.photos, book.project.name, true),
    weights: draft.weights.map(({class: name, grams}) =>
      ({id: anchorOf(rowId('weights', name)), name: sentence(name), metric: metricWeight(grams), pounds: poundWeight(grams), changed: changed.has(rowId('weights', name))})),
    points: draft.points.map(({name, points}) => ({id: anchorOf(rowId('scale', name)), name: sentence(name), points, changed: changed.has(rowId('scale', name))})),
    sum: draft.points.reduce((sum, entry) => sum + entry.points, 0),
    changes: changeViews(changes), changesHead: `What changed in draft ${draft.number}`, changesNote: changesNote(draft, before, changes),
    preface: prefaceOf(draft), fewChanges: changes.length <= 8,
    drafts: book.drafts.filter(each => each !== draft).map(each => ({words: `Draft ${each.number}, ${dateWords(each.on)}`, link: draftLink(book, each)})).reverse(),
  }
}
