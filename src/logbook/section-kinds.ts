/** What a section of a standard is about, told by its heading. */
import type {SectionKind} from './book.ts'

/** The first that matches is it: what is narrower stands first. Words for these are common practice, no source. */
const HEADINGS: readonly (readonly [SectionKind, RegExp])[] = [
  ['disqualifications', /disqualif/i],
  ['serious-faults', /\b(?:serious|grave|major)\b.*\b(?:faults?|defects?)|\bdefects?\b/i],
  ['minor-faults', /\b(?:minor|light|slight)\b.*\bfaults?/i],
  ['faults', /\bfaults?\b/i],
  ['points', /\bscale\b|\bpoints\b/i],
  ['weights', /\bweights?\b|\bmass(?:es)?\b/i],
  ['rings', /\brings?\b/i],
  ['egg', /\beggs?\b/i],
  ['down', /\bdown\b|\bday-old\b/i],
  ['colour', /\bcolou?rs?\b|\bvariet(?:y|ies)\b|\bmarkings?\b/i],
  ['utility', /\butility\b|\beconomic\b/i],
  ['temperament', /\btemperament\b|\bcharacter$/i],
  ['classification', /\bclassif/i],
  ['impression', /\bgeneral (?:impression|aspect|appearance)\b/i],
  ['origin', /\borigin\b|\bpurpose\b|\bhistory\b/i],
  ['female', /\b(?:female|hen)\b/i],
  ['male', /\b(?:male|cock)\b/i],
]

export const sectionKindOf = (heading: string): SectionKind | null => HEADINGS.find(([, words]) => words.test(heading))?.[0] ?? null

/** Of which sex a heading speaks: `General characteristics, male`, `Female`; null where it speaks of both or neither. */
export function sexOfHeading(heading: string): 'male' | 'female' | null {
  const male = /\b(?:males?|cocks?|cockerels?)\b/i.test(heading), female = /\b(?:females?|hens?|pullets?)\b/i.test(heading)
  return male === female ? null : male ? 'male' : 'female'
}
