/** Which variables stand together in a table. */
export interface Scope {
  /** rising numbers of variables */
  readonly of: readonly number[]
  /** a factor's number, or −1 */
  readonly factor: number
  /** the cluster that sends its message here, or −1 */
  readonly cluster: number
}

/**
 * Scopes not yet summed, and which variable is best summed out next: the one that would newly join the least pairs of others, each pair
 * weighed by the logarithms of its sizes (weighted fill); of these the one whose cluster is smallest, of these the lowest number. Both are heuristics: the best
 * order of all is not to be had in reasonable time. With pools of many values beside genotypes of three, weighing often makes clusters far smaller than
 * counting the pairs does; now and then it is the other way round.
 *
 * @see Kjærulff 1990, Triangulation of graphs, Aalborg University R 90-09, for the choice by fill and by weight (from memory)
 */
export class LiveScopes {
  readonly #sizes: ArrayLike<number>
  readonly #logSizes: Float64Array
  readonly #scopes: (Set<Scope> | undefined)[] = []
  /** by variable: the others it stands with, and in how many scopes; 0 where it has stood with one until the last choice */
  readonly #beside: (Map<number, number> | undefined)[] = []
  /** by variable: what pairs of others that stand with it but not with each other weigh, and the size of its cluster */
  readonly #fill: Float64Array
  readonly #weight: Float64Array
  /** since the last choice: variables in new scopes, and pairs, one after another, that now stand together, or no longer do */
  readonly #fresh = new Set<number>()
  readonly #joined: number[] = []
  readonly #parted: number[] = []
  readonly #heap = new Heap()

  /**
   * @param sizes how many values each variable has
   * @param alike weigh all pairs alike
   */
  constructor(sizes: ArrayLike<number>, alike = false) {
    this.#sizes = sizes
    this.#fill = new Float64Array(sizes.length).fill(-1)
    this.#logSizes = Float64Array.from(sizes, size => (alike ? 1 : Math.log(size)))
    this.#weight = new Float64Array(sizes.length)
  }

  add(scope: Scope): void {
    for (const a of scope.of) {
      const scopes = this.#scopes[a] ??= new Set(), beside = this.#beside[a] ??= new Map<number, number>()
      scopes.add(scope)
      this.#fresh.add(a)
      for (const b of scope.of) {
        if (a === b) continue
        const times = beside.get(b)
        if (times === undefined && a < b) this.#joined.push(a, b)
        beside.set(b, (times ?? 0) + 1)
      }
    }
  }

  /** the scopes that hold the variable, which are no longer live */
  take(variable: number): readonly Scope[] {
    const taken = [...this.#scopes[variable] ?? []]
    for (const scope of taken) {
      for (const a of scope.of) {
        this.#scopes[a]?.delete(scope)
        const beside = this.#beside[a]
        if (!beside) continue
        for (const b of scope.of) {
          if (a === b) continue
          const times = (beside.get(b) ?? 1) - 1
          beside.set(b, times)
          if (times === 0 && a < b) this.#parted.push(a, b)
        }
      }
    }
    return taken
  }

  /** the variable to sum out next; null when none is left */
  next(): number | null {
    this.#weighAnew()
    for (let top = this.#heap.pop(); top !== null; top = this.#heap.pop()) {
      const {variable} = top
      if ((this.#scopes[variable]?.size ?? 0) > 0 && top.fill === this.#fill[variable] && top.weight === this.#weight[variable]) return variable
    }
    return null
  }

  /** A pair that joins or parts changes its own two, and what stands with both. */
  #weighAnew(): void {
    const stale = new Set(this.#fresh)
    const changed = (a: number, b: number): void => {
      stale.add(a).add(b)
      const one = this.#beside[a], other = this.#beside[b]
      if (!one || !other) return
      const [fewer, more] = one.size < other.size ? [one, other] : [other, one]
      for (const each of fewer.keys()) if (more.has(each)) stale.add(each)
    }
    for (let at = 0; at < this.#joined.length; at += 2) changed(this.#joined[at] ?? 0, this.#joined[at + 1] ?? 0)
    for (let at = 0; at < this.#parted.length; at += 2) {
      const a = this.#parted[at] ?? 0, b = this.#parted[at + 1] ?? 0
      if (this.#beside[a]?.get(b) !== 0) continue
      this.#beside[a].delete(b)
      this.#beside[b]?.delete(a)
      changed(a, b)
    }
    this.#fresh.clear()
    this.#joined.length = this.#parted.length = 0
    for (const variable of stale) if ((this.#scopes[variable]?.size ?? 0) > 0) this.#weigh(variable)
  }

  #weigh(variable: number): void {
    const own = this.#beside[variable]
    if (!own) return
    let weight = this.#sizes[variable] ?? 1, sum = 0, squares = 0, ends = 0
    for (const other of own.keys()) {
      const its = this.#beside[other], size = this.#logSizes[other] ?? 0
      weight *= this.#sizes[other] ?? 1
      sum += size
      squares += size * size
      if (!its) continue
      const [fewer, more] = its.size < own.size ? [its, own] : [own, its]
      for (const each of fewer.keys()) if (more.has(each)) ends += size * (this.#logSizes[each] ?? 0)
    }
    // all pairs, without those that stand together, which were met from both their ends; rounded, so that equal ones are equal in whatever order they were added
    const fill = Math.round((sum * sum - squares - ends) * 1e6) / 2e6
    if (this.#fill[variable] === fill && this.#weight[variable] === weight) return
    this.#fill[variable] = fill
    this.#weight[variable] = weight
    this.#heap.push({fill, weight, variable})
  }
}

interface Weighed {
  readonly fill: number
  readonly weight: number
  readonly variable: number
}

/** The least first. */
class Heap {
  readonly #items: Weighed[] = []

  push(item: Weighed): void {
    const items = this.#items
    let at = items.push(item) - 1
    while (at > 0) {
      const up = (at - 1) >> 1, above = items[up]
      if (!above || !before(item, above)) break
      items[at] = above
      at = up
    }
    items[at] = item
  }

  pop(): Weighed | null {
    const items = this.#items, [top] = items, last = items.pop()
    if (!top || !last) return null
    if (items.length === 0) return top
    let at = 0
    for (;;) {
      const left = items[2 * at + 1], right = items[2 * at + 2]
      if (!left) break
      const [least, place] = right && before(right, left) ? [right, 2 * at + 2] : [left, 2 * at + 1]
      if (!before(least, last)) break
      items[at] = least
      at = place
    }
    items[at] = last
    return top
  }
}

const before = (a: Weighed, b: Weighed): boolean => (a.fill !== b.fill ? a.fill < b.fill : a.weight !== b.weight ? a.weight < b.weight : a.variable < b.variable)
