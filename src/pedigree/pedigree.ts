/** A flock as descent sees it: numbers for birds, chances for what is not certain. Everything in this room starts from here. */

/** Two birds that may have had a chick together; null is a bird outside the pedigree. */
export interface Mating {
  readonly sire: number | null
  readonly dam: number | null
  /** above 0; over the matings of one chick they sum to 1 */
  readonly chance: number
}

export interface Animal {
  readonly sex: 'male' | 'female' | 'unknown'
  /** possible matings it came from; empty for a founder. Chicks of the same matings may share one list, which is then worked once. */
  readonly matings: readonly Mating[]
  /** a founder's base population; null: kin to nobody and not inbred */
  readonly base: number | null
  /** base populations of parents outside the pedigree; each such parent is a bird of its own, kin to others of the base as these are */
  readonly outside?: {readonly sire: number | null; readonly dam: number | null}
  /** chicks of one unknown hen: the number of the stand-in that is one and the same hen for all of them */
  readonly damStandIn?: number
  /** a stand-in, or a found bird without its band: it is one of these; `chance` sums to 1, less the chance that it is none of them */
  readonly oneOf?: readonly {readonly animal: number; readonly chance: number}[]
}

/** A population that founders were drawn from: a strain, or a flock within a strain. */
export interface Base {
  /** F of its birds */
  readonly inbreeding: number
  /** kinship of two of its birds; at most ½(1 + inbreeding) */
  readonly kinship: number
  /** the population this one is a part of, which must stand before it; its kinship is not above this one's */
  readonly within: number | null
}

/** Two founders known to be kin, beyond what their base gives. */
export interface Kin {
  readonly animals: readonly [number, number]
  readonly kinship: number
}

export interface Pedigree {
  /** in any order; a loop is a programmer's slip here, for the logbook has reported and cut it */
  readonly animals: readonly Animal[]
  readonly bases: readonly Base[]
  readonly kin: readonly Kin[]
}

/** Which genes are followed: an autosome's, the Z's, or the mother's line (mitochondria, and the W of hens). */
export type Transmission = 'autosome' | 'Z' | 'dam line'

/** Descent is known no further: no parents on record, nor birds that it may be. */
export const isFounder = (animal: Animal | undefined): boolean => animal !== undefined && animal.matings.length === 0 && !animal.oneOf

/** Every animal that one's figures are worked from: its possible parents, the stand-in for its dam, the birds that it may be. One may be named twice. */
export function aboveOf({matings = [], oneOf = [], damStandIn}: Partial<Animal> = {}): readonly number[] {
  const above = damStandIn === undefined ? [] : [damStandIn]
  for (const {sire, dam} of matings) {
    if (sire !== null) above.push(sire)
    if (dam !== null) above.push(dam)
  }
  for (const {animal} of oneOf) above.push(animal)
  return above
}
