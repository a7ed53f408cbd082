import {FOWL_AUTOSOMES, recombination} from './chromosome-map.ts'
import {coancestry} from './coancestry.ts'
import type {Animal, Pedigree} from './pedigree.ts'
import {baseShares} from './base-shares.ts'

/**
 * How far may a bird's true share of a strain lie from the expected one? Genes come in long pieces, so two BC2 chicks differ widely about 87.5 %.
 *
 *     Var = E[share²] − (expected share)²
 *     E[share²] = mean over two places x, y of  ½ H(r) + ½ Φ(r)        r their recombination
 *     H  a random one of the bird's two gametes is of the strain at both places:  H = ½ Σ p (G(sire) + G(dam)),  G = (1 − r) H + r Φ
 *     Φ  of the strain at x in the one gamete, at y in the other: the kinship of the parents with K(i, i) = ½ H + ½ Φ, the strain as one gene copy
 *
 * Exact for any pedigree, inter se matings and kin included, with crossovers independent of each other. Doubt about parents adds to the spread.
 * The mean over places is an integral of a polynomial in r, taken exactly enough from its values at a few r (Chebyshev points).
 *
 * @param base the strain: the number of an outermost base
 * @param chromosomes lengths in centimorgans; genes lie evenly along the map
 * @returns standard deviation of the share in every animal; 0 for founders
 * @see Hill 1993, J. Hered. 84:212 and Stam & Zeven 1981, Euphytica 30:227 for backcrosses (from memory); the general recursion is worked out here
 */
export function shareSpread(pedigree: Pedigree, base: number, chromosomes: readonly number[] = FOWL_AUTOSOMES): Float64Array {
  const inside = pedigree.bases.map((_, index) => (outermost(pedigree.bases, index) === base ? 1 : 0))
  const bases = pedigree.bases.map(({within}, index) => ({inbreeding: inside[index] ?? 0, kinship: inside[index] ?? 0, within}))
  const expected = baseShares(pedigree, 'autosome', base)
  const variance = Float64Array.from(expected, share => -share * share)
  for (const {r, weight} of placesOf(chromosomes)) {
    const square = atTwoPlaces({...pedigree, bases, kin: []}, inside, r)
    for (let index = 0; index < variance.length; index++) variance[index] = (variance[index] ?? 0) + weight * (square[index] ?? 0)
  }
  // rounding leaves a founder a hair beside 0
  return variance.map(each => (each < 1e-12 ? 0 : Math.sqrt(each)))
}

const outermost = (bases: Pedigree['bases'], base: number): number => {
  const within = bases[base]?.within ?? null
  return within === null ? base : outermost(bases, within)
}

/** For every animal: chance that two random genes of one place and another, r apart, are both of the strain. */
function atTwoPlaces(pedigree: Pedigree, inside: readonly number[], r: number): Float64Array {
  const {animals} = pedigree
  const together = new Float64Array(animals.length), apart = new Float64Array(animals.length)
  const ofBase = (base: number | null = null) => (base === null ? 0 : inside[base] ?? 0)
  /** a gamete of this bird is of the strain at both places */
  const gamete = (index: number): number => {
    const oneOf = animals[index]?.oneOf
    if (oneOf) return oneOf.reduce((sum, {animal, chance}) => sum + chance * gamete(animal), 0)
    return (1 - r) * (together[index] ?? 0) + r * (apart[index] ?? 0)
  }
  const handed = (parent: number | null, base: number | null | undefined) => (parent === null ? ofBase(base) : gamete(parent))
  const blended = ({matings, outside}: Animal) =>
    matings.reduce((sum, {sire, dam, chance}) => sum + chance * (handed(sire, outside?.sire) + handed(dam, outside?.dam)) / 2, 0)

  const {self} = coancestry(pedigree, 'autosome', (index, kinship) => {
    const animal = animals[index]
    const founder = animal?.matings.length === 0
    together[index] = animal === undefined || founder ? ofBase(animal?.base) : blended(animal)
    apart[index] = founder ? ofBase(animal.base) : kinship
    return ((together[index] ?? 0) + (apart[index] ?? 0)) / 2
  })
  return Float64Array.from(animals, (_, index) => self(index))
}

/**
 * Recombination rates and weights that give the mean over all pairs of places of any polynomial in r up to the sixth power
 * (as many meioses one after another), and of a longer descent closely.
 */
function placesOf(chromosomes: readonly number[], count = 7): readonly {readonly r: number; readonly weight: number}[] {
  const points = Array.from({length: count}, (_, k) => (1 - Math.cos((Math.PI * k) / (count - 1))) / 4)
  const whole = chromosomes.reduce((sum, length) => sum + length, 0)
  const weights = new Array<number>(count).fill(0)
  let linked = 0
  for (const length of chromosomes) {
    const share = (length / whole) ** 2
    linked += share
    // midpoints: how often two places of one chromosome lie so far apart
    const steps = 400
    for (let step = 0; step < steps; step++) {
      const far = (step + 0.5) / steps
      const r = recombination((far * length) / 100)
      points.forEach((_, k) => { weights[k] = (weights[k] ?? 0) + share * (2 * (1 - far) / steps) * lagrange(points, k, r) })
    }
  }
  weights[count - 1] = (weights[count - 1] ?? 0) + 1 - linked
  return points.map((r, k) => ({r, weight: weights[k] ?? 0}))
}

/** The polynomial that is 1 at one of the points and 0 at the others. */
function lagrange(points: readonly number[], at: number, x: number): number {
  const own = points[at] ?? 0
  return points.reduce((product, point, index) => (index === at ? product : product * (x - point) / (own - point)), 1)
}
