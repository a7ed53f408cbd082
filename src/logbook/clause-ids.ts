import type {Draft} from './book.ts'
import {slug} from './draft-sections.ts'

/** Every clause of a draft by its id, the weights of the classes and the egg among them: what a record may say that it is about. */
export const clauseIdsOf = ({sections, weights, egg}: Draft): readonly string[] => [
  ...sections.flatMap(({clauses}) => clauses.map(({id}) => id)), ...weights.map(weight => `weights/${slug(weight.class)}`), ...(egg === null ? [] : ['egg']),
]
