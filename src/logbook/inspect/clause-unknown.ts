import {near, orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import {slug} from '../draft-sections.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (clause: string) => `---\ndraft: 1\non: 2024-10-01\nreasons: {${clause}: As measured.}\n---\n## General characteristics, male\n\n**Tail.** Of medium length.\n`

export const entry: ManualEntry = {
  code: 'clause-unknown', severity: 'error', title: 'A clause that the draft does not have',
  cause: 'Under clauses or reasons stands a piece that neither this draft nor the one before has; or an entry of a show is about a clause that the draft it was judged by does not have. A clause is named by its section and itself, in small letters: general-characteristics-male/tail.',
  remedy: 'Write the clause as section/clause, or take the entry out.',
  wrong: {'standard/1.md': draft('general-characteristics-male/tial')},
  right: {'standard/1.md': draft('general-characteristics-male/tail')},
}

/** @param head  what a paragraph of the body begins with that was meant for its head, without the stars it needs */
export function unknownClause(name: string, at: Spot, known: readonly string[], head: string | null = null): Slip {
  if (head !== null) return slipOf(entry, at, `the draft has no clause ${name}`, `begin the paragraph with **${head}.**`)
  const ending = known.filter(each => each.endsWith(`/${name}`)).slice(0, 3)
  return slipOf(entry, at, `the draft has no clause ${name}`, orNear(ending.length > 0 ? ending : near(name, known), 'write section/clause in small letters, such as general-characteristics-male/tail'))
}

/** `Comb` where a paragraph of the body begins with `*Comb.*`, `_Comb_:` or `Comb.` and an entry speaks of section/comb; null where none does. */
export function headMeant(clause: string, body: string): string | null {
  const name = clause.slice(clause.lastIndexOf('/') + 1)
  for (const [, , words = ''] of body.matchAll(/^([*_]?)([^*_.:\n#>-][^*_.:\n]*)(?:[.:]\1|\1[.:])(?=\s|$)/gm)) if (slug(words) === name) return words.trim()
  return null
}
