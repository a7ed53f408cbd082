/** A share whose spread was told from families. */
export interface SpreadOfShare {
  /** 0 to 1 */
  readonly share: number
  /** independent birds that would tell as much; above 0 */
  readonly effective: number
  /** families it was told from; 2 or more */
  readonly families: number
}

/**
 * On how many degrees of freedom does the difference of two shares stand, when the spread of each was told from few families?
 *
 *     ν = (v₁ + v₂)² / ( v₁²/(m₁ − 1) + v₂²/(m₂ − 1) )        v = p(1 − p)/n*        m₁ + m₂ − 2 where neither shows any spread
 *
 * What is not known of either spread is unlikely to err the same way in both, so that limits of each with its own t are too wide when joined.
 *
 * @param one share of one group, with its size and families
 * @param other of the other
 * @returns ν, from the smaller m − 1 to m₁ + m₂ − 2
 * @throws RangeError when a share has fewer than two families, or a size that is not above 0
 * @see Satterthwaite 1946, Biometrics Bull. 2:110–114 (from memory)
 * @example freedomOfTwo({share: 0.8, effective: 20, families: 5}, {share: 0.8, effective: 20, families: 5})  // 8
 */
export function freedomOfTwo(one: SpreadOfShare, other: SpreadOfShare): number {
  for (const {families, effective} of [one, other]) {
    if (!(families >= 2)) throw new RangeError(`a spread is told from 2 families or more, not ${families}`)
    if (!(effective > 0)) throw new RangeError(`a share of ${effective} birds tells nothing`)
  }
  const [a = 0, b = 0] = [one, other].map(({share, effective}) => (share * (1 - share)) / effective), part = a / (a + b)
  return a + b > 0 ? 1 / (part ** 2 / (one.families - 1) + (1 - part) ** 2 / (other.families - 1)) : one.families + other.families - 2
}
