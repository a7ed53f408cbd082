/** Genes dropped through a pedigree: what every bird truly is at one locus, and what a keeper would have written of it. Seeded. */
import type {Flock} from '../../src/heredity/flock.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {parentsFirst} from '../../src/heredity/parents-first.ts'
import type {Pedigree} from '../../src/pedigree/pedigree.ts'
import {chanceOf} from './chance.ts'

export interface Dropped {
  readonly flock: Flock
  /** by animal: allele from its sire and from its dam; 0 is the dominant one */
  readonly genes: readonly (readonly [number, number])[]
  /** by animal: the mating it truly came from; null of a founder */
  readonly bornOf: readonly ({readonly sire: number | null; readonly dam: number | null} | null)[]
}

export interface Drop {
  /** share of the dominant allele among founders */
  readonly dominant: number
  /** share of birds that were scored */
  readonly scored: number
  /** share of scores that are wrong, both ways alike */
  readonly wrong: number
}

const COMB: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}

/** A dominant gene of an autosome, as pea comb is; every parent is a bird of the pedigree. */
export function dropGenes(seed: number, pedigree: Pedigree, {dominant, scored, wrong}: Drop): Dropped {
  const chance = chanceOf(seed), genes: (readonly [number, number])[] = [], bornOf: Dropped['bornOf'][number][] = []
  const drawn = (): number => (chance.happens(dominant) ? 0 : 1)
  const handed = (parent: number | null): number => (parent === null ? drawn() : genes[parent]?.[chance.whole(0, 1)] ?? 0)
  for (const index of parentsFirst(pedigree.animals)) {
    const matings = pedigree.animals[index]?.matings ?? []
    let left = 1
    const mating = matings.find(each => {
      const taken = chance.happens(each.chance / left)
      left -= each.chance
      return taken
    }) ?? matings.at(-1) ?? null
    bornOf[index] = mating
    genes[index] = mating ? [handed(mating.sire), handed(mating.dam)] : [drawn(), drawn()]
  }
  const readings = genes.map(([a, b]) => {
    if (!chance.happens(scored)) return []
    const pea = a === 0 || b === 0
    return [{trait: 0, scored: [pea === chance.happens(wrong) ? 1 : 0]}]
  })
  return {
    genes, bornOf,
    flock: {
      pedigree, loci: [COMB], linkages: [],
      traits: [{
        look: {loci: [0], states: ['pea', 'single'], seenIn: null, rules: [{patterns: [[0, 'any']], is: 0, sex: null, penetrance: 1}, {patterns: [null], is: 1, sex: null, penetrance: 1}]},
        misscoring: [[1 - wrong, wrong], [wrong, 1 - wrong]],
      }],
      shares: () => [[dominant, 1 - dominant]],
      readings: animal => readings[animal] ?? [],
      tested: () => null,
    },
  }
}
