/** A draft of the standard cut into its sections, each with what it is about. */
import type {RecordOf} from '../records/records.ts'
import type {SectionKind} from './book.ts'
import {sectionsOf, slug, type SectionOfDraft} from './draft-sections.ts'
import {sectionKindOf} from './section-kinds.ts'

export interface CutSection extends SectionOfDraft {
  readonly kind: SectionKind | null
}

export function cutDraft({data, body}: Pick<RecordOf<'draft'>, 'data' | 'body'>): readonly CutSection[] {
  const kinds = new Map((data.sections ?? []).map(({key, value}) => [key, value]))
  const kindOf = (id: string, title: string): SectionKind | null => kinds.get(id) ?? kinds.get(slug(title)) ?? (title === '' ? null : sectionKindOf(title))
  return sectionsOf(body, title => kindOf(slug(title), title) === 'colour', takenIds(data)).map(section => ({...section, kind: kindOf(section.id, section.title)}))
}

/** What the front matter tells has its ids before any heading of the body. */
function takenIds({weights = [], scale = [], egg, rings, classification}: RecordOf<'draft'>['data']): readonly string[] {
  return [
    ...(weights.length > 0 ? ['weights', ...weights.map(({key}) => `weights/${slug(key)}`)] : []), ...(scale.length > 0 ? ['scale', ...scale.map(({key}) => `scale/${slug(key)}`)] : []),
    ...(egg ? ['egg'] : []), ...(rings ? ['rings'] : []), ...(classification === undefined ? [] : ['classification']), 'egg/at-least', 'rings/male', 'rings/female',
  ]
}
