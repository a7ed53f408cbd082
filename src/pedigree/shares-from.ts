import type {GeneFlow} from './gene-flow.ts'

/**
 * What share of one node's genes is expected to have come down from another?
 *
 *     T(i, i) = 1        T(i, j) = Σ w(i, k) T(k, j)      over the sources k of i, w as in `geneFlow`
 *
 * Asked again it is looked up: what was worked for one j serves every i. Only nodes further down than j are walked through.
 *
 * @returns a share: 0 where none came, 1 of a node itself; of founders stated to be kin it may lie below 0, as their weights do
 * @example on the autosomes ½ from a parent, ¼ from a grandparent, ¾ from a cock bred back to his daughter
 */
export function sharesFrom({first, source, weight, level}: Pick<GeneFlow, 'first' | 'source' | 'weight' | 'level'>): (node: number, from: number) => number {
  const known = new Map<number, Map<number, number>>()
  return shareFrom

  function shareFrom(node: number, from: number): number {
    if (node === from) return 1
    if ((level[node] ?? 0) <= (level[from] ?? 0)) return 0
    const theirs = known.get(from) ?? new Map<number, number>()
    known.set(from, theirs)
    const before = theirs.get(node)
    if (before !== undefined) return before
    let sum = 0
    for (let k = first[node] ?? 0, end = first[node + 1] ?? 0; k < end; k++) sum += (weight[k] ?? 0) * shareFrom(source[k] ?? 0, from)
    theirs.set(node, sum)
    return sum
  }
}
