import {describe, expect, it} from 'vitest'
import {ClusterBeliefs} from '../../src/heredity/cluster-beliefs.ts'
import {clusterLayout} from '../../src/heredity/cluster-layout.ts'
import {joinGraph} from '../../src/heredity/join-graph.ts'
import {Folding, WorkingTables} from '../../src/heredity/tables.ts'

// a row of three, tied by two tables: two clusters or three, and messages that say nothing yet
const sizes = [2, 2, 2], factors = [{of: [0, 1], table: Float64Array.of(1, 2, 3, 4)}, {of: [1, 2], table: Float64Array.of(5, 6, 7, 8)}]
const layout = () => {
  const graph = joinGraph(sizes, factors.map(({of}) => of), Infinity)
  if (!graph) throw new Error('a graph without a limit is always made')
  return clusterLayout(graph, new Folding(sizes), sizes, factors)
}

describe('ClusterBeliefs', () => {
  it('is a cluster’s own table as long as nothing was told, but for a scale', () => {
    const {clusters, messages} = layout(), beliefs = new ClusterBeliefs(clusters, messages, new WorkingTables()), own = clusters.findIndex(({own: its}) => its !== null)
    const {table} = beliefs.belief(own), its = clusters[own]!.own!.table
    table.forEach((entry, at) => { expect(entry / table[0]!).toBeCloseTo(its[at]! / its[0]!, 12) })
  })

  it('takes in what is told as it stands at the asking', () => {
    const {clusters, messages, receiver} = layout(), beliefs = new ClusterBeliefs(clusters, messages, new WorkingTables()), to = receiver[0]!
    const before = [...beliefs.belief(to).table]
    messages[0]!.set([1, 0])
    const after = beliefs.belief(to).table
    expect([...after]).not.toEqual(before)
    expect([...after].filter(entry => entry === 0)).toHaveLength(after.length / 2)
  })

  it('knows no cluster that is not there', () => {
    const {clusters, messages} = layout()
    expect(() => new ClusterBeliefs(clusters, messages, new WorkingTables()).belief(99)).toThrow(RangeError)
  })
})
