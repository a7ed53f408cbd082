import {parentsFirst} from './parents-first.ts'
import {aboveOf, isFounder, type Pedigree} from './pedigree.ts'

/** How far back a bird's descent is known. */
export interface Completeness {
  /** equivalent complete generations, 0 or more: 2 for a bird with both parents and all four grandparents known and nothing above */
  readonly equivalent: number
  /** generations in which every ancestor is known, whichever of the possible parents is the true one */
  readonly full: number
}

/**
 * How much does an F rest on? With unknown ancestors it is "at least".
 *
 *     t(i) = ½ Σ p(s) (1 + t(s)) + ½ Σ p(d) (1 + t(d))      over the known parents that it may have; founders 0
 *     full = 1 + the least full over all of them, 0 where a parent may be unknown
 *
 * The first is the sum of (½)^g over known ancestors g generations back. An unknown parent adds nothing, nor does what chances want to 1.
 * A stand-in is as well known as the birds it may be, in the mean; one of which nothing is known is an unknown bird.
 *
 * @returns one entry an animal
 * @see Maignel, Boichard & Verrier 1996, Interbull Bull. 14:49 (from memory)
 * @example a bird with four known grandparents: {equivalent: 2, full: 2}
 */
export function completeness({animals}: Pedigree): readonly Completeness[] {
  const nameless = new Set(animals.flatMap(({damStandIn}) => (damStandIn !== undefined && isFounder(animals[damStandIn]) ? [damStandIn] : [])))
  const known = new Float64Array(animals.length), equivalent = new Float64Array(animals.length)
  const full = new Int32Array(animals.length)

  for (const here of parentsFirst(animals.length, index => aboveOf(animals[index])).order) {
    const {matings = [], oneOf, damStandIn} = animals[here] ?? {}
    known[here] = nameless.has(here) ? 0 : 1
    if (oneOf) {
      known[here] = sumOver(oneOf, one => known[one.animal] ?? 0)
      equivalent[here] = sumOver(oneOf, one => equivalent[one.animal] ?? 0)
      full[here] = isWhole(known[here] ?? 0) ? least(oneOf.map(one => full[one.animal] ?? 0)) : 0
    } else if (matings.length > 0) {
      const sires = matings.map(({sire, chance}) => ({parent: sire, chance}))
      const dams = damStandIn === undefined ? matings.map(({dam, chance}) => ({parent: dam, chance})) : [{parent: damStandIn, chance: 1}]
      equivalent[here] = (sumOver(sires, generations) + sumOver(dams, generations)) / 2
      const both = isWhole(sumOver(sires, knownParent)) && isWhole(sumOver(dams, knownParent))
      full[here] = both ? 1 + least([...sires, ...dams].map(({parent}) => (parent === null ? 0 : full[parent] ?? 0))) : 0
    }
  }
  return animals.map((_, index) => ({equivalent: equivalent[index] ?? 0, full: full[index] ?? 0}))

  function knownParent({parent}: Candidate): number {
    return parent === null ? 0 : known[parent] ?? 0
  }
  function generations({parent}: Candidate): number {
    return parent === null ? 0 : (known[parent] ?? 0) + (equivalent[parent] ?? 0)
  }
}

interface Candidate {
  readonly parent: number | null
}

const sumOver = <T extends {readonly chance: number}>(list: readonly T[], value: (each: T) => number): number =>
  list.reduce((sum, each) => sum + each.chance * value(each), 0)
const isWhole = (chance: number): boolean => chance > 1 - 1e-9
const least = (list: readonly number[]): number => list.reduce((low, each) => Math.min(low, each), Infinity)
