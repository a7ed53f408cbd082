/** Which parts a draft of the standard has, wherever it tells them: in a section, in a clause that is headed so, or in its front matter. */
import type {Draft, SectionKind} from './book.ts'
import {neededIn} from './manners.ts'
import {sectionKindOf} from './section-kinds.ts'

/** Kinds of section that hold faults of every sort when they are not parted. */
const FAULTS: ReadonlySet<SectionKind | null> = new Set(['faults', 'minor-faults', 'serious-faults', 'disqualifications'])

const headedSo = ({sections}: Draft, kind: SectionKind): boolean =>
  sections.some(section => (section.kind === kind && isFilled(section)) || section.clauses.some(clause => sectionKindOf(clause.title) === kind))

const isFilled = ({lead, clauses}: Draft['sections'][number]): boolean => lead.trim() !== '' || clauses.length > 0

/** Does the draft tell of it? A section without a word in it does not. */
export function hasPart(draft: Draft, kind: SectionKind): boolean {
  const {sections} = draft
  if (headedSo(draft, kind)) return true
  switch (kind) {
    case 'origin': return draft.origin !== null
    case 'classification': return draft.classification !== null
    case 'egg': return draft.egg !== null
    case 'rings': return draft.rings.male !== null || draft.rings.female !== null
    case 'weights': return draft.weights.length > 0
    case 'points': return draft.points.length > 0
    case 'faults': return sections.some(section => FAULTS.has(section.kind) && isFilled(section))
    // a clause headed Serious in a section of faults
    case 'serious-faults': return sections.some(section => section.kind === 'faults' && (section.clauses.some(({title}) => /\b(?:serious|grave|major)\b/i.test(title)) || section.clauses.length === 0) && isFilled(section))
    // one colour told by sex needs no heading for each
    case 'male': case 'female': return sections.some(section => section.kind === 'impression' && section.clauses.some(({sex}) => sex === kind))
    default: return false
  }
}

/** What the draft must have by its manner (without one: the core) and does not. */
export const partsWanting = (draft: Draft): readonly SectionKind[] => neededIn(draft.manner).filter(kind => !hasPart(draft, kind))
