import type {Trait, Wanted} from '../logbook/book.ts'
import type {AskedLook} from './clauses-asked.ts'

/** One trait that breeders are to be pure for, with the looks that will do. */
export interface GenesAsked {
  /** the trait, with what the clauses allow in place of its own target */
  readonly trait: Trait
  /** the trait itself, which birds are scored for */
  readonly scored: Trait
  /** asked of breeders of this colour variety only */
  readonly variety: string | null
}

const SEXES = ['male', 'female'] as const
const isSame = (one: Wanted | null, other: Wanted | null): boolean => JSON.stringify(one) === JSON.stringify(other)

/**
 * Which traits do the clauses of a requirement ask breeders to be pure for, and in which looks? A clause of the male and one of the female of the same trait are one, as both sexes come of the same genes; where
 * two ask otherwise of one sex each stands for itself.
 */
export function genesOfLooks(looks: readonly AskedLook[]): readonly GenesAsked[] {
  return looks.reduce<readonly GenesAsked[]>((found, {clause, trait, scored}) => {
    const variety = clause?.variety ?? null, {male, female} = trait.wanted
    const other = found.find(each => each.scored === scored && each.variety === variety && SEXES.every(sex => each.trait.wanted[sex] === null || trait.wanted[sex] === null || isSame(each.trait.wanted[sex], trait.wanted[sex])))
    const wanted = {male: male ?? other?.trait.wanted.male ?? null, female: female ?? other?.trait.wanted.female ?? null}
    return [...found.filter(each => each !== other), {trait: SEXES.every(sex => isSame(wanted[sex], scored.wanted[sex])) ? scored : {...scored, wanted}, scored, variety}]
  }, [])
}
