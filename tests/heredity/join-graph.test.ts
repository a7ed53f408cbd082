import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {joinGraph, type JoinGraph} from '../../src/heredity/join-graph.ts'
import {entriesOver} from '../../src/heredity/tables.ts'
import {someTables} from './summed.ts'

const made = (sizes: readonly number[], scopes: readonly (readonly number[])[], bound: number): JoinGraph => {
  const graph = joinGraph(sizes, scopes, bound)
  if (!graph) throw new Error('a graph without a limit is always made')
  return graph
}

describe('joinGraph(sizes, scopes, bound)', () => {
  it('lays every table into one cluster that holds its variables, and the clusters of a variable make one tree', () => {
    fc.assert(fc.property(someTables, fc.constantFrom(1, 4, 9, 27, Infinity), ({sizes, factors}, bound) => {
      const scopes = factors.map(({of}) => of), {clusters, edges, home} = made(sizes, scopes, bound)
      scopes.forEach((of, factor) => {
        const holding = clusters.filter(cluster => cluster.factors.includes(factor))
        expect(holding).toHaveLength(of.length === 0 ? 0 : 1)
        for (const variable of of) expect(holding[0]?.of).toContain(variable)
      })
      for (const {from, to, of} of edges) {
        expect(from).toBeLessThan(to)
        for (const variable of of) for (const end of [from, to]) expect(clusters[end]?.of).toContain(variable)
      }
      sizes.forEach((_, variable) => {
        const holding = clusters.flatMap(({of}, index) => (of.includes(variable) ? [index] : [])), between = edges.filter(({of}) => of.includes(variable))
        if (holding.length === 0) return expect(home[variable]).toBe(-1)
        expect(holding).toContain(home[variable])
        expect(between).toHaveLength(holding.length - 1)
        const reached = new Set(holding.slice(0, 1))
        for (let turn = 0; turn < holding.length; turn++) for (const {from, to} of between) if (reached.has(from) || reached.has(to)) reached.add(from).add(to)
        expect(reached.size).toBe(holding.length)
      })
    }), {seed: 5, numRuns: 100})
  })

  it('is exact just when no cluster passes the bound, and gives up where all must be whole and are not', () => {
    fc.assert(fc.property(someTables, fc.constantFrom(4, 9, 27, 81), ({sizes, factors}, bound) => {
      const scopes = factors.map(({of}) => of)
      const all = made(sizes, scopes, Infinity).clusters.map(({of}) => entriesOver(of, sizes)), most = Math.max(0, ...all), sum = all.reduce((total, entries) => total + entries, 0)
      expect(joinGraph(sizes, scopes, bound, Infinity) !== null).toBe(most <= bound)
      expect(joinGraph(sizes, scopes, Infinity, sum)?.exact).toBe(true)
      if (sum > 0) expect(joinGraph(sizes, scopes, Infinity, sum - 1)).toBeNull()
      if (most <= bound) expect(made(sizes, scopes, bound).exact).toBe(true)
    }), {seed: 5, numRuns: 100})
  })

  it('keeps to the bound where it joins tables', () => {
    // ten birds in a ring, each tied to the next two
    const scopes = Array.from({length: 10}, (_, bird) => [bird, (bird + 1) % 10, (bird + 2) % 10]), sizes = scopes.map(() => 3)
    const {exact, clusters} = made(sizes, scopes, 27)
    expect(exact).toBe(false)
    expect(Math.max(...clusters.map(({of}) => of.length))).toBe(3)
  })
})
