import type {Cluster, Face} from './cluster-layout.ts'
import {entriesOver, type Folding, keptFromVanishing, multiplyEach, multiplyInto, type Onto, sumProductInto, total} from './tables.ts'

/** Clusters whose messages have all been sent. Ways are numbered as in `clusterLayout`. */
export interface Settled {
  readonly clusters: readonly Cluster[]
  /** by way: the cluster it leads to, and what it says */
  readonly receiver: readonly number[]
  readonly messages: readonly Float64Array[]
  readonly folding: Folding
  readonly sizes: ArrayLike<number>
}

/** Shares over the variables `of`, for each value of the variable: all together they sum to 1. The variable stands in the cluster `home`, the others in `cluster`. */
export type JointAlong = (variable: number, home: number, cluster: number, of: readonly number[]) => readonly Float64Array[]

/**
 * How do a variable and a table's variables stand together, that no cluster holds at once? The variable is held at each of its values in turn, and what
 * changes by it is told along the way from cluster to cluster: exact where clusters are trees. Where they have rings the way is one among several, and what
 * goes the other ways is left as it had settled.
 *
 * What was told once along a way is kept, for many chicks ask of the same bird.
 */
export function jointAlong(settled: Settled): JointAlong {
  const {clusters, receiver, messages, folding, sizes} = settled
  const {depth, up} = spanningForest(settled)
  /** by way: the face of the cluster that it leads out of */
  const faces: Face[] = []
  for (const {faces: own} of clusters) for (const face of own) for (const ways of [face.later, face.earlier]) for (const way of ways) faces[way] = face
  const told = new Map<string, readonly Float64Array[]>(), beliefs = new Map<string, Float64Array>(), points = new Map<number, readonly Float64Array[]>()

  let kept = 0

  return (variable, home, cluster, of) => {
    const path = wayTo(variable, home, cluster), sums = summed(variable, cluster, null, path, 0, folding.onto(clusterAt(cluster).of, of), entriesOver(of, sizes))
    scale(sums, sums.reduce((all, sum) => all + total(sum), 0))
    return sums
  }

  /** The ways back from the cluster to the nearest one that holds the variable, the one that arrives first. */
  function wayTo(variable: number, home: number, cluster: number): readonly number[] {
    const here: number[] = [], there: number[] = []
    let a = cluster, b = home
    while (a !== b) {
      const fromA = up[a] ?? -1, fromB = up[b] ?? -1, down = (depth[a] ?? 0) >= (depth[b] ?? 0)
      const way = down ? fromA : fromB
      if (way < 0) throw new RangeError('two clusters of different components')
      if (down) {
        here.push(way ^ 1)
        a = receiver[way] ?? -1
      } else {
        there.push(way)
        b = receiver[way] ?? -1
      }
    }
    const path: number[] = []
    for (const way of [...here, ...there.reverse()]) {
      if (clusters[receiver[way] ?? -1]?.of.includes(variable)) return path
      path.push(way)
    }
    return path
  }

  /** What a way of a path says, the variable held at each of its values. */
  function telling(variable: number, path: readonly number[], place: number): readonly Float64Array[] {
    const way = path[place] ?? -1, key = `${variable} ${way}`, known = told.get(key)
    if (known) return known
    const {onto, entries} = faceOf(way), said = summed(variable, receiver[way ^ 1] ?? -1, way, path, place + 1, onto, entries)
    scale(said, said.reduce((most, sum) => Math.max(most, total(sum)), 0))
    told.set(key, said)
    return said
  }

  /** A cluster's belief without what came against the way out, with what the next way of the path now says, summed up. */
  function summed(variable: number, cluster: number, out: number | null, path: readonly number[], place: number, onto: Onto, entries: number): readonly Float64Array[] {
    const way = path[place], but = out === null ? [] : [out]
    const [belief, ontoFactor, factors] = way === undefined ? [believed(cluster, but), folding.onto(clusterAt(cluster).of, [variable]), pointsOf(sizes[variable] ?? 0)] as const
      : [believed(cluster, [...but, way ^ 1]), faceOf(way ^ 1).onto, telling(variable, path, place)] as const
    return factors.map(factor => {
      const sum = new Float64Array(entries)
      sumProductInto(sum, onto, belief, ontoFactor, factor)
      return sum
    })
  }

  /** for each value a table that holds a variable there */
  function pointsOf(size: number): readonly Float64Array[] {
    const known = points.get(size) ?? Array.from({length: size}, (_, value) => Float64Array.from({length: size}, (__, other) => (other === value ? 1 : 0)))
    points.set(size, known)
    return known
  }

  /** The cluster's own table times everything that came to it, but for what came against some ways out. Kept as long as there is room, for many ask the same in turn. */
  function believed(number: number, but: readonly number[]): Float64Array {
    const key = `${number} ${but.join(' ')}`, known = beliefs.get(key)
    if (known) return known
    const table = working(number, but)
    kept += table.length
    if (kept > ROOM) {
      beliefs.clear()
      kept = table.length
    }
    beliefs.set(key, table)
    return table
  }

  function working(number: number, but: readonly number[]): Float64Array {
    const {entries, own, faces} = clusterAt(number), table = new Float64Array(entries).fill(1)
    if (own) keptFromVanishing(table, multiplyInto(table, own.onto, own.table))
    for (const face of faces) {
      const brought = new Float64Array(face.entries).fill(1)
      for (const ways of [face.later, face.earlier]) {
        for (const way of ways) if (!but.includes(way)) keptFromVanishing(brought, multiplyEach(brought, messages[way ^ 1] ?? NOTHING))
      }
      keptFromVanishing(table, multiplyInto(table, face.onto, brought))
    }
    return table
  }

  function faceOf(way: number): Face {
    const face = faces[way]
    if (!face) throw new RangeError(`there is no way ${way}`)
    return face
  }

  function clusterAt(number: number): Cluster {
    const cluster = clusters[number]
    if (!cluster) throw new RangeError(`there is no cluster ${number}`)
    return cluster
  }
}

/** Divides tables by what is above 0. */
function scale(tables: readonly Float64Array[], by: number): void {
  if (by > 0) for (const table of tables) for (let at = 0; at < table.length; at++) table[at] = (table[at] ?? 0) / by
}

/** Every cluster's way towards the first one of its component, −1 for that itself, and how many ways that is. */
function spanningForest({clusters, receiver}: Settled): {readonly depth: Int32Array; readonly up: Int32Array} {
  const depth = new Int32Array(clusters.length).fill(-1), up = new Int32Array(clusters.length).fill(-1)
  for (let root = clusters.length - 1; root >= 0; root--) {
    if (depth[root] !== -1) continue
    depth[root] = 0
    const queue = [root]
    for (const from of queue) {
      for (const face of clusters[from]?.faces ?? []) {
        for (const way of [...face.later, ...face.earlier]) {
          const to = receiver[way] ?? -1
          if (depth[to] !== -1) continue
          depth[to] = (depth[from] ?? 0) + 1
          up[to] = way ^ 1
          queue.push(to)
        }
      }
    }
  }
  return {depth, up}
}

/** So many entries of beliefs are kept at a time. */
const ROOM = 2 ** 22

const NOTHING = new Float64Array(0)
