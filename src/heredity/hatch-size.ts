import {binomialTail} from '../statistics/binomial-tail.ts'

/** More chicks or eggs than one will hatch of a mating; a need beyond it is said not to be reached. */
export const MOST_HATCHED = 2000

/** An assurance is reached when it is missed by no more than rounding may have taken from it. */
export const ROUNDING = 1e-12

/**
 * How many chicks to hatch, to have at least k of the wanted kind with a stated assurance?
 *
 *     the smallest n with P(X ≥ k) ≥ a        X binomial, n chicks of chance p each
 *
 * @param wanted k, whole, 0 or more
 * @param chance p that a chick is of the wanted kind, 0 to 1; ½ for its sex included where only one sex is wanted
 * @param assurance a, above 0 and below 1; 0.95 is usual
 * @returns n, never rounded down; null when it would be more than 2000, or the chance is 0
 * @throws RangeError when k is no count or a chance is out of range
 * @see Sedcole 1977, Crop Sci. 17:667–668
 * @example chicksForWanted(3, 1 / 4, 0.95)  // 23
 */
export function chicksForWanted(wanted: number, chance: number, assurance: number): number | null {
  checkWanted(wanted, assurance)
  if (wanted === 0) return 0
  if (binomialTail(wanted, Math.max(wanted, MOST_HATCHED), chance) < assurance - ROUNDING) return null
  let short = wanted - 1, long = Math.max(wanted, MOST_HATCHED)
  while (long - short > 1) {
    const middle = Math.floor((short + long) / 2)
    if (binomialTail(wanted, middle, chance) >= assurance - ROUNDING) long = middle
    else short = middle
  }
  return long
}

/** Throws when k is no count or the assurance none. */
export function checkWanted(wanted: number, assurance: number): void {
  if (!Number.isInteger(wanted) || wanted < 0) throw new RangeError(`the number wanted is a count, not ${wanted}`)
  if (!(assurance > 0 && assurance < 1)) throw new RangeError(`an assurance lies between 0 and 1, not at ${assurance}`)
}
