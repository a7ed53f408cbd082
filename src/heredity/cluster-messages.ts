import {clusterLayout, onRings, productOf, type Cluster, type Face} from './cluster-layout.ts'
import {jointAlong, type JointAlong} from './joint-along.ts'
import type {Factor, JoinGraph} from './join-graph.ts'
import {entriesOver, Folding, keptFromVanishing, makeWhole, multiplyEach, multiplyInto, sumInto, total, WorkingTables} from './tables.ts'

/** When messages on rings have settled. */
export interface Settling {
  /** most sweeps to and fro */
  readonly sweeps: number
  /** messages have settled when none changes by more */
  readonly settled: number
}

/** What is said while something is supposed. */
export interface Supposed {
  marginal(variable: number): Float64Array
  joint(factor: number): Float64Array
  logSum(): number
}

type Direction = 'later' | 'earlier'

/** After so many sweeps messages that still swing are held back by half. */
const PATIENCE = 30

/**
 * Messages on a graph of clusters: each tells a neighbour what it knows, from its own factors and all other neighbours, of the variables they share.
 *
 *     message(i → j) ∝ Σ over variables that j has no share in  Π factors of i · Π over neighbours k ≠ j  message(k → i)
 *     belief(i) ∝ Π factors of i · Π over neighbours k  message(k → i)
 *
 * On a tree one sweep forward and one back make every belief exact. Clusters on rings, or between them, are swept until no message changes by more than
 * `settled`; branches that hang on the rings need to tell what they know but once, and to be told once. A cluster that has heard nothing new keeps silent.
 *
 * Ways are numbered as in `clusterLayout`.
 */
export class ClusterMessages {
  /** largest change of a message in the last sweep; 0 on trees */
  readonly change: number
  readonly sweeps: number
  /** logarithm of the sum of the product over all values: exact on trees, else the Bethe value of the settled messages; −Infinity where nothing is possible */
  readonly logSum: number
  /** by variable: shares of its values */
  readonly marginals: readonly Float64Array[]
  readonly #sizes: ArrayLike<number>
  readonly #folding: Folding
  readonly #factors: readonly Factor[]
  readonly #clusterOfFactor: Int32Array
  readonly #clusters: Cluster[]
  readonly #factorsOf: readonly (readonly number[])[]
  readonly #home: Int32Array
  readonly #messages: readonly Float64Array[]
  readonly #receiver: readonly number[]
  /** by cluster: whether it has something new to tell */
  readonly #news: Readonly<Record<Direction, Uint8Array>>
  /** share of the old message that a new one keeps */
  #held = 0
  readonly #room = new WorkingTables()
  #along: JointAlong | null = null
  /** messages as they were before a supposition; null outside of one */
  #saved: Map<number, Float64Array> | null = null

  /** @param factors by the numbers that the graph gives them */
  constructor(graph: JoinGraph, sizes: ArrayLike<number>, factors: readonly Factor[], {sweeps: most, settled}: Settling) {
    this.#sizes = sizes
    this.#folding = new Folding(sizes)
    this.#factors = factors
    this.#clusterOfFactor = new Int32Array(factors.length)
    graph.clusters.forEach((cluster, number) => { for (const factor of cluster.factors) this.#clusterOfFactor[factor] = number })
    this.#factorsOf = graph.clusters.map(cluster => cluster.factors)
    this.#home = graph.home
    const layout = clusterLayout(graph, this.#folding, sizes, factors)
    this.#clusters = [...layout.clusters]
    this.#messages = layout.messages
    this.#receiver = layout.receiver
    this.#news = {later: new Uint8Array(this.#clusters.length).fill(1), earlier: new Uint8Array(this.#clusters.length).fill(1)}

    const all = this.#clusters.map((_, cluster) => cluster), ringed = onRings(layout)
    let sweeps = 1, change = 0
    this.#sweep(all, 'later', settled)
    if (ringed.length > 0) {
      do {
        this.#held = sweeps > PATIENCE ? 0.5 : 0
        change = Math.max(this.#sweep(ringed, 'earlier', settled), this.#sweep(ringed, 'later', settled))
        sweeps++
      } while (change > settled && sweeps < most)
      this.#held = 0
    }
    this.#sweep(all, 'earlier', settled)
    this.sweeps = sweeps
    this.change = change
    this.logSum = this.#logSum()
    this.marginals = this.#marginalsOf(graph.home)
  }

  /**
   * What would be said were some factors others? Only messages that change are sent, from where the factors stand outwards; afterwards all is as it was.
   *
   * @param tables by the number of a factor, another table over its variables
   * @param read is given the marginals and the sum as they then are
   */
  supposing<T>(tables: ReadonlyMap<number, Float64Array>, {settled, sweeps: most}: Settling, read: (supposed: Supposed) => T): T {
    const touched = new Set([...tables.keys()].map(factor => this.#clusterOfFactor[factor] ?? -1)), before = new Map<number, Cluster>()
    const all = this.#clusters.map((_, cluster) => cluster), saved = new Map<number, Float64Array>()
    const factorOf = (number: number): Factor | undefined => {
      const factor = this.#factors[number], table = tables.get(number)
      return factor && table ? {...factor, table} : factor
    }
    this.#saved = saved
    this.#news.later.fill(0)
    this.#news.earlier.fill(0)
    for (const number of touched) {
      const cluster = this.#clusters[number]
      if (!cluster) throw new RangeError('a factor that stands in no cluster')
      before.set(number, cluster)
      this.#clusters[number] = {...cluster, own: productOf(cluster.of, this.#factorsOf[number] ?? [], this.#folding, this.#sizes, factorOf)}
      this.#news.later[number] = this.#news.earlier[number] = 1
    }
    for (let sweep = 0, change = Infinity; change > settled && sweep < most; sweep++) {
      this.#held = sweep > PATIENCE ? 0.5 : 0
      change = Math.max(this.#sweep(all, 'later', settled), this.#sweep(all, 'earlier', settled))
    }
    this.#held = 0
    try {
      return read({marginal: variable => this.#marginal(variable), joint: factor => this.joint(factor), logSum: () => this.#logSum()})
    } finally {
      for (const [number, cluster] of before) this.#clusters[number] = cluster
      for (const [way, message] of saved) this.#messages[way]?.set(message)
      this.#saved = null
    }
  }

  #marginal(variable: number): Float64Array {
    const cluster = this.#home[variable] ?? -1, shares = new Float64Array(this.#sizes[variable] ?? 0)
    sumInto(shares, this.#folding.onto(this.#clusters[cluster]?.of ?? [], [variable]), this.#belief(cluster).table)
    makeWhole(shares)
    return shares
  }

  /** Shares over the variables of one factor, in its order of entries. */
  joint(factor: number): Float64Array {
    const cluster = this.#clusterOfFactor[factor] ?? -1, of = this.#factors[factor]?.of ?? []
    const shares = new Float64Array(entriesOver(of, this.#sizes))
    sumInto(shares, this.#folding.onto(this.#clusters[cluster]?.of ?? [], of), this.#belief(cluster).table)
    makeWhole(shares)
    return shares
  }

  /** Shares over the variables of one factor, for each value of a variable that need not be among them. */
  jointWith(factor: number, variable: number): readonly Float64Array[] {
    this.#along ??= jointAlong({clusters: this.#clusters, messages: this.#messages, receiver: this.#receiver, folding: this.#folding, sizes: this.#sizes})
    return this.#along(variable, this.#home[variable] ?? -1, this.#clusterOfFactor[factor] ?? -1, this.#factors[factor]?.of ?? [])
  }

  /** @returns the largest change of a message */
  #sweep(clusters: readonly number[], direction: Direction, settled: number): number {
    const news = this.#news[direction], last = clusters.length - 1
    let change = 0
    for (let turn = 0; turn <= last; turn++) {
      const cluster = clusters[direction === 'later' ? turn : last - turn] ?? 0
      if (news[cluster] === 0) continue
      news[cluster] = 0
      const most = this.#send(cluster, direction, settled)
      // what was held back is yet to be told
      if (this.#held > 0 && most > settled / 10) news[cluster] = 1
      change = Math.max(change, most)
    }
    return change
  }

  /** Each way is told everything but what came along itself: of other faces here, of its own in `#tell`. */
  #send(number: number, direction: Direction, settled: number): number {
    const cluster = this.#clusters[number], told = cluster?.faces.filter(face => face[direction].length > 0) ?? []
    if (!cluster || told.length === 0) return 0
    const {table} = this.#product(cluster, cluster.faces.filter(face => face[direction].length === 0), 0)
    // products over the faces that stand after each; the one in hand grows by those before
    const after: Float64Array[] = []
    for (let place = told.length - 1; place > 0; place--) {
      const product = this.#room.table(place, cluster.entries), further = after[place], face = told[place]
      if (further) product.set(further)
      else product.fill(1)
      if (face) this.#hear(product, face)
      after[place - 1] = product
    }
    let change = 0
    told.forEach((face, place) => {
      const further = after[place]
      if (further) {
        const product = this.#room.table(told.length, cluster.entries)
        product.set(table)
        multiplyEach(product, further)
        change = Math.max(change, this.#tell(face, direction, product, settled))
        this.#hear(table, face)
      } else change = Math.max(change, this.#tell(face, direction, table, settled))
    })
    return change
  }

  #tell(face: Face, direction: Direction, table: Float64Array, settled: number): number {
    const {onto, entries} = face, ways = [...face[direction], ...face[direction === 'later' ? 'earlier' : 'later']], count = face[direction].length
    const known = this.#room.message(0, entries), product = this.#room.message(1, entries)
    sumInto(known, onto, table)
    makeWhole(known)
    // as in #send: what the ways after each have brought, and those before
    const after: Float64Array[] = []
    for (let place = ways.length - 1; place > 0; place--) {
      const brought = this.#room.message(place + 1, entries), further = after[place]
      brought.set(this.#brought(ways[place] ?? 0))
      if (further) keptFromVanishing(brought, multiplyEach(brought, further))
      after[place - 1] = brought
    }
    let change = 0
    for (let place = 0; place < count; place++) {
      const way = ways[place] ?? 0, further = after[place], message = this.#messages[way], to = this.#receiver[way] ?? 0
      if (!message) continue
      product.set(known)
      if (further) multiplyEach(product, further)
      makeWhole(product)
      if (this.#saved && !this.#saved.has(way)) this.#saved.set(way, message.slice())
      let most = 0
      for (let entry = 0; entry < entries; entry++) {
        const old = message[entry] ?? 0, fresh = product[entry] ?? 0
        most = Math.max(most, Math.abs(fresh - old))
        message[entry] = fresh + this.#held * (old - fresh)
      }
      if (most > settled / 10) this.#news.later[to] = this.#news.earlier[to] = 1
      change = Math.max(change, most)
      keptFromVanishing(known, multiplyEach(known, this.#brought(way)))
    }
    return change
  }

  /** the message that comes back along a way out */
  #brought(way: number): Float64Array {
    return this.#messages[way ^ 1] ?? NOTHING
  }

  /** Multiplies everything that came by a face into a table of the cluster; the logarithm of what was divided out. */
  #hear(table: Float64Array, {onto, entries, later, earlier}: Face): number {
    const brought = this.#room.message(0, entries)
    let log = 0, first = true
    for (const ways of [later, earlier]) {
      for (const way of ways) {
        if (first) brought.set(this.#brought(way))
        else log += keptFromVanishing(brought, multiplyEach(brought, this.#brought(way)))
        first = false
      }
    }
    return log + keptFromVanishing(table, multiplyInto(table, onto, brought))
  }

  /** The cluster's own table times what came by some of its faces, and the logarithm of what was divided out. */
  #product({entries, own}: Cluster, faces: readonly Face[], place: number): {readonly table: Float64Array; readonly log: number} {
    const table = this.#room.table(place, entries).fill(1)
    let log = 0
    if (own) log += own.log + keptFromVanishing(table, multiplyInto(table, own.onto, own.table))
    for (const face of faces) log += this.#hear(table, face)
    return {table, log}
  }

  #belief(number: number): {readonly table: Float64Array; readonly log: number} {
    const cluster = this.#clusters[number]
    if (!cluster) throw new RangeError(`there is no cluster ${number}`)
    return this.#product(cluster, cluster.faces, 0)
  }

  #marginalsOf(home: Int32Array): readonly Float64Array[] {
    const marginals = Array.from(home, (_, variable) => new Float64Array(this.#sizes[variable] ?? 0))
    const atHome = new Map<number, number[]>()
    home.forEach((cluster, variable) => { atHome.set(cluster, [...atHome.get(cluster) ?? [], variable]) })
    for (const [cluster, variables] of atHome) {
      const {table} = this.#belief(cluster), of = this.#clusters[cluster]?.of ?? []
      for (const variable of variables) {
        const shares = marginals[variable] ?? NOTHING
        sumInto(shares, this.#folding.onto(of, [variable]), table)
        makeWhole(shares)
      }
    }
    return marginals
  }

  /** The sum over all values is Π over clusters of a belief's total / Π over edges of the total of both messages' product. */
  #logSum(): number {
    let logSum = 0
    for (let cluster = 0; cluster < this.#clusters.length; cluster++) {
      const {table, log} = this.#belief(cluster)
      logSum += log + Math.log(total(table))
    }
    if (logSum === -Infinity) return logSum
    for (let way = 0; way < this.#messages.length; way += 2) {
      const one = this.#messages[way] ?? NOTHING, other = this.#messages[way + 1] ?? NOTHING
      let sum = 0
      for (let entry = 0; entry < one.length; entry++) sum += (one[entry] ?? 0) * (other[entry] ?? 0)
      logSum -= Math.log(sum)
    }
    return logSum
  }
}

const NOTHING = new Float64Array(0)
