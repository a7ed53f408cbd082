import {ClusterBeliefs} from './cluster-beliefs.ts'
import {clusterLayout, onRings, productOf, type Cluster, type Face} from './cluster-layout.ts'
import {jointAlong, type JointAlong} from './joint-along.ts'
import type {Factor, JoinGraph} from './join-graph.ts'
import {entriesOver, Folding, keptFromVanishing, makeWhole, multiplyEach, sumInto, WorkingTables} from './tables.ts'

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
  readonly #all: Int32Array
  /** clusters on rings, or between them */
  readonly #ringed: Int32Array
  /** share of the old message that a new one keeps */
  #held = 0
  readonly #room = new WorkingTables()
  readonly #beliefs: ClusterBeliefs
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
    this.#beliefs = new ClusterBeliefs(this.#clusters, this.#messages, this.#room)
    this.#news = {later: new Uint8Array(this.#clusters.length).fill(1), earlier: new Uint8Array(this.#clusters.length).fill(1)}

    this.#all = Int32Array.from(this.#clusters, (_, cluster) => cluster)
    this.#ringed = Int32Array.from(onRings(layout))
    const {sweeps, change} = this.#settle(most, settled)
    this.sweeps = sweeps
    this.change = change
    this.logSum = this.#beliefs.logSum()
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
    const saved = new Map<number, Float64Array>()
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
    // near at hand a few sweeps over all that has news are less than what rings ask for beforehand
    if (most > PATIENCE && this.#ringed.length > 0) this.#settle(most, settled)
    else for (let sweep = 0, change = Infinity; change > settled && sweep < most; sweep++) change = Math.max(this.#sweep(this.#all, 'later', settled), this.#sweep(this.#all, 'earlier', settled))
    try {
      return read({marginal: variable => this.#marginal(variable), joint: factor => this.joint(factor), logSum: () => this.#beliefs.logSum()})
    } finally {
      for (const [number, cluster] of before) this.#clusters[number] = cluster
      for (const [way, message] of saved) this.#messages[way]?.set(message)
      this.#saved = null
    }
  }

  #marginal(variable: number): Float64Array {
    const cluster = this.#home[variable] ?? -1, shares = new Float64Array(this.#sizes[variable] ?? 0)
    sumInto(shares, this.#folding.onto(this.#clusters[cluster]?.of ?? [], [variable]), this.#beliefs.belief(cluster).table)
    makeWhole(shares)
    return shares
  }

  /** Shares over the variables of one factor, in its order of entries. */
  joint(factor: number): Float64Array {
    const cluster = this.#clusterOfFactor[factor] ?? -1, of = this.#factors[factor]?.of ?? []
    const shares = new Float64Array(entriesOver(of, this.#sizes))
    sumInto(shares, this.#folding.onto(this.#clusters[cluster]?.of ?? [], of), this.#beliefs.belief(cluster).table)
    makeWhole(shares)
    return shares
  }

  /** Shares over the variables of one factor, for each value of a variable that need not be among them. */
  jointWith(factor: number, variable: number): readonly Float64Array[] {
    this.#along ??= jointAlong({clusters: this.#clusters, messages: this.#messages, receiver: this.#receiver, folding: this.#folding, sizes: this.#sizes})
    return this.#along(variable, this.#home[variable] ?? -1, this.#clusterOfFactor[factor] ?? -1, this.#factors[factor]?.of ?? [])
  }

  /** To and fro once, then on the rings until all has settled, and what came of it out to the ends. */
  #settle(most: number, settled: number): {readonly sweeps: number; readonly change: number} {
    const all = this.#all, ringed = this.#ringed
    let sweeps = 1, change = 0
    this.#sweep(all, 'later', settled)
    if (ringed.length > 0) {
      this.#sweep(all, 'earlier', settled)
      const whole = this.#withoutEnds()
      do {
        this.#held = sweeps > PATIENCE ? 0.5 : 0
        change = Math.max(this.#sweep(ringed, 'later', settled), this.#sweep(ringed, 'earlier', settled))
        sweeps++
      } while (change > settled && sweeps < most)
      this.#held = 0
      for (const [number, cluster] of whole) this.#clusters[number] = cluster
      for (const number of ringed) this.#news.later[number] = this.#news.earlier[number] = 1
      this.#sweep(all, 'later', settled)
    }
    this.#sweep(all, 'earlier', settled)
    return {sweeps, change}
  }

  /** On rings what hangs on them says the same all along: it is taken into the table of each cluster. The clusters as they were. */
  #withoutEnds(): ReadonlyMap<number, Cluster> {
    const isRinged = new Uint8Array(this.#clusters.length), whole = new Map<number, Cluster>()
    for (const number of this.#ringed) isRinged[number] = 1
    const onRing = (way: number): boolean => isRinged[this.#receiver[way] ?? -1] === 1
    for (const number of this.#ringed) {
      const cluster = this.#clusters[number]
      if (!cluster) continue
      whole.set(number, cluster)
      const part = (faces: readonly Face[], on: boolean): Face[] => faces.map(face => ({...face, later: face.later.filter(way => onRing(way) === on), earlier: face.earlier.filter(way => onRing(way) === on)}))
        .filter(({later, earlier}) => later.length + earlier.length > 0)
      const ends = part(cluster.faces, false)
      if (ends.length > 0) {
        const {table, log} = this.#beliefs.product(cluster, ends, 0)
        this.#clusters[number] = {...cluster, own: {onto: this.#folding.onto(cluster.of, cluster.of), table: table.slice(), log}, faces: part(cluster.faces, true)}
      }
    }
    return whole
  }

  /** @returns the largest change of a message */
  #sweep(clusters: Int32Array, direction: Direction, settled: number): number {
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
    const {table} = this.#beliefs.product(cluster, told.length === cluster.faces.length ? NO_FACES : cluster.faces.filter(face => face[direction].length === 0), 0)
    const [only] = told
    if (only && told.length === 1) return this.#tell(only, direction, table, settled)
    // products over the faces that stand after each; the one in hand grows by those before
    const after: Float64Array[] = []
    for (let place = told.length - 1; place > 0; place--) {
      const product = this.#room.table(place, cluster.entries), further = after[place], face = told[place]
      if (further) product.set(further)
      else product.fill(1)
      if (face) this.#beliefs.hear(product, face)
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
        this.#beliefs.hear(table, face)
      } else change = Math.max(change, this.#tell(face, direction, table, settled))
    })
    return change
  }

  #tell(face: Face, direction: Direction, table: Float64Array, settled: number): number {
    const {onto, entries} = face, against = face[direction === 'later' ? 'earlier' : 'later'], count = face[direction].length
    const known = this.#room.message(0, entries), product = this.#room.message(1, entries)
    sumInto(known, onto, table)
    makeWhole(known)
    const [only] = face[direction]
    if (only !== undefined && count + against.length === 1) return this.#put(only, known, settled)
    // as in #send: what the ways after each have brought, and those before
    const ways = [...face[direction], ...against]
    const after: Float64Array[] = []
    for (let place = ways.length - 1; place > 0; place--) {
      const brought = this.#room.message(place + 1, entries), further = after[place]
      brought.set(this.#beliefs.brought(ways[place] ?? 0))
      if (further) keptFromVanishing(brought, multiplyEach(brought, further))
      after[place - 1] = brought
    }
    let change = 0
    for (let place = 0; place < count; place++) {
      const way = ways[place] ?? 0, further = after[place]
      product.set(known)
      if (further) multiplyEach(product, further)
      makeWhole(product)
      change = Math.max(change, this.#put(way, product, settled))
      keptFromVanishing(known, multiplyEach(known, this.#beliefs.brought(way)))
    }
    return change
  }

  /** Sends a message along a way; by how much it is another than the last one there. */
  #put(way: number, fresh: Float64Array, settled: number): number {
    const message = this.#messages[way] ?? NOTHING, to = this.#receiver[way] ?? 0
    if (this.#saved && !this.#saved.has(way)) this.#saved.set(way, message.slice())
    let most = 0
    for (let entry = 0; entry < message.length; entry++) {
      const old = message[entry] ?? 0, now = fresh[entry] ?? 0, change = Math.abs(now - old)
      if (change > most) most = change
      message[entry] = now + this.#held * (old - now)
    }
    if (most > settled / 10) this.#news.later[to] = this.#news.earlier[to] = 1
    return most
  }

  #marginalsOf(home: Int32Array): readonly Float64Array[] {
    const marginals = Array.from(home, (_, variable) => new Float64Array(this.#sizes[variable] ?? 0))
    const atHome = new Map<number, number[]>()
    home.forEach((cluster, variable) => { atHome.set(cluster, [...atHome.get(cluster) ?? [], variable]) })
    for (const [cluster, variables] of atHome) {
      const {table} = this.#beliefs.belief(cluster), of = this.#clusters[cluster]?.of ?? []
      for (const variable of variables) {
        const shares = marginals[variable] ?? NOTHING
        sumInto(shares, this.#folding.onto(of, [variable]), table)
        makeWhole(shares)
      }
    }
    return marginals
  }
}

const NOTHING = new Float64Array(0)
const NO_FACES: readonly Face[] = []
