/** What a section of a standard is about, told by its heading. */
import {nearWords} from '../records/near.ts'
import type {SectionKind} from './book.ts'

/** The first that matches is it: what is narrower stands first. Words for these are common practice, no source. */
const HEADINGS: readonly (readonly [SectionKind, RegExp])[] = [
  ['disqualifications', /disqualif/i],
  ['minor-faults', /\b(?:minor|light|slight)\b.*\b(?:faults?|defects?)/i],
  ['serious-faults', /\b(?:serious|grave|major)\b.*\bfaults?|\bdefects?\b/i],
  ['faults', /\bfaults?\b/i],
  ['points', /\bscale\b|\bpoints\b/i],
  ['weights', /\bweights?\b|\bmass(?:es)?\b/i],
  ['rings', /\b(?:rings?|bands?)\b/i],
  ['egg', /\beggs?\b/i],
  ['down', /\bdown\b|\bday-old\b/i],
  ['colour', /\bcolou?rs?\b|\bvariet(?:y|ies)\b|\bmarkings?\b/i],
  ['utility', /\butility\b|\beconomic\b/i],
  ['temperament', /\btemperament\b|\bcharacter$/i],
  ['classification', /\bclassif/i],
  ['impression', /\bgeneral (?:impression|aspect|appearance)\b/i],
  ['origin', /\borigin\b|\bpurpose\b|\bhistory\b/i],
]

/** Last comes the one sex that it names. */
export const sectionKindOf = (heading: string): SectionKind | null => HEADINGS.find(([, words]) => words.test(heading))?.[0] ?? sexOfHeading(heading)

const PARTS = [
  'origin', 'classification', 'utility', 'general impression', 'general characteristics', 'male', 'female', 'colour', 'varieties', 'weights', 'ring sizes', 'temperament', 'faults',
  'minor faults', 'serious faults', 'defects', 'disqualifications', 'scale of points', 'day-old down',
]

/** What a heading of no known kind is a letter or two away from: `Coluor`, `General characteristics, femael`. */
export function partsMeant(heading: string): readonly string[] {
  const [whole = '', sex] = heading.split(/,\s*(?=\S+$)/)
  if (sex !== undefined) return nearWords(sex.toLowerCase(), ['male', 'female']).map(meant => `${whole}, ${meant}`)
  return PARTS.includes(whole.toLowerCase()) ? [] : nearWords(whole, PARTS).map(part => part.charAt(0).toUpperCase() + part.slice(1))
}

/** Of which sex a heading speaks: `General characteristics, male`, `Female, as the male`; null where it speaks of both or neither. */
export function sexOfHeading(heading: string): 'male' | 'female' | null {
  const male = /\b(?:males?|cocks?|cockerels?)\b/i.exec(heading), female = /\b(?:females?|hens?|pullets?)\b/i.exec(heading)
  if (!male || !female) return male ? 'male' : female ? 'female' : null
  const [first, second] = male.index < female.index ? [male, female] : [female, male]
  if (/\b(?:and|or)\b|[&/+]/i.test(heading.slice(first.index + first[0].length, second.index))) return null
  return first === male ? 'male' : 'female'
}
