import type {Clause, Draft} from './book.ts'

/** Every clause of a draft, those of its tables last. */
export const clausesOf = ({sections, rows}: Pick<Draft, 'sections' | 'rows'>): readonly Clause[] => [...sections.flatMap(({clauses}) => clauses), ...rows]
