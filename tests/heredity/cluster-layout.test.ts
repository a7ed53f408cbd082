import {describe, expect, it} from 'vitest'
import {clusterLayout, onRings, productOf} from '../../src/heredity/cluster-layout.ts'
import type {JoinGraph} from '../../src/heredity/join-graph.ts'
import {Folding} from '../../src/heredity/tables.ts'

/** clusters over two variables of two values each, joined by these edges on one variable */
const graph = (edges: readonly (readonly [number, number, number])[], clusters: number): JoinGraph => ({
  clusters: Array.from({length: clusters}, () => ({of: [0, 1], factors: []})), edges: edges.map(([from, to, variable]) => ({from, to, of: [variable]})), home: new Int32Array(2), exact: false,
})
const SIZES = [2, 2]
const laidOut = (edges: readonly (readonly [number, number, number])[], clusters: number) => clusterLayout(graph(edges, clusters), new Folding(SIZES), SIZES, [])

describe('clusterLayout', () => {
  it('numbers the ways by edges, to and back, and gathers those over like variables in one face', () => {
    const {clusters, receiver, messages} = laidOut([[0, 2, 1], [1, 2, 1], [2, 3, 0]], 4)
    expect(receiver).toEqual([2, 0, 2, 1, 3, 2])
    expect(clusters[2]?.faces.map(({later, earlier}) => ({later, earlier}))).toEqual([{later: [], earlier: [1, 3]}, {later: [4], earlier: []}])
    expect(messages.map(message => [...message])).toEqual(Array.from({length: 6}, () => [0.5, 0.5]))
  })

  it('takes ends off until only rings, and what lies between them, are left', () => {
    // a ring 0 1 2, a branch 3 4 on it, and a tree 5 6 apart
    expect(onRings(laidOut([[0, 1, 0], [1, 2, 1], [0, 2, 0], [2, 3, 0], [3, 4, 0], [5, 6, 0]], 7))).toEqual([0, 1, 2])
    expect(onRings(laidOut([[0, 1, 0], [1, 2, 0]], 3))).toEqual([])
  })
})

describe('productOf', () => {
  it('is over the variables of its factors alone, and null without one', () => {
    const folding = new Folding(SIZES), factors = [{of: [1], table: Float64Array.of(0.25, 0.75)}, {of: [1], table: Float64Array.of(2, 4)}]
    const product = productOf([0, 1], [0, 1], folding, SIZES, number => factors[number])
    expect([...product?.table ?? []]).toEqual([0.5, 3])
    expect(productOf([0, 1], [], folding, SIZES, () => undefined)).toBeNull()
  })
})
