import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ClusterMessages} from '../../src/heredity/cluster-messages.ts'
import {joinGraph} from '../../src/heredity/join-graph.ts'
import {someTables, summed, type Problem} from './summed.ts'

function settled({sizes, factors}: Problem, bound: number, settling = {sweeps: 200, settled: 1e-9}): ClusterMessages {
  const graph = joinGraph(sizes, factors.map(({of}) => of), bound)
  if (!graph) throw new Error('a graph without a limit is always made')
  return new ClusterMessages(graph, sizes, factors, settling)
}

/** no table without variables, no variable without a table */
const everyTold = someTables.map(({sizes, factors}): Problem => ({sizes, factors: [...factors.filter(({of}) => of.length > 0), ...sizes.map((size, variable) => ({of: [variable], table: new Float64Array(size).fill(1)}))]}))

/** `birds` in a ring, each tied to the next by a table that likes them alike by so much; the first leans to 0 */
const ring = (birds: number, alike: number): Problem => ({
  sizes: Array.from({length: birds}, () => 2),
  factors: [{of: [0], table: Float64Array.of(0.6, 0.4)}, ...Array.from({length: birds}, (_, bird) => ({of: [bird, (bird + 1) % birds], table: Float64Array.of(alike, 1 - alike, 1 - alike, alike)}))],
})

describe('ClusterMessages', () => {
  it('is exact on trees, in two sweeps, as summing everything has it', () => {
    fc.assert(fc.property(everyTold, problem => {
      const twin = summed(problem.sizes, problem.factors)
      fc.pre(twin.total > 0)
      const {logSum, marginals, change, sweeps} = settled(problem, Infinity)
      expect(logSum).toBeCloseTo(Math.log(twin.total), 9)
      expect([change, sweeps]).toEqual([0, 1])
      problem.sizes.forEach((_, variable) => {
        marginals[variable]?.forEach((share, value) => { expect(share).toBeCloseTo(twin.marginals[variable]![value]!, 10) })
      })
    }), {seed: 5, numRuns: 100})
  })

  it('comes close on a long ring, closer than on a short one', () => {
    const off = (birds: number) => {
      const problem = ring(birds, 0.8), found = settled(problem, 4), twin = summed(problem.sizes, problem.factors)
      expect(found.sweeps).toBeGreaterThan(1)
      return Math.abs(found.marginals[0]![0]! - twin.marginals[0]![0]!)
    }
    expect(off(4)).toBeLessThan(0.05)
    expect(off(10)).toBeLessThan(off(4) / 5)
  })

  it('says how far it was when it had to stop', () => {
    const {sweeps, change} = settled(ring(6, 0.99), 4, {sweeps: 2, settled: 1e-9})
    expect(sweeps).toBe(2)
    expect(change).toBeGreaterThan(1e-9)
  })

  it('does not lose what five thousand tables say to the smallness of numbers', () => {
    const factors = Array.from({length: 5000}, () => ({of: [0, 1], table: Float64Array.of(0.1, 0.1, 0.1, 0.1001)}))
    const {logSum, marginals} = settled({sizes: [2, 2], factors}, Infinity)
    const odds = 1.001 ** 5000
    expect(logSum).toBeCloseTo(5000 * Math.log(0.1) + Math.log(3 + odds), 6)
    expect(marginals[0]![1]).toBeCloseTo((1 + odds) / (3 + odds), 9)
  })
})
