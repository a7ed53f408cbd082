/** Which parts a draft of the standard has, wherever it tells them: in a section, in a clause of the faults that is headed so, or in its front matter. */
import type {Draft, Section, SectionKind} from './book.ts'
import {neededIn} from './manners.ts'
import {sectionKindOf} from './section-kinds.ts'

const FAULTS: ReadonlySet<SectionKind | null> = new Set(['faults', 'minor-faults', 'serious-faults', 'disqualifications'])

export const isOfFaults = ({kind}: Pick<Section, 'kind'>): boolean => FAULTS.has(kind)

/** Has the draft a section of its own on its origin? Then what its head says of that is not printed. */
export const tellsOrigin = ({sections}: Pick<Draft, 'sections'>): boolean => sections.some(({kind, title}) => kind === 'origin' && title !== '')

/** One section may hold faults of every sort, a clause each. */
const SORTS: Partial<Record<SectionKind, RegExp>> = {'minor-faults': /\b(?:minor|slight|light)\b/i, 'serious-faults': /\b(?:serious|grave|major)\b/i, disqualifications: /\bdisqualif/i}

/** Is the part there? A section without a word in it counts as there: what is empty is another question. */
export function hasPart(draft: Draft, kind: SectionKind): boolean {
  const {sections, rings} = draft, faults = sections.filter(isOfFaults), sort = SORTS[kind]
  if (sections.some(section => section.kind === kind)) return true
  // faults told in one piece are taken for the serious ones
  if (sort) return faults.some(section => section.clauses.some(({title}) => sort.test(title)) || (kind === 'serious-faults' && section.kind === 'faults' && section.clauses.length === 0))
  switch (kind) {
    case 'origin': return draft.origin !== null
    case 'classification': return draft.classification !== null
    case 'egg': return draft.egg !== null
    case 'rings': return rings.male !== null || rings.female !== null
    case 'weights': return draft.weights.length > 0
    case 'points': return draft.points.length > 0
    case 'faults': return faults.length > 0
    case 'colour': return draft.varieties.length > 0
    case 'down': return sections.some(section => section.clauses.some(({title}) => sectionKindOf(title) === 'down'))
    // both sexes under one general heading, a clause each
    case 'male': case 'female': return sections.some(section => section.kind === 'impression' && section.clauses.some(({sex}) => sex === kind))
    default: return false
  }
}

const isFilled = ({lead, clauses}: Section): boolean => lead.trim() !== '' || clauses.some(({text}) => text.trim() !== '')

/** What the draft must have by its manner (without one: the core) and does not, or only as a heading without words. */
export const partsWanting = (draft: Draft): readonly SectionKind[] => neededIn(draft.manner).filter(kind => {
  const own = draft.sections.filter(section => section.kind === kind)
  return !hasPart(draft, kind) || (own.length > 0 && !own.some(isFilled) && !hasPart({...draft, sections: draft.sections.filter(isFilled)}, kind))
})
