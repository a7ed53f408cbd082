import {neededIn} from '../logbook/manners.ts'
import type {Clause, Draft, Requirement, Section, SectionKind} from '../logbook/book.ts'
import {behind, judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {onDay} from './next-season.ts'
import type {Way} from './ways.ts'

const WHOLE = 100

const isBlank = (text: string): boolean => text.trim() === ''
const isEmpty = ({clauses, lead}: Section): boolean => isBlank(lead) && clauses.every(({text}) => isBlank(text))

/** Faults of every weight are faults. */
const FAULTS: readonly SectionKind[] = ['faults', 'minor-faults', 'serious-faults', 'disqualifications']

/** Is the section there? In the body of the draft under a heading of its kind, or as its front matter has it; empty ones count as there and are named apart. */
function has({sections, weights, points, rings, egg, classification, origin, varieties}: Draft, kind: SectionKind): boolean {
  const kinds = new Set(sections.map(section => section.kind))
  if (kinds.has(kind)) return true
  switch (kind) {
    case 'weights': return weights.length > 0
    case 'points': return points.length > 0
    case 'rings': return rings.male !== null || rings.female !== null
    case 'egg': return egg !== null
    case 'classification': return classification !== null
    case 'origin': return origin !== null
    case 'colour': return varieties.length > 0
    case 'down': return sections.some(section => section.clauses.some(({title}) => /\bdown\b|\bday-old\b/i.test(title)))
    case 'faults': return FAULTS.some(each => kinds.has(each))
    // one section may hold all three, a clause each
    case 'minor-faults': return clauseCalled(sections, /\b(?:minor|slight|light)\b/i)
    case 'serious-faults': return clauseCalled(sections, /\b(?:serious|grave|major)\b/i)
    case 'disqualifications': return clauseCalled(sections, /\bdisqualif/i)
    default: return false
  }
}

const clauseCalled = (sections: readonly Section[], words: RegExp): boolean =>
  sections.some(({kind, clauses}) => kind !== null && FAULTS.includes(kind) && clauses.some(({title}) => words.test(title)))

/**
 * Is the standard whole? The latest draft has every section that is asked, or that its manner needs, or the core; none of its sections and clauses is empty; its points make 100. Of clauses asked for by
 * name each must be there with its words. How many are mandatory, and which of these no trait lets anybody score, stand beside it.
 */
export function writtenStandard(asked: Requirement, {book}: Sources): Finding {
  const draft = book.drafts.at(-1), now = onDay(book.asOf)
  if (!draft) return judged(false, {kind: 'nothing-recorded'}, {ways: [{kind: 'first-draft', earliest: now}]})
  const all = draft.sections.flatMap(section => section.clauses), wanted = asked.sections.length > 0 ? asked.sections : neededIn(draft.manner)
  const missing = wanted.filter(kind => !has(draft, kind)), emptySections = draft.sections.filter(isEmpty)
  const emptyClauses = all.filter(({text, id}) => isBlank(text) && !emptySections.some(section => section.clauses.some(clause => clause.id === id)))
  const clausesMissing = asked.clauses.filter(id => ![...all, ...draft.rows].some(clause => clause.id === id))
  const points = draft.points.reduce((sum, {points: each}) => sum + each, 0), isWhole = draft.points.length === 0 || Math.abs(points - WHOLE) < 1e-9
  const mandatory = [...all, ...draft.rows].filter(clause => clause.mandatory), unscored = mandatory.filter(isUnscorable)
  const met = draft.sections.length > 0 && missing.length === 0 && emptySections.length === 0 && emptyClauses.length === 0 && clausesMissing.length === 0 && isWhole
  const empty = emptySections.map(({title}) => title)
  const ways: readonly Way[] = [
    ...(missing.length + empty.length + clausesMissing.length > 0 ? [{kind: 'write-sections', missing, empty, clauses: clausesMissing, earliest: now} as const] : []),
    ...(emptyClauses.length > 0 ? [{kind: 'fill-clauses', clauses: emptyClauses, earliest: now} as const] : []), ...(isWhole ? [] : [{kind: 'mend-points', have: points, earliest: now} as const]),
  ]
  return judged(met, {
    kind: 'written-standard', draft: draft.number, clauses: all.length, emptySections: empty, emptyClauses, missing, points, mandatory: mandatory.length, unscored, wanted,
  }, {behind: behind([], [draft], [draft.on.last]), ways})
}

/** No trait shows it, or the trait does not say what it allows. */
const isUnscorable = ({trait, allows}: Clause): boolean => trait === null || (allows.male === null && allows.female === null)
