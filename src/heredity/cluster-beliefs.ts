import type {Cluster, Face} from './cluster-layout.ts'
import {keptFromVanishing, multiplyEach, multiplyInto, total, type WorkingTables} from './tables.ts'

/**
 * What clusters make of what was told them so far: products of their own tables and of messages. Clusters and messages are looked up at every asking, for both change as
 * messages are sent. A table that is given back is one to work in, and good until the next asking.
 */
export class ClusterBeliefs {
  readonly #clusters: readonly Cluster[]
  readonly #messages: readonly Float64Array[]
  readonly #room: WorkingTables

  constructor(clusters: readonly Cluster[], messages: readonly Float64Array[], room: WorkingTables) {
    this.#clusters = clusters
    this.#messages = messages
    this.#room = room
  }

  /** the message that comes back along a way out */
  brought(way: number): Float64Array {
    return this.#messages[way ^ 1] ?? NOTHING
  }

  /** Multiplies everything that came by a face into a table of the cluster; the logarithm of what was divided out. */
  hear(table: Float64Array, {onto, entries, later, earlier}: Face): number {
    if (later.length + earlier.length === 1) return keptFromVanishing(table, multiplyInto(table, onto, this.brought(later[0] ?? earlier[0] ?? 0)))
    const brought = this.#room.message(0, entries)
    let log = 0, first = true
    for (const ways of [later, earlier]) {
      for (const way of ways) {
        if (first) brought.set(this.brought(way))
        else log += keptFromVanishing(brought, multiplyEach(brought, this.brought(way)))
        first = false
      }
    }
    return log + keptFromVanishing(table, multiplyInto(table, onto, brought))
  }

  /** The cluster's own table times what came by some of its faces, and the logarithm of what was divided out. */
  product({entries, own}: Cluster, faces: readonly Face[], place: number): {readonly table: Float64Array; readonly log: number} {
    const table = this.#room.table(place, entries).fill(1)
    let log = 0
    if (own) log += own.log + keptFromVanishing(table, multiplyInto(table, own.onto, own.table))
    for (const face of faces) log += this.hear(table, face)
    return {table, log}
  }

  belief(number: number): {readonly table: Float64Array; readonly log: number} {
    const cluster = this.#clusters[number]
    if (!cluster) throw new RangeError(`there is no cluster ${number}`)
    return this.product(cluster, cluster.faces, 0)
  }

  /** The sum over all values is Π over clusters of a belief's total / Π over edges of the total of both messages' product. */
  logSum(): number {
    let logSum = 0
    for (let cluster = 0; cluster < this.#clusters.length; cluster++) {
      const {table, log} = this.belief(cluster)
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
