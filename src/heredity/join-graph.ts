import {LiveScopes, type Scope} from './live-scopes.ts'
import {entriesOver} from './tables.ts'

/** A table over some variables: the last of `of` runs fastest. Entries are at least 0. */
export interface Factor {
  readonly of: readonly number[]
  readonly table: Float64Array
}

export interface Cluster {
  /** rising numbers of variables */
  readonly of: readonly number[]
  /** places in the list of factors */
  readonly factors: readonly number[]
}

/** Clusters `from` < `to`, which tell each other what they know of `of`. */
export interface Edge {
  readonly from: number
  readonly to: number
  readonly of: readonly number[]
}

export interface JoinGraph {
  readonly clusters: readonly Cluster[]
  readonly edges: readonly Edge[]
  /** the cluster that a variable was summed out of first; −1 for a variable in no factor */
  readonly home: Int32Array
  /** no variable was parted: the clusters make trees, and two sweeps are exact */
  readonly exact: boolean
}

/**
 * How is a product of tables over many variables to be summed? In clusters of few variables each, with messages between them.
 *
 * Variables are summed out one after another, in the order that `LiveScopes` gives. As long as every cluster stays within the bound the clusters make trees,
 * and two sweeps of messages give every marginal exactly. A variable whose tables together would pass the bound is summed out of them in several clusters,
 * each tied to the next by all that both hold; what went over that tie does not go further down from the earlier one too, for two ways to the same place
 * would count one thing twice. The clusters then make a graph with rings, and messages are sent until they settle. Either way the clusters that hold a
 * variable, with the edges that speak of it, make one tree.
 *
 * @param sizes how many values each variable has
 * @param scopes the variables of each factor
 * @param bound most entries of a cluster that joins several tables
 * @param whole give up, with null, where a variable would have to be parted, or all clusters together would hold more entries than this
 * @param alike choose by the number of pairs joined, whatever their sizes
 * @see Dechter 1999, Artificial Intelligence 113:41 for bucket elimination; Mateescu, Kask, Gogate & Dechter 2010, JAIR 37:279 for join graphs (both from memory)
 */
export function joinGraph(sizes: ArrayLike<number>, scopes: readonly (readonly number[])[], bound: number, whole: number | null = null, alike = false): JoinGraph | null {
  const live = new LiveScopes(sizes, alike)
  scopes.forEach((of, factor) => live.add({of: [...of].sort((a, b) => a - b), factor, cluster: -1}))
  const clusters: Cluster[] = [], edges: Edge[] = []
  const home = new Int32Array(sizes.length).fill(-1)
  let exact = true, entries = 0
  for (let variable = live.next(); variable !== null; variable = live.next()) {
    const summed = variable, groups = parted(live.take(summed), bound, sizes)
    // a single table may be wider than the bound, for it cannot be parted; not so where all must be whole
    if (groups.length > 1 || (whole !== null && groups.some(({of}) => entriesOver(of, sizes) > bound))) exact = false
    groups.forEach(({of, members}, index) => {
      entries += entriesOver(of, sizes)
      const cluster = clusters.push({of, factors: members.filter(({factor}) => factor >= 0).map(({factor}) => factor)}) - 1
      for (const member of members) if (member.cluster >= 0) edges.push({from: member.cluster, to: cluster, of: member.of})
      if (index === 0) home[summed] = cluster
      const before = groups[index - 1]?.of ?? []
      const shared = of.filter(each => before.includes(each))
      if (index > 0) edges.push({from: cluster - 1, to: cluster, of: shared})
      const rest = of.filter(each => each !== summed && !shared.includes(each))
      if (rest.length > 0) live.add({of: rest, factor: -1, cluster})
    })
    if (whole !== null && (!exact || entries > whole)) return null
  }
  return {clusters, edges, home, exact}
}

interface Group {
  of: number[]
  readonly members: Scope[]
}

/** Scopes that share the variable, joined as far as the bound allows: the largest first, each with the first group it fits. */
function parted(scopes: readonly Scope[], bound: number, sizes: ArrayLike<number>): readonly Group[] {
  const groups: Group[] = []
  const byFalling = [...scopes].sort((a, b) => b.of.length - a.of.length || a.cluster - b.cluster || a.factor - b.factor)
  for (const scope of byFalling) {
    const found = groups.find(group => fits(group, scope, bound, sizes))
    if (found) {
      found.of = union(found.of, scope.of)
      found.members.push(scope)
    } else groups.push({of: [...scope.of], members: [scope]})
  }
  return groups
}

function fits({of}: Group, scope: Scope, bound: number, sizes: ArrayLike<number>): boolean {
  const joined = union(of, scope.of)
  return joined.length === of.length || entriesOver(joined, sizes) <= bound
}

/** of two rising lists */
function union(a: readonly number[], b: readonly number[]): number[] {
  const all: number[] = []
  let i = 0, j = 0
  while (i < a.length || j < b.length) {
    const left = a[i] ?? Infinity, right = b[j] ?? Infinity
    all.push(Math.min(left, right))
    if (left <= right) i++
    if (right <= left) j++
  }
  return all
}
