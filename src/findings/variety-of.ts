import type {Draft, Variety} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import type {Chick} from './ladder-chicks.ts'
import {meets} from './wanted-look.ts'

/**
 * Of which colour variety of a draft is a bird? Of the first of which it shows every look; of the only one, where there is one and no looks tell it. Null where it was not scored for them, shows
 * none, or the draft knows no varieties.
 */
export function varietyOf(bird: Chick, {varieties}: Pick<Draft, 'varieties'>): Variety | null {
  const [only] = varieties
  if (only && varieties.length === 1 && only.looks.size === 0) return only
  return varieties.find(({looks}) => looks.size > 0 && [...looks].every(([trait, wanted]) => {
    const value = countedValue(bird, trait)
    return value !== null && meets(wanted, value) === true
  })) ?? null
}
