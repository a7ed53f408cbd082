/** A standard that describes the female as the male, but for what it then names: which of the male's clauses speak of both. Common practice, no source. */
import type {SectionKind} from './book.ts'

interface Sectioned {
  readonly kind: SectionKind | null
  readonly lead: string
  readonly clauses: readonly {readonly id: string; readonly title: string; readonly trait: string | null}[]
}

/** `As the male, allowing for the differences of sex`, `like the cock`, `the same as the male` */
const AS_THE_MALE = /\b(?:as|like)\s+(?:in\s+|for\s+)?the\s+(?:male|cock)\b/i

/**
 * Ids of the clauses on the male that hold of the female too: all of them, where a section on the female leads in with "as the male", less those of which it has a clause of the same title or held
 * against the same trait.
 */
export function alsoOfTheFemale(sections: readonly Sectioned[]): ReadonlySet<string> {
  const female = sections.filter(({kind}) => kind === 'female')
  if (!female.some(({lead}) => AS_THE_MALE.test(lead))) return new Set()
  const own = female.flatMap(({clauses}) => clauses), titles = new Set(own.map(({title}) => title.toLowerCase())), traits = new Set(own.flatMap(({trait}) => trait ?? []))
  return new Set(sections.filter(({kind}) => kind === 'male').flatMap(({clauses}) => clauses.filter(({title, trait}) => !titles.has(title.toLowerCase()) && !(trait !== null && traits.has(trait))).map(({id}) => id)))
}
