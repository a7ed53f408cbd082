import type {Bird} from '../logbook/book.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** F of the chicks of two birds: the mean over what is doubtful, and the least and most over the parents that the two may have. */
export interface ChicksOfPair {
  readonly mean: number
  readonly low: number
  readonly high: number
}

/** A bird, or the population that a parent outside the book is drawn from, as a node of the gene flow; null where neither is known. */
type Source = number | null

/** What a bird in doubt may be: a chick of one of its matings, or one of the birds it was found to be perhaps. Its genes come from these in equal parts. */
type Possibility = readonly [sire: Source, dam: Source] | readonly [itself: Source]

/**
 * What would the F of their chicks be, for any two of a set of birds?
 *
 *     mean = K(a, b)
 *     range over the matings p of a and q of b:  ¼ (K(sₚ, s_q) + K(sₚ, d_q) + K(dₚ, s_q) + K(dₚ, d_q))
 *
 * Where b is a parent of a, or an ancestor further up, its kinship with itself is that of a chick of q, ½ (1 + K(s_q, d_q)), and the ways down from it to a
 * are gone by their chances. Chicks of one family have one dam in every case. Doubt about other birds is averaged. The range holds the mean, whatever
 * the chances want to the whole.
 *
 * @param birds those that will be asked about; their kinships are worked at once
 */
export function pairKinship(
  {pedigree: {animals}, numberOf}: Pick<PedigreeOfBook, 'pedigree' | 'numberOf'>, {autosome}: Pick<Kinship, 'autosome'>, birds: readonly Bird[],
): (a: Bird, b: Bird) => ChicksOfPair {
  const {bases, level, first, source, weight} = autosome.flow
  const nodeOf = (bird: Bird) => bases + numberOf(bird)
  const asked = birds.map(nodeOf)
  const possibilities = new Map(asked.map(node => [node, possibilitiesOf(node)] as const))
  const all = [...new Set([...asked, ...[...possibilities.values()].flatMap(each => each?.flat() ?? []).filter(node => node !== null)])]
  const place = new Map(all.map((node, index) => [node, index] as const))
  const rows = autosome.amongNodes(all)
  const ancestors = new Map<number, ReadonlySet<number>>()

  return (one, other) => {
    const [a, b] = [nodeOf(one), nodeOf(other)].sort((x, y) => (level[y] ?? 0) - (level[x] ?? 0)) as [number, number]
    const mean = between(a, b)
    let low = mean, high = mean
    const dam = animals[a - bases]?.damStandIn
    const isFamily = dam !== undefined && dam === animals[b - bases]?.damStandIn
    for (const p of possibilities.get(a) ?? [[a] as const]) {
      for (const q of possibilities.get(b) ?? [null]) {
        if (isFamily && p[1] !== q?.[1]) continue
        const f = meanOver(p, side => against(side, b, q))
        low = Math.min(low, f)
        high = Math.max(high, f)
      }
    }
    return {mean, low, high}
  }

  /** null where there is no doubt */
  function possibilitiesOf(node: number): readonly Possibility[] | null {
    const {matings = [], oneOf, outside} = animals[node - bases] ?? {}
    if (oneOf) return oneOf.map(each => [bases + each.animal] as const)
    const from = (parent: number | null, beyond: number | null = null): Source => (parent === null ? beyond : bases + parent)
    return matings.length > 1 ? matings.map(({sire, dam}) => [from(sire, outside?.sire), from(dam, outside?.dam)] as const) : null
  }

  function between(a: Source, b: Source): number {
    if (a === null || b === null) return 0
    const [row, column] = [place.get(a), place.get(b)]
    return Math.max(0, (row === undefined || column === undefined ? autosome.amongNodes([a, b])[0]?.[1] : rows[row]?.[column]) ?? NaN)
  }

  /** kinship of a bird with b, if b is this */
  function against(side: Source, b: number, q: Possibility | null): number {
    if (q === null || side === null) return between(side, b)
    if (side === b) return q.length === 1 ? between(q[0], q[0]) : (1 + between(q[0], q[1])) / 2
    if (!above(side).has(b)) return meanOver(q, parent => between(side, parent))
    let sum = 0
    for (let k = first[side] ?? 0, end = first[side + 1] ?? 0; k < end; k++) sum += (weight[k] ?? 0) * against(source[k] ?? 0, b, q)
    return sum
  }

  /** all that a bird descends from, or may */
  function above(node: number): ReadonlySet<number> {
    const known = ancestors.get(node)
    if (known) return known
    const found = new Set(source.slice(first[node], first[node + 1]))
    for (const here of found) for (const next of source.subarray(first[here], first[here + 1])) found.add(next)
    ancestors.set(node, found)
    return found
  }
}

const meanOver = (sources: Possibility, of: (each: Source) => number): number => sources.reduce<number>((sum, each) => sum + of(each), 0) / sources.length
