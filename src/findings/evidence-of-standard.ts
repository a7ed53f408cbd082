import {neededIn} from '../logbook/manners.ts'
import {hasPart} from '../logbook/parts-of-standard.ts'
import type {Requirement, Section} from '../logbook/book.ts'
import {canBeHeld} from './clause-counts.ts'
import {behind, judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {onDay} from './next-season.ts'
import type {Way} from './ways.ts'

const WHOLE = 100

const isBlank = (text: string): boolean => text.trim() === ''
const isEmpty = ({clauses, lead}: Section): boolean => isBlank(lead) && clauses.every(({text}) => isBlank(text))

/**
 * Is the standard whole? The latest draft has every section that is asked, or that its manner needs, or the core; none of its sections and clauses is empty; its points make 100. Of clauses asked for by
 * name each must be there with its words. How many are mandatory, and which of these no trait lets anybody score, stand beside it.
 */
export function writtenStandard(asked: Requirement, {book}: Sources): Finding {
  const draft = book.drafts.at(-1), now = onDay(book.asOf)
  if (!draft) return judged(false, {kind: 'nothing-recorded'}, {ways: [{kind: 'first-draft', earliest: now}]})
  const all = draft.sections.flatMap(section => section.clauses), wanted = asked.sections.length > 0 ? asked.sections : neededIn(draft.manner)
  const missing = wanted.filter(kind => !hasPart(draft, kind)), emptySections = draft.sections.filter(isEmpty)
  const emptyClauses = all.filter(({text, id}) => isBlank(text) && !emptySections.some(section => section.clauses.some(clause => clause.id === id)))
  const clausesMissing = asked.clauses.filter(id => ![...all, ...draft.rows].some(clause => clause.id === id))
  const points = draft.points.reduce((sum, {points: each}) => sum + each, 0), isWhole = draft.points.length === 0 || Math.abs(points - WHOLE) < 1e-9
  const mandatory = [...all, ...draft.rows].filter(clause => clause.mandatory), unscored = mandatory.filter(clause => !canBeHeld(clause))
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
