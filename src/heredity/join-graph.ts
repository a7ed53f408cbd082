/**
 * How a product of tables over many variables is to be summed: clusters of few variables each, and the messages between them.
 *
 * Variables are summed out one after another, always the one whose cluster is smallest (least weight). As long as every cluster stays within the bound
 * the clusters make a tree, and two sweeps of messages give every marginal exactly. A variable whose tables together would pass the bound is summed out
 * of them in several clusters that agree about that variable alone: the clusters then make a graph with rings, and messages are sent until they settle.
 *
 * @see Dechter 1999, Artificial Intelligence 113:41 for bucket elimination; Mateescu, Kask, Gogate & Dechter 2010, JAIR 37:279 for the join graph (both from memory)
 */

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

interface Scope {
  readonly of: readonly number[]
  /** a factor's number, or a cluster that sends its message here */
  readonly factor: number
  readonly cluster: number
}

/**
 * @param sizes how many values each variable has
 * @param scopes the variables of each factor
 * @param bound most entries of a cluster that joins several tables
 * @param whole give up, with null, where a variable would have to be parted, or all clusters together would hold more entries than this
 */
export function joinGraph(sizes: ArrayLike<number>, scopes: readonly (readonly number[])[], bound: number, whole: number | null = null): JoinGraph | null {
  const live = new LiveScopes(sizes)
  scopes.forEach((of, factor) => live.add({of: [...of].sort((a, b) => a - b), factor, cluster: -1}))
  const clusters: Cluster[] = [], edges: Edge[] = []
  const home = new Int32Array(sizes.length).fill(-1)
  let exact = true, entries = 0
  for (let next = live.next(); next !== null; next = live.next()) {
    const variable = next
    const groups = parted(live.take(variable), bound, sizes)
    if (groups.length > 1) exact = false
    groups.forEach(({of, members}, index) => {
      entries += size(of, sizes)
      const cluster = clusters.push({of, factors: members.filter(({factor}) => factor >= 0).map(({factor}) => factor)}) - 1
      for (const member of members) if (member.cluster >= 0) edges.push({from: member.cluster, to: cluster, of: member.of})
      if (index === 0) home[variable] = cluster
      else edges.push({from: cluster - 1, to: cluster, of: [variable]})
      const rest = of.filter(other => other !== variable)
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
  return joined.length === of.length || size(joined, sizes) <= bound
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

const size = (of: readonly number[], sizes: ArrayLike<number>): number => of.reduce((product, variable) => product * (sizes[variable] ?? 1), 1)

/** The scopes not yet summed, and which variable costs least to sum out next. */
class LiveScopes {
  readonly #sizes: ArrayLike<number>
  readonly #of = new Map<number, Set<Scope>>()
  /** variable → the others it stands with, and in how many scopes */
  readonly #beside = new Map<number, Map<number, number>>()
  /** logarithm of the size of the cluster that summing the variable out would make */
  readonly #weight: Float64Array
  readonly #heap: Heap

  constructor(sizes: ArrayLike<number>) {
    this.#sizes = sizes
    this.#weight = Float64Array.from(sizes, Math.log)
    this.#heap = new Heap()
  }

  add(scope: Scope): void {
    for (const variable of scope.of) {
      const scopes = this.#of.get(variable)
      if (scopes) scopes.add(scope)
      else this.#of.set(variable, new Set([scope]))
      const beside = this.#beside.get(variable) ?? new Map<number, number>()
      this.#beside.set(variable, beside)
      for (const other of scope.of) {
        if (other === variable) continue
        const times = beside.get(other) ?? 0
        beside.set(other, times + 1)
        if (times === 0) this.#weigh(variable, Math.log(this.#sizes[other] ?? 1))
      }
      this.#heap.push(this.#weight[variable] ?? 0, variable)
    }
  }

  /** the scopes that hold the variable, which are no longer live */
  take(variable: number): readonly Scope[] {
    const taken = [...this.#of.get(variable) ?? []]
    for (const scope of taken) {
      for (const each of scope.of) {
        this.#of.get(each)?.delete(scope)
        const beside = this.#beside.get(each)
        for (const other of scope.of) {
          if (other === each || !beside) continue
          const times = beside.get(other) ?? 0
          if (times > 1) beside.set(other, times - 1)
          else if (beside.delete(other)) this.#weigh(each, -Math.log(this.#sizes[other] ?? 1))
        }
        if (each !== variable) this.#heap.push(this.#weight[each] ?? 0, each)
      }
    }
    this.#of.delete(variable)
    return taken
  }

  next(): number | null {
    for (let top = this.#heap.pop(); top !== null; top = this.#heap.pop()) {
      if ((this.#of.get(top.variable)?.size ?? 0) > 0 && top.weight === this.#weight[top.variable]) return top.variable
    }
    return null
  }

  #weigh(variable: number, by: number): void {
    this.#weight[variable] = (this.#weight[variable] ?? 0) + by
  }
}

interface Weighed {
  readonly weight: number
  readonly variable: number
}

/** The least first: by weight, then by number. */
class Heap {
  readonly #items: Weighed[] = []

  push(weight: number, variable: number): void {
    const items = this.#items, item = {weight, variable}
    let at = items.push(item) - 1
    while (at > 0) {
      const up = (at - 1) >> 1
      if (!this.#before(item, items[up])) break
      this.#swap(at, up)
      at = up
    }
  }

  pop(): Weighed | null {
    const items = this.#items, [top] = items, last = items.pop()
    if (!top || !last) return null
    if (items.length === 0) return top
    items[0] = last
    for (let at = 0; ;) {
      const left = 2 * at + 1, right = left + 1
      let least = at
      if (this.#before(items[left], items[least])) least = left
      if (this.#before(items[right], items[least])) least = right
      if (least === at) return top
      this.#swap(at, least)
      at = least
    }
  }

  #before(a: Weighed | undefined, b: Weighed | undefined): boolean {
    return a !== undefined && b !== undefined && (a.weight < b.weight || (a.weight === b.weight && a.variable < b.variable))
  }

  #swap(a: number, b: number): void {
    const items = this.#items, x = items[a], y = items[b]
    if (!x || !y) return
    items[a] = y
    items[b] = x
  }
}
