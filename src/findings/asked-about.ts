import type {Bird, Logbook, Requirement} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {showAge} from './show-age.ts'
import {isOfVarieties} from './variety-of.ts'

/** The words that classes of grown and young birds of either sex go by. Common practice, no source. */
export const CLASS_WORDS = ['cock', 'cockerel', 'hen', 'pullet'] as const
export type ClassWord = (typeof CLASS_WORDS)[number]

const plain = (text: string): string => text.trim().toLowerCase()

/** `Pullets, light` and `young hens` → pullet; null where it says none of the words, or several. */
export function wordOf(text: string): ClassWord | null {
  const [word, other] = CLASS_WORDS.filter(each => new RegExp(`\\b${each}s?\\b`, 'i').test(text))
  if (word === undefined || other !== undefined) return null
  if (!/\b(?:young|junior)\b/i.test(text)) return word
  return word === 'cock' ? 'cockerel' : word === 'hen' ? 'pullet' : word
}

/** The class that a bird would stand in on a day, by its sex and its age as shows have it; null where either is not known. */
export function classOf(bird: Pick<Bird, 'sex' | 'hatched'>, on: Day): ClassWord | null {
  const age = showAge(bird, on)
  if (age === null || bird.sex === 'unknown') return null
  return bird.sex === 'male' ? (age === 'young' ? 'cockerel' : 'cock') : age === 'young' ? 'pullet' : 'hen'
}

/** Does it stand in a class? By the class as written where it says, else by sex and age. Null where neither tells. */
export function standsIn(name: string, written: string | null, bird: Pick<Bird, 'sex' | 'hatched'>, on: Day): boolean | null {
  if (written !== null && plain(written) === plain(name)) return true
  const asked = wordOf(name)
  if (asked === null) return written === null ? null : called(name, written)
  const word = (written === null ? null : wordOf(written)) ?? classOf(bird, on)
  return word === null ? null : word === asked
}

/** Of classes in words of another species, or of the keeper’s own: `drake` in `Drakes, coloured`, but not in `Young drakes`. */
function called(name: string, written: string): boolean {
  const words = plain(name).replace(/[.*+?^${}()|[\]\\]/g, '\\$&'), isYoung = (text: string): boolean => /\b(?:young|junior)\b/i.test(text)
  return new RegExp(`\\b${words}s?\\b`, 'i').test(written) && isYoung(name) === isYoung(written)
}

/** Is a requirement about this bird on a day: of its classes, ages and varieties? Null where the records do not tell; true where it names none. */
export function isAbout({classes, ages, varieties}: Pick<Requirement, 'classes' | 'ages' | 'varieties'>, bird: Bird, on: Day, {drafts}: Pick<Logbook, 'drafts'>, written: string | null = null): boolean | null {
  const draft = drafts.at(-1), age = showAge(bird, on)
  return every([
    classes.length === 0 ? true : some(classes.map(name => standsIn(name, written, bird, on))),
    ages.length === 0 ? true : age === null ? null : ages.includes(age),
    varieties.length === 0 ? true : isOfVarieties(bird, draft ?? null, varieties),
  ])
}

const every = (answers: readonly (boolean | null)[]): boolean | null => (answers.includes(false) ? false : answers.includes(null) ? null : true)
const some = (answers: readonly (boolean | null)[]): boolean | null => (answers.includes(true) ? true : answers.includes(null) ? null : false)
