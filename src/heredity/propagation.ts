import {joinGraph, type Factor, type JoinGraph} from './join-graph.ts'

/** What a product of tables says of each of its variables. */
export interface Propagation {
  /** natural logarithm of the sum of the product over all values of all variables; −Infinity where nothing is possible. Of a component that was not exact, as the settled messages have it */
  readonly logSum: number
  /** every variable's marginal is exact */
  readonly exact: boolean
  /** the largest change of any message in the last sweep; 0 where exact */
  readonly change: number
  readonly sweeps: number
  /** shares of a variable's values, summing to 1 */
  marginal(variable: number): Float64Array
  /** shares over the variables of one factor, in its order of entries */
  joint(factor: number): Float64Array
  /** whether the variable's own component was exact */
  isExact(variable: number): boolean
}

export interface Limits {
  /** most entries of one cluster, and of all, where the answer is to be exact */
  readonly exactCluster: number
  readonly exactAll: number
  /** most entries of a cluster that joins several tables where it is not */
  readonly looseCluster: number
  readonly sweeps: number
  /** messages have settled when none changes by more */
  readonly settled: number
}

export const LIMITS: Limits = {exactCluster: 2 ** 18, exactAll: 2 ** 23, looseCluster: 2 ** 8, sweeps: 200, settled: 1e-6}

/** A table whose largest entry is below this is scaled up before its entries vanish. */
const SMALL = 1e-100

/**
 * Given tables over variables, how likely is each value of each variable under their product?
 *
 * Each connected component is worked by itself: exactly, by a tree of clusters, where the limits allow; otherwise by messages on a graph of clusters, sent to
 * and fro until they settle. A variable in no table has all its values alike.
 *
 * @param sizes how many values each variable has
 * @throws {RangeError} where a table does not fit its variables
 */
export function propagate(sizes: ArrayLike<number>, factors: readonly Factor[], limits: Limits = LIMITS): Propagation {
  for (const {of, table} of factors) {
    if (table.length !== of.reduce((product, variable) => product * (sizes[variable] ?? 0), 1)) throw new RangeError(`a table of ${table.length} entries does not fit variables ${of.join(', ')}`)
  }
  const {componentOf, members} = components(sizes.length, factors)
  const constant = factors.filter(({of}) => of.length === 0).reduce((sum, {table}) => sum + Math.log(table[0] ?? 0), 0)
  const parts = members.map(list => {
    const scopes = list.map(index => factors[index]?.of ?? [])
    const exact = joinGraph(sizes, scopes, limits.exactCluster, limits.exactAll)
    const graph = exact ?? joinGraph(sizes, scopes, limits.looseCluster)
    if (!graph) throw new Error('a graph without a limit is always made')
    return new Part(graph, sizes, list.map(index => factors[index] ?? {of: [], table: new Float64Array([1])}), limits)
  })
  const placeOf = new Map(members.flatMap((list, part) => list.map((factor, place) => [factor, {part, place}] as const)))
  const partOf = (variable: number): Part | undefined => parts[componentOf[variable] ?? -1]
  return {
    logSum: parts.reduce((sum, part) => sum + part.logSum, constant),
    exact: parts.every(({exact}) => exact),
    change: Math.max(0, ...parts.map(({change}) => change)),
    sweeps: Math.max(0, ...parts.map(({sweeps}) => sweeps)),
    marginal(variable) {
      const size = sizes[variable] ?? 0
      return partOf(variable)?.marginal(variable) ?? new Float64Array(size).fill(1 / size)
    },
    joint(factor) {
      const at = placeOf.get(factor)
      const part = at && parts[at.part]
      if (!at || !part) throw new RangeError(`there is no factor ${factor} over variables`)
      return part.joint(at.place)
    },
    isExact: variable => partOf(variable)?.exact ?? true,
  }
}

/** Factors that share variables, straight or through others, are one component. */
function components(variables: number, factors: readonly Factor[]): {componentOf: Int32Array; members: number[][]} {
  const up = Int32Array.from({length: variables}, (_, index) => index)
  const root = (variable: number): number => {
    let at = variable
    while (up[at] !== at) {
      up[at] = up[up[at] ?? at] ?? at
      at = up[at] ?? at
    }
    return at
  }
  for (const {of} of factors) for (const variable of of) up[root(variable)] = root(of[0] ?? variable)
  const componentOf = new Int32Array(variables).fill(-1), numbers = new Map<number, number>(), members: number[][] = []
  factors.forEach(({of}, index) => {
    const [first] = of
    if (first === undefined) return
    const top = root(first), number = numbers.get(top) ?? members.push([]) - 1
    numbers.set(top, number)
    members[number]?.push(index)
    for (const variable of of) componentOf[variable] = number
  })
  return {componentOf, members}
}

/** One way of a message: from one cluster to another. */
interface Way {
  readonly to: number
  /** the same edge, the other way */
  back: number
  readonly message: Float64Array
  /** entry of the sender's table → entry of the message, and of the receiver's → entry */
  readonly sent: Int32Array
  readonly received: Int32Array
}

interface Worked {
  readonly of: readonly number[]
  /** product of its factors */
  readonly table: Float64Array
  /** logarithm of what `table` was divided by */
  readonly scale: number
  /** ways out of it to later and to earlier clusters */
  readonly later: number[]
  readonly earlier: number[]
}

class Part {
  readonly exact: boolean
  readonly change: number
  readonly sweeps: number
  readonly logSum: number
  readonly #clusters: Worked[]
  readonly #ways: Way[] = []
  readonly #sizes: ArrayLike<number>
  readonly #home: Int32Array
  readonly #clusterOfFactor: Int32Array
  readonly #factors: readonly Factor[]
  /** the last belief asked for: neighbours in the list are asked one after another */
  #last: {readonly cluster: number; readonly belief: Float64Array; readonly log: number} | null = null

  constructor(graph: JoinGraph, sizes: ArrayLike<number>, factors: readonly Factor[], limits: Limits) {
    this.#sizes = sizes
    this.#home = graph.home
    this.#factors = factors
    this.#clusterOfFactor = new Int32Array(factors.length)
    this.exact = graph.exact
    this.#clusters = graph.clusters.map(({of, factors: own}, cluster) => {
      const table = new Float64Array(of.reduce((product, variable) => product * (sizes[variable] ?? 1), 1)).fill(1)
      let scale = 0
      for (const index of own) {
        const factor = factors[index]
        if (!factor) continue
        this.#clusterOfFactor[index] = cluster
        const entries = entriesOf(of, factor.of, sizes)
        for (let at = 0; at < table.length; at++) table[at] = (table[at] ?? 0) * (factor.table[entries[at] ?? 0] ?? 0)
        scale += rescale(table)
      }
      return {of, table, scale, later: [], earlier: []}
    })
    const maps = new Map<string, Int32Array>()
    const mapOf = (cluster: number, of: readonly number[]): Int32Array => {
      const key = `${cluster}:${of.join()}`
      const known = maps.get(key) ?? entriesOf(this.#clusters[cluster]?.of ?? [], of, sizes)
      maps.set(key, known)
      return known
    }
    for (const {from, to, of} of graph.edges) {
      const entries = of.reduce((product, variable) => product * (sizes[variable] ?? 1), 1)
      const here = mapOf(from, of), there = mapOf(to, of), first = this.#ways.length
      this.#ways.push({to, back: first + 1, message: new Float64Array(entries).fill(1 / entries), sent: here, received: there})
      this.#ways.push({to: from, back: first, message: new Float64Array(entries).fill(1 / entries), sent: there, received: here})
      this.#clusters[from]?.later.push(first)
      this.#clusters[to]?.earlier.push(first + 1)
    }
    const all = this.#clusters.map((_, cluster) => cluster), ringed = this.#onRings()
    const backward = (clusters: readonly number[]): number => clusters.toReversed().reduce((most, cluster) => Math.max(most, this.#send(cluster, 'earlier')), 0)
    const forward = (clusters: readonly number[]): number => clusters.reduce((most, cluster) => Math.max(most, this.#send(cluster, 'later')), 0)
    forward(all)
    let sweeps = 1, change = 0
    if (ringed.length > 0) {
      // branches that hang on the rings have told them all they know; only the rings need to settle
      do {
        change = Math.max(backward(ringed), forward(ringed))
        sweeps++
      } while (change > limits.settled && sweeps < limits.sweeps)
    }
    backward(all)
    this.sweeps = sweeps
    this.change = change
    this.logSum = this.#logSum()
  }

  /** Clusters that lie on a ring or between rings: what is left when ends are taken off again and again. */
  #onRings(): readonly number[] {
    const degree = this.#clusters.map(({later, earlier}) => later.length + earlier.length)
    const gone = new Uint8Array(degree.length), ends = degree.flatMap((count, cluster) => (count <= 1 ? [cluster] : []))
    for (let end = ends.pop(); end !== undefined; end = ends.pop()) {
      gone[end] = 1
      const {later = [], earlier = []} = this.#clusters[end] ?? {}
      for (const way of [...later, ...earlier]) {
        const to = this.#ways[way]?.to ?? end
        if (gone[to] === 1) continue
        degree[to] = (degree[to] ?? 0) - 1
        if (degree[to] === 1) ends.push(to)
      }
    }
    return this.#clusters.flatMap((_, cluster) => (gone[cluster] === 1 ? [] : [cluster]))
  }

  marginal(variable: number): Float64Array {
    const cluster = this.#home[variable] ?? -1
    return this.#sumOut(cluster, [variable])
  }

  joint(factor: number): Float64Array {
    return this.#sumOut(this.#clusterOfFactor[factor] ?? -1, this.#factors[factor]?.of ?? [])
  }

  #sumOut(cluster: number, of: readonly number[]): Float64Array {
    const {belief} = this.#belief(cluster)
    const entries = entriesOf(this.#clusters[cluster]?.of ?? [], of, this.#sizes)
    const sums = new Float64Array(of.reduce((product, variable) => product * (this.#sizes[variable] ?? 1), 1))
    for (let at = 0; at < belief.length; at++) {
      const entry = entries[at] ?? 0
      sums[entry] = (sums[entry] ?? 0) + (belief[at] ?? 0)
    }
    normalise(sums)
    return sums
  }

  /** The cluster's table times every message to it, and the logarithm of what it was divided by. */
  #belief(cluster: number): {readonly belief: Float64Array; readonly log: number} {
    if (this.#last?.cluster === cluster) return this.#last
    const worked = this.#clusters[cluster]
    if (!worked) throw new RangeError(`there is no cluster ${cluster}`)
    const belief = worked.table.slice()
    let log = worked.scale
    for (const way of [...worked.earlier, ...worked.later]) log += this.#receive(belief, way)
    this.#last = {cluster, belief, log}
    return this.#last
  }

  /** Multiplies the message that comes back along a way into a table of the cluster; the logarithm of what the table was divided by. */
  #receive(table: Float64Array, way: number): number {
    const out = this.#ways[way], back = out && this.#ways[out.back]
    if (!back) return 0
    const {message, received} = back
    let most = 0
    for (let at = 0; at < table.length; at++) {
      const entry = (table[at] ?? 0) * (message[received[at] ?? 0] ?? 0)
      table[at] = entry
      if (entry > most) most = entry
    }
    return most < SMALL ? rescale(table) : 0
  }

  /** Sends anew along the cluster's ways to later or to earlier clusters; the largest change of a message. */
  #send(cluster: number, which: 'later' | 'earlier'): number {
    const worked = this.#clusters[cluster]
    if (!worked || worked[which].length === 0) return 0
    const ways = worked[which]
    const rest = worked.table.slice()
    for (const way of worked[which === 'later' ? 'earlier' : 'later']) this.#receive(rest, way)
    if (ways.length === 1) return this.#tell(ways[0] ?? 0, rest)
    // each way is told everything but what came along itself: products of those before it and of those after it
    const after: Float64Array[] = []
    let product = new Float64Array(rest.length).fill(1)
    for (let index = ways.length - 1; index > 0; index--) {
      product = product.slice()
      this.#receive(product, ways[index] ?? 0)
      after[index - 1] = product
    }
    let change = 0
    ways.forEach((way, index) => {
      const later = after[index], told = later ? timesEach(rest, later) : rest
      change = Math.max(change, this.#tell(way, told))
      if (later) this.#receive(rest, way)
    })
    return change
  }

  #tell(number: number, table: Float64Array): number {
    const way = this.#ways[number]
    if (!way) return 0
    const fresh = new Float64Array(way.message.length)
    for (let at = 0; at < table.length; at++) {
      const entry = way.sent[at] ?? 0
      fresh[entry] = (fresh[entry] ?? 0) + (table[at] ?? 0)
    }
    normalise(fresh)
    let change = 0
    for (let entry = 0; entry < fresh.length; entry++) change = Math.max(change, Math.abs((fresh[entry] ?? 0) - (way.message[entry] ?? 0)))
    way.message.set(fresh)
    return change
  }

  /** Sum over the clusters' sums, less the edges': exact on trees, and what the settled messages have it at otherwise. */
  #logSum(): number {
    let sum = 0
    for (let cluster = 0; cluster < this.#clusters.length; cluster++) {
      const {belief, log} = this.#belief(cluster)
      sum += log + Math.log(belief.reduce((total, entry) => total + entry, 0))
    }
    if (sum === -Infinity) return sum
    for (let way = 0; way < this.#ways.length; way += 2) {
      const one = this.#ways[way]?.message, other = this.#ways[way + 1]?.message
      sum -= Math.log(one?.reduce((total, entry, at) => total + entry * (other?.[at] ?? 0), 0) ?? 1)
    }
    return sum
  }
}

/** For each entry of a table over `of`, the entry of one over some of its variables. */
function entriesOf(of: readonly number[], some: readonly number[], sizes: ArrayLike<number>): Int32Array {
  const strides = of.map(variable => {
    const place = some.indexOf(variable)
    return place < 0 ? 0 : some.slice(place + 1).reduce((product, later) => product * (sizes[later] ?? 1), 1)
  })
  let entries = new Int32Array([0])
  of.forEach((variable, place) => {
    const size = sizes[variable] ?? 1, stride = strides[place] ?? 0
    const wider = new Int32Array(entries.length * size)
    for (let at = 0; at < entries.length; at++) for (let value = 0; value < size; value++) wider[at * size + value] = (entries[at] ?? 0) + value * stride
    entries = wider
  })
  return entries
}

function timesEach(one: Float64Array, other: Float64Array): Float64Array {
  const product = one.slice()
  for (let at = 0; at < product.length; at++) product[at] = (product[at] ?? 0) * (other[at] ?? 0)
  return product
}

/** Divides a table by its largest entry; the logarithm of that. A table of nothing but 0 stays, and says −Infinity nowhere. */
function rescale(table: Float64Array): number {
  let most = 0
  for (const entry of table) if (entry > most) most = entry
  if (most === 0 || most === 1) return 0
  for (let at = 0; at < table.length; at++) table[at] = (table[at] ?? 0) / most
  return Math.log(most)
}

function normalise(table: Float64Array): void {
  let sum = 0
  for (const entry of table) sum += entry
  if (sum > 0) for (let at = 0; at < table.length; at++) table[at] = (table[at] ?? 0) / sum
}
