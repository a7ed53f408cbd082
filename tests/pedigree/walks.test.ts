import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {geneFlow} from '../../src/pedigree/gene-flow.ts'
import {walksOf} from '../../src/pedigree/walks.ts'
import {expectClose} from '../expect-close.ts'
import {anyPedigree, written} from './pedigrees.ts'

/** K = T·D·T′ written out: parts of every node, parents first. The slow twin, which knows nothing of walks. */
function writtenOut({nodes, order, first, source, weight}: ReturnType<typeof geneFlow>, own: Float64Array): readonly Float64Array[] {
  const parts = Array.from({length: nodes}, () => new Float64Array(nodes))
  for (const node of order) {
    const mine = parts[node] ?? new Float64Array()
    mine[node] = 1
    for (let k = first[node] ?? 0; k < (first[node + 1] ?? 0); k++) {
      parts[source[k] ?? 0]?.forEach((share, at) => { mine[at] = (mine[at] ?? 0) + share * (weight[k] ?? 0) })
    }
  }
  return parts.map(one => Float64Array.from(parts, other => one.reduce((sum, share, at) => sum + share * (other[at] ?? 0) * (own[at] ?? 0), 0)))
}

describe('walksOf(flow)', () => {
  it('full sibs, by hand', () => {
    const {pedigree} = written('A♂ - -\nB♀ - -\nC A B\nD A B')
    const walks = walksOf(geneFlow(pedigree, 'autosome'))
    // founders ½ their own; a chick of two unrelated birds ½ − ¼ (½ + ½)
    walks.own.set([0.5, 0.5, 0.25, 0.25])
    expect([...walks.row(2, [0, 1, 2, 3])]).toEqual([0.25, 0.25, 0.5, 0.25])
    expect(walks.rows([2, 3]).map(row => [...row])).toEqual([[0.5, 0.25], [0.25, 0.5]])
    const {each, group} = walks.means([2, 3])
    expect([...each, group]).toEqual([0.375, 0.375, 0.375])
  })

  it('needs no independent part of birds that are no ancestors', () => {
    const {pedigree} = written('A - -\nB - -\nC A B\nD - -')
    const walks = walksOf(geneFlow(pedigree, 'autosome'))
    walks.own.set([0.5, 0.5, 0.25, NaN])
    expect([...walks.row(2, [0, 2])]).toEqual([0.25, 0.5])
  })

  it('is the product written out, whatever the parts, row after row', () => {
    fc.assert(fc.property(anyPedigree(18), fc.array(fc.double({min: 0, max: 1, noNaN: true}), {minLength: 24, maxLength: 24}), (pedigree, parts) => {
      const flow = geneFlow(pedigree, 'autosome')
      const walks = walksOf(flow)
      for (let node = 0; node < flow.nodes; node++) walks.own[node] = parts[node % parts.length] ?? 0
      const expected = writtenOut(flow, walks.own)
      const nodes = Array.from({length: flow.nodes}, (_, node) => node)
      walks.rows(nodes).forEach((row, a) => row.forEach((kinship, b) => expectClose(kinship, expected[a]?.[b] ?? NaN, 1e-12)))
      // a walk leaves nothing behind for the next
      for (const a of nodes) walks.row(a, nodes.slice(0, 3)).forEach((kinship, b) => expectClose(kinship, expected[a]?.[b] ?? NaN, 1e-12))
      const {each, group} = walks.means(nodes)
      const means = nodes.map(a => nodes.reduce((sum, b) => sum + (expected[a]?.[b] ?? NaN), 0) / nodes.length)
      each.forEach((mean, a) => expectClose(mean, means[a] ?? NaN, 1e-12))
      expectClose(group, means.reduce((sum, mean) => sum + mean, 0) / nodes.length, 1e-12)
    }), {numRuns: 60})
  })

  it('counts one that is named twice twice', () => {
    const {pedigree} = written('A - -\nB - -')
    const walks = walksOf(geneFlow(pedigree, 'autosome'))
    walks.own.set([0.5, 0.5])
    // shares ⅔ and ⅓: ½ (4/9 + 1/9)
    expectClose(walks.means([0, 0, 1]).group, 5 / 18, 1e-15)
  })
})
