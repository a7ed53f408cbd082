import {type Factor, type JoinGraph} from './join-graph.ts'
import {entriesOver, type Folding, keptFromVanishing, multiplyInto, type Onto} from './tables.ts'

/** What clusters share with some of their neighbours: like variables, so that messages over them can be multiplied before they meet the cluster. */
export interface Face {
  readonly onto: Onto
  readonly entries: number
  /** ways out to clusters further on and further back */
  readonly later: number[]
  readonly earlier: number[]
}

export interface Cluster {
  readonly of: readonly number[]
  readonly entries: number
  /** the product of its factors, over their variables alone */
  readonly own: {readonly onto: Onto; readonly table: Float64Array; readonly log: number} | null
  readonly faces: readonly Face[]
}

/** Clusters with the ways between them, before anything is told. Way 2e leads along edge e from its earlier to its later cluster, way 2e + 1 back. */
export interface ClusterLayout {
  readonly clusters: readonly Cluster[]
  /** by way: the cluster it leads to, and a message that says nothing */
  readonly receiver: readonly number[]
  readonly messages: readonly Float64Array[]
}

/** @param factors by the numbers that the graph gives them */
export function clusterLayout({clusters, edges}: JoinGraph, folding: Folding, sizes: ArrayLike<number>, factors: readonly Factor[]): ClusterLayout {
  const faces = clusters.map(() => new Map<string, Face>()), receiver: number[] = [], messages: Float64Array[] = []
  const face = (cluster: number, of: readonly number[]): Face => {
    const key = of.join(), known = faces[cluster]?.get(key)
    if (known) return known
    const made = {onto: folding.onto(clusters[cluster]?.of ?? [], of), entries: entriesOver(of, sizes), later: [], earlier: []}
    faces[cluster]?.set(key, made)
    return made
  }
  for (const {from, to, of} of edges) {
    const way = receiver.push(to, from) - 2, here = face(from, of), there = face(to, of)
    here.later.push(way)
    there.earlier.push(way + 1)
    messages.push(new Float64Array(here.entries).fill(1 / here.entries), new Float64Array(here.entries).fill(1 / here.entries))
  }
  return {
    receiver, messages,
    clusters: clusters.map(({of, factors: own}, number): Cluster =>
      ({of, entries: entriesOver(of, sizes), own: productOf(of, own, folding, sizes, place => factors[place]), faces: [...faces[number]?.values() ?? []]})),
  }
}

/** The product of some factors that stand in a cluster over `of`; null where there is none. */
export function productOf(of: readonly number[], factors: readonly number[], folding: Folding, sizes: ArrayLike<number>, factorOf: (factor: number) => Factor | undefined): Cluster['own'] {
  if (factors.length === 0) return null
  const own = new Set(factors.flatMap(factor => factorOf(factor)?.of ?? [])), some = of.filter(variable => own.has(variable))
  const table = new Float64Array(entriesOver(some, sizes)).fill(1)
  let log = 0
  for (const number of factors) {
    const factor = factorOf(number)
    if (factor) log += keptFromVanishing(table, multiplyInto(table, folding.onto(some, factor.of), factor.table))
  }
  return {onto: folding.onto(of, some), table, log}
}

/** Clusters that lie on a ring or between rings: what is left when ends are taken off again and again. */
export function onRings({clusters, receiver}: ClusterLayout): readonly number[] {
  const all = clusters.map((_, cluster) => cluster)
  const waysOf = (cluster: number): readonly number[] => clusters[cluster]?.faces.flatMap(({later, earlier}) => [...later, ...earlier]) ?? []
  const degree = all.map(cluster => waysOf(cluster).length), gone = new Uint8Array(all.length)
  const ends = all.filter(cluster => (degree[cluster] ?? 0) <= 1)
  for (let end = ends.pop(); end !== undefined; end = ends.pop()) {
    gone[end] = 1
    for (const way of waysOf(end)) {
      const to = receiver[way] ?? end
      if (gone[to] === 1) continue
      degree[to] = (degree[to] ?? 0) - 1
      if (degree[to] === 1) ends.push(to)
    }
  }
  return all.filter(cluster => gone[cluster] === 0)
}
