import {closedAncestry, type Ancestor} from './closed-ancestry.ts'
import {isWithin} from './contributions.ts'
import type {GeneFlow} from './gene-flow.ts'

export interface EffectiveAncestors {
  /** the ancestors that explain most, each with the share of the group's genes that came through it and through none named before */
  readonly ancestors: readonly (Pick<Ancestor, 'animal' | 'unknown' | 'base'> & {readonly marginal: number})[]
  /** share of the genes that came through none of those named; 0 when the search ran to its end */
  readonly unexplained: number
  /** fa lies between these; equal when nothing is left unexplained, 0 for an empty group */
  readonly low: number
  readonly high: number
}

/**
 * Through how many ancestors did a group's genes really come? Fewer than its founders where descent has passed a bottleneck.
 *
 *     p(1) = the largest share of the group's genes that came through one ancestor
 *     p(k) = the largest further share that came through one ancestor and through none of those before
 *     fa   = 1 / Σ p(k)²
 *
 * A gene's way up is drawn by the weights of the gene flow, so doubtful parents need nothing special. A round is one pass up, for the genes that
 * reach each ancestor through none of those named, and one down, for the share of its own genes that came through none of them. Of equals the
 * older is named, then the one that stands first in the pedigree.
 *
 * Marginal shares never rise from round to round. So when the search stops with r unexplained, what is left adds between nothing and r·p(last) to Σ p²,
 * and fa lies between 1/(Σ p² + r·p(last)) and 1/Σ p².
 *
 * Animals of the group may be named themselves, unknown parents as birds of their own (as in `contributions`). As a rule fg ≤ fa ≤ fe; but the search
 * takes the largest each time and not the best set, and in a group of parents and their own chicks fa may come out a little above fe.
 *
 * @param rest the search stops when no more than this is unexplained; default 0.001
 * @param base only the genes that come from this base population and those within it, their shares rescaled to 1; null for those of no base
 * @see Boichard, Maignel & Verrier 1997, Genet. Sel. Evol. 29:5 (from memory; the bounds are worked out here)
 * @example four founders in two pairs, one chick a pair, all the group from these two: fe 4, fa 2
 */
export function effectiveAncestors(
  flow: GeneFlow, group: readonly number[], {rest = 0.001, base}: {rest?: number; base?: number | null} = {},
): EffectiveAncestors {
  const {ancestors, first, way, share, start} = closedAncestry(flow, group)
  const count = ancestors.length
  const counted = ancestors.map(origin => (origin.isOrigin && (base === undefined || isWithin(flow, origin.base, base)) ? 1 : 0))
  const named = new Uint8Array(count)
  const reach = new Float64Array(count), free = new Float64Array(count)
  const depth = depths(count, first, way)

  const found: EffectiveAncestors['ancestors'][number][] = []
  let whole = NaN, unexplained: number, squares = 0, last = 1
  for (;;) {
    down()
    const left = start.reduce((sum, part, place) => sum + part * (free[place] ?? 0), 0)
    if (found.length === 0) whole = left
    unexplained = whole > 0 && left > whole * 1e-12 ? left / whole : 0
    if (unexplained === 0 || unexplained <= rest) break
    up()
    const place = mostAt()
    const marginal = (reach[place] ?? 0) * (free[place] ?? 0) / whole
    named[place] = 1
    const {animal = NaN, unknown = null, base: from = null} = ancestors[place] ?? {}
    found.push({animal, unknown, base: from, marginal})
    squares += marginal * marginal
    last = marginal
  }
  const high = squares === 0 ? 0 : 1 / squares
  return {ancestors: found, unexplained, low: squares === 0 ? 0 : 1 / (squares + unexplained * last), high}

  /** share of each place's genes that came through no one named, itself included, from an origin that counts */
  function down(): void {
    for (let place = 0; place < count; place++) {
      let sum = counted[place] ?? 0
      for (let k = first[place] ?? 0, end = first[place + 1] ?? 0; k < end; k++) sum += (share[k] ?? 0) * (free[way[k] ?? 0] ?? 0)
      free[place] = named[place] ? 0 : sum
    }
  }
  /** share of the group's genes that reach each place through no one named */
  function up(): void {
    reach.set(start)
    for (let place = count - 1; place >= 0; place--) {
      const here = reach[place] ?? 0
      if (here === 0 || named[place]) continue
      for (let k = first[place] ?? 0, end = first[place + 1] ?? 0; k < end; k++) {
        const above = way[k] ?? 0
        reach[above] = (reach[above] ?? 0) + here * (share[k] ?? 0)
      }
    }
  }
  function mostAt(): number {
    let best = 0, most = 0
    for (let place = 0; place < count; place++) {
      const marginal = (reach[place] ?? 0) * (free[place] ?? 0)
      // sums of the same shares in another order differ by a hair
      if (marginal > most * (1 + 1e-9) || (marginal > most * (1 - 1e-9) && isBefore(place, best))) {
        best = place
        most = Math.max(most, marginal)
      }
    }
    return best
  }
  function isBefore(a: number, b: number): boolean {
    const [one, other] = [depth[a] ?? 0, depth[b] ?? 0]
    return one === other ? (ancestors[a]?.animal ?? 0) < (ancestors[b]?.animal ?? 0) : one < other
  }
}

/** Longest way up from each place to an origin. */
function depths(count: number, first: Int32Array, way: Int32Array): Int32Array {
  const depth = new Int32Array(count)
  for (let place = 0; place < count; place++) {
    for (let k = first[place] ?? 0, end = first[place + 1] ?? 0; k < end; k++) depth[place] = Math.max(depth[place] ?? 0, 1 + (depth[way[k] ?? 0] ?? 0))
  }
  return depth
}
