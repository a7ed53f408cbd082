import type {Draft, Variety} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import type {Chick} from './ladder-chicks.ts'
import {sameName} from './same-name.ts'
import {meets} from './wanted-look.ts'

type Varieties = Pick<Draft, 'varieties'>

/** The variety that a bird is of; `none`: it shows something that speaks against each of them; `untold`: it was not scored for one that it may be of, or nothing tells. */
export type VarietyTold = Variety | 'none' | 'untold'

/**
 * Of which colour variety of a draft is a bird? Of that of which it shows every look; of several the one told by most looks, and of equals the first; of the only one, where there is one and no looks
 * tell it. It is untold while it was not scored for one that asks the same and more. One of several that no looks tell is never ruled out; where the draft knows no varieties at all nothing tells.
 */
export function varietyTold(bird: Chick, draft: Varieties): VarietyTold {
  const {varieties} = draft, [only] = varieties
  if (!only) return 'untold'
  if (varieties.length === 1 && only.looks.size === 0) return only
  const may = mayBeOf(bird, draft), [first, ...more] = may.filter(variety => variety.looks.size > 0 && fits(bird, variety, false))
  if (!first) return may.length > 0 ? 'untold' : 'none'
  const most = more.reduce((best, each) => (each.looks.size > best.looks.size ? each : best), first)
  return may.some(({looks}) => looks.size > most.looks.size && [...most.looks.keys()].every(trait => looks.has(trait))) ? 'untold' : most
}

/** The varieties that nothing a bird shows speaks against. */
export const mayBeOf = (bird: Chick, {varieties}: Varieties): readonly Variety[] => varieties.filter(variety => fits(bird, variety, true))

/** Does it show every look of a variety, one that was not scored taken as given? */
const fits = (bird: Chick, {looks}: Variety, unscored: boolean): boolean => [...looks].every(([trait, wanted]) => {
  const value = countedValue(bird, trait)
  return (value === null ? null : meets(wanted, value)) ?? unscored
})

/** Is a bird of one of the varieties named? Null where the records do not tell; a name that the draft does not know is told of no bird. */
export function isOfVarieties(bird: Chick, draft: Varieties | null, names: readonly string[]): boolean | null {
  if (draft === null) return null
  const told = varietyTold(bird, draft), isNamed = ({name}: Variety): boolean => names.some(each => sameName(each, name))
  if (typeof told === 'object') return isNamed(told)
  return told === 'none' || (draft.varieties.length > 0 && !mayBeOf(bird, draft).some(isNamed)) ? false : null
}

/** The variety that a bird is surely of. */
export function varietyOf(bird: Chick, draft: Varieties): Variety | null {
  const told = varietyTold(bird, draft)
  return typeof told === 'object' ? told : null
}
