import type {Clause, Draft} from './book.ts'
import {slug} from './draft-sections.ts'

/** Every clause of a draft by its id, the weights of the classes and the egg among them: what a record may say that it is about. */
export const clauseIdsOf = ({sections, weights, egg}: Pick<Draft, 'weights' | 'egg'> & {readonly sections: readonly {readonly clauses: readonly {readonly id: string}[]}[]}): readonly string[] => [
  ...sections.flatMap(({clauses}) => clauses.map(({id}) => id)), ...weights.map(weight => `weights/${slug(weight.class)}`), ...(egg === null ? [] : ['egg']),
]

/** Does a clause stand under the heading of its variety in this section? One that only its entry gives a variety does not. */
export function isUnderItsVariety({id, variety}: Pick<Clause, 'id' | 'variety'>, sectionId: string): boolean {
  const own = variety === null ? null : `${sectionId}/${slug(variety)}`
  return own !== null && id.startsWith(own) && /^(?:-\d+)?(?:\/|$)/.test(id.slice(own.length))
}
