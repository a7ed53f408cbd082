import {climb, closedAncestry, type Ancestor} from './closed-ancestry.ts'
import type {GeneFlow} from './gene-flow.ts'
import {isFounder} from './pedigree.ts'

export interface Contributions {
  /** every founder of the pedigree by its number, also those with nothing left in the group; shares with those of `unknown` sum to 1 */
  readonly founders: readonly {readonly animal: number; readonly base: number | null; readonly share: number}[]
  /** unknown birds with a share, each a founder of its own: behind which animal each stands, and as what */
  readonly unknown: readonly {readonly behind: number; readonly as: 'sire' | 'dam' | 'itself'; readonly base: number | null; readonly share: number}[]
  /** fe: as many founders of equal share would keep as much; 0 for an empty group */
  readonly effective: number
  /** by base population, those within it counted in; the last entry is of founders without one. fe is of the shares within it, rescaled to 1 */
  readonly byBase: readonly {readonly base: number | null; readonly share: number; readonly effective: number}[]
}

/**
 * What is left of each founder in a group of birds, and how many founders does that amount to?
 *
 *     p(k) = expected share of founder k's genes in the group       Σ p = 1
 *     fe   = 1 / Σ p(k)²                                            1 … number of founders
 *
 * One climb from the group through the gene flow. Every unknown parent is a founder of its own, one for each chick; that is the most founders there
 * can have been. Founders that are kin or of one base are not independent either: hence fe by base as well.
 *
 * @param flow of the autosomes, the Z or the dam line: the founders of those genes
 * @param group animals, such as the living breeders
 * @see Lacy 1989, Zoo Biol. 8:111 (from memory)
 * @example two founders, shares ½ and ½: fe 2; shares ¾ and ¼: fe 1.6
 */
export function contributions(flow: GeneFlow, group: readonly number[]): Contributions {
  const {animals, bases} = flow.pedigree
  const ancestry = closedAncestry(flow, group)
  const reach = climb(ancestry, ancestry.start.slice())
  const origins = ancestry.ancestors.flatMap((ancestor, place) => (ancestor.isOrigin ? [{...ancestor, share: reach[place] ?? 0}] : []))
  const known = new Map(origins.flatMap(({animal, unknown, share: part}) => (unknown === null ? [[animal, part] as const] : [])))
  const ofBase = (base: number | null) => {
    const theirs = origins.filter(origin => isWithin(flow, origin.base, base)).map(origin => origin.share)
    const whole = theirs.reduce((sum, part) => sum + part, 0)
    return {base, share: whole, effective: effectiveNumber(theirs)}
  }
  return {
    founders: animals.flatMap((bird, animal) => (isFounder(bird) ? [{animal, base: bird.base, share: known.get(animal) ?? 0}] : [])),
    unknown: origins.flatMap(({animal, unknown, base, share}) => (unknown === null || share === 0 ? [] : [{behind: animal, as: unknown, base, share}])),
    effective: effectiveNumber(origins.map(origin => origin.share)),
    byBase: [...bases.map((_, base) => ofBase(base)), ofBase(null)],
  }
}

/** As many equal shares would have the same sum of squares: (Σp)² / Σp², which is 1/Σp² for shares that sum to 1; 0 of nothing. */
function effectiveNumber(shares: readonly number[]): number {
  let sum = 0, squares = 0
  for (const share of shares) {
    sum += share
    squares += share * share
  }
  return squares === 0 ? 0 : sum * sum / squares
}

/** Is a founder of this base one of that population? Of null are those without a base. */
export function isWithin({pedigree: {bases}}: GeneFlow, base: Ancestor['base'], population: number | null): boolean {
  for (let around = base; around !== null; around = bases[around]?.within ?? null) if (around === population) return true
  return base === null && population === null
}
