import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ClusterMessages} from '../../src/heredity/cluster-messages.ts'
import {componentsOf} from '../../src/heredity/components.ts'
import {joinGraph} from '../../src/heredity/join-graph.ts'
import {someTables, summed, type Problem} from './summed.ts'

const settled = ({sizes, factors}: Problem, bound = Infinity): ClusterMessages => {
  const graph = joinGraph(sizes, factors.map(({of}) => of), bound)
  if (!graph) throw new Error('a graph without a limit is always made')
  return new ClusterMessages(graph, sizes, factors, {sweeps: 200, settled: 1e-10})
}

/** birds in a row, each tied to the next */
const row = (birds: number, seed: number): Problem => ({
  sizes: Array.from({length: birds}, () => 3),
  factors: Array.from({length: birds - 1}, (_, bird) => ({of: [bird, bird + 1], table: Float64Array.from({length: 9}, (__, entry) => 1 + ((entry * 7 + bird * 5 + seed) % 11))})),
})

describe('ClusterMessages.jointWith, by jointAlong', () => {
  it('is exact on trees for any table and any variable of its component, as summing everything has it', () => {
    fc.assert(fc.property(someTables, fc.nat(), ({sizes, factors}, from) => {
      const part = componentsOf(sizes, factors).components[0]
      fc.pre(part !== undefined && part.factors.length > 1)
      if (!part) return
      const problem = {sizes: part.sizes, factors: part.factors}
      const variable = from % problem.sizes.length, found = settled(problem)
      problem.factors.forEach(({of}, number) => {
        // the twin: a table of ones over both, whose joint is asked for
        const both = [variable, ...of.filter(each => each !== variable)]
        const twin = summed(problem.sizes, [...problem.factors, {of: both, table: new Float64Array(both.reduce((product, each) => product * problem.sizes[each]!, 1)).fill(1)}])
        fc.pre(twin.total > 0)
        const joint = found.jointWith(number, variable), rest = both.slice(1), sizeOfRest = rest.reduce((product, each) => product * problem.sizes[each]!, 1)
        joint.forEach((shares, value) => shares.forEach((share, entry) => {
          // the entry's values, by variable of the factor
          const values = new Map<number, number>()
          let left = entry
          for (const each of [...of].reverse()) {
            values.set(each, left % problem.sizes[each]!)
            left = Math.floor(left / problem.sizes[each]!)
          }
          const within = !of.includes(variable) || values.get(variable) === value
          const place = rest.reduce((at, each) => at * problem.sizes[each]! + values.get(each)!, 0)
          expect(share).toBeCloseTo(within ? twin.joints.at(-1)![value * sizeOfRest + place]! : 0, 10)
        }))
      })
    }), {seed: 5, numRuns: 100})
  })

  it('tells along a long way, and sums to what the variable and the table say by themselves', () => {
    const problem = row(30, 3), found = settled(problem), joint = found.jointWith(28, 0)
    joint.forEach((shares, value) => { expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(found.marginals[0]![value]!, 12) })
    found.joint(28).forEach((share, entry) => { expect(joint.reduce((sum, shares) => sum + shares[entry]!, 0)).toBeCloseTo(share, 12) })
    expect(found.jointWith(28, 0)).toEqual(joint)
  })

  it('goes one way round a ring, and comes near', () => {
    const ring = {...row(8, 1), factors: [...row(8, 1).factors, {of: [7, 0], table: Float64Array.of(5, 4, 3, 3, 4, 5, 4, 4, 4)}]}
    const both = summed(ring.sizes, [...ring.factors, {of: [4, 0, 1], table: new Float64Array(27).fill(1)}]).joints.at(-1)!
    settled(ring, 3).jointWith(0, 4).forEach((shares, value) => shares.forEach((share, entry) => { expect(Math.abs(share - both[value * 9 + entry]!)).toBeLessThan(0.01) }))
  })
})
