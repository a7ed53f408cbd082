import type {Trait} from '../logbook/book.ts'
import type {Chick} from './ladder-chicks.ts'

/** The value of a trait that counts for a chick, as linking has settled it; null where none does. */
export const countedValue = (chick: Chick, trait: Trait): string | number | null => chick.looks.get(trait)?.counted?.value ?? null

/** Why a chick's scorings of a trait do not count, when it has some and none does. */
export function setAside(chick: Chick, trait: Trait): 'struck' | 'outside-window' | null {
  const {counted, scores} = chick.looks.get(trait) ?? {counted: null, scores: []}
  if (counted !== null || scores.length === 0) return null
  return scores.some(score => score.struck === null) ? 'outside-window' : 'struck'
}
