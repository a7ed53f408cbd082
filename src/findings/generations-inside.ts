import type {Bird, Logbook} from '../logbook/book.ts'

/** Generations mated inside the breed behind a bird. */
export interface GenerationsInside {
  /** by the parents that make it fewest, and by those that make it most */
  readonly least: number
  readonly most: number
  /** the shortest way back: the bird itself, the parent through whom it goes, and so on to the first that had a parent from outside; that parent is last where it is in the book */
  readonly chain: readonly Bird[]
}

/**
 * How many generations lie between each bird of the breed and the nearest bird from outside it? A bird of a pure strain, a founder and a parent that is not in the book are from outside. A bird with
 * such a parent has none behind it; any other has one more than that parent of its two that has fewer:
 *
 *     g = 0 with a parent from outside, else 1 + min(g of the sire, g of the dam)
 *
 * Joining two lines of the breed is mating inside it. Where several pairs may have had the bird, the least and the most over them stand apart. F1 0, F2 1, BC3 0, BC3F2 1 as in the steps.
 */
export function generationsInside({birds}: Pick<Logbook, 'birds'>): ReadonlyMap<Bird, GenerationsInside> {
  const found = new Map<Bird, GenerationsInside>()
  for (const bird of birds) {
    if (isFromOutside(bird)) continue
    const pairs = bird.parentage.pairs.map(({sire, dam}) => {
      const outside = [sire, dam].find(parent => parent === null || !found.has(parent))
      if (outside !== undefined) return {least: 0, most: 0, chain: outside === null ? [] : [outside]}
      const parents = [sire, dam].flatMap(parent => (parent && found.get(parent)) ?? []), [one, other] = parents
      const shorter = one && other && other.least < one.least ? other : one
      return {least: 1 + Math.min(...parents.map(({least}) => least)), most: 1 + Math.min(...parents.map(({most}) => most)), chain: shorter?.chain ?? []}
    })
    const shortest = pairs.reduce<(typeof pairs)[number] | null>((best, pair) => (best === null || pair.least < best.least ? pair : best), null)
    found.set(bird, {least: shortest?.least ?? 0, most: Math.max(0, ...pairs.map(({most}) => most)), chain: [bird, ...shortest?.chain ?? []]})
  }
  return found
}

/** Bought in, or of a pure strain. */
const isFromOutside = ({step, parentage}: Bird): boolean => step.kind === 'strain' || parentage.kind === 'founder'
