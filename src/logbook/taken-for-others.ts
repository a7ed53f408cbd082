/** In what share of birds is each look taken for another, as the record of a trait states it? */
import type {Trait} from './book.ts'

/** Looks of which nothing is stated are left out. A sum over 1 is a slip of the record, and given as it stands. */
export function takenForOthers({misscoring}: Pick<Trait, 'misscoring'>): readonly {readonly state: string; readonly share: number}[] {
  return [...misscoring].map(([state, scored]) => ({state, share: [...scored].reduce((sum, [as, share]) => (as === state ? sum : sum + share), 0)}))
}
