import type {GeneFlow} from './gene-flow.ts'

/** Kinships read off the gene flow T and the independent parts D, by walking up to the ancestors and down again: K = T·D·T′. */
export interface Walks {
  /** d of every node, to be filled in parents first; a walk needs only those of the ancestors it meets */
  readonly own: Float64Array
  /** kinship of one node with each of these */
  row(node: number, others: readonly number[]): Float64Array
  /** the kinship of each with each, row by row */
  rows(nodes: readonly number[]): readonly Float64Array[]
  /** mean kinship of each with all, and of all with all */
  means(nodes: readonly number[]): {readonly each: Float64Array; readonly group: number}
}

export function walksOf({nodes, first, source, weight}: GeneFlow): Walks {
  const own = new Float64Array(nodes)
  const up = new Float64Array(nodes), down = new Float64Array(nodes)
  const met = new Int32Array(nodes)
  const stack = new Int32Array(nodes), next = new Int32Array(nodes)
  let mark = 0

  /** every ancestor of these and they themselves, sources before what flows from them */
  function ancestry(seeds: readonly number[]): number[] {
    mark += 1
    const found: number[] = []
    for (const seed of seeds) {
      if (met[seed] === mark) continue
      met[seed] = mark
      let depth = 0
      stack[0] = seed
      next[0] = first[seed] ?? 0
      while (depth >= 0) {
        const here = stack[depth] ?? 0
        const at = next[depth] ?? 0
        if (at === first[here + 1]) {
          found.push(here)
          depth -= 1
          continue
        }
        next[depth] = at + 1
        const above = source[at] ?? 0
        if (met[above] === mark) continue
        met[above] = mark
        depth += 1
        stack[depth] = above
        next[depth] = first[above] ?? 0
      }
    }
    return found
  }

  /** spreads what stands in `up` at the seeds to their ancestors: u = T′x */
  function climb(found: readonly number[]): void {
    for (let place = found.length - 1; place >= 0; place--) {
      const here = found[place] ?? 0
      const share = up[here] ?? 0
      if (share === 0) continue
      for (let k = first[here] ?? 0, end = first[here + 1] ?? 0; k < end; k++) {
        const above = source[k] ?? 0
        up[above] = (up[above] ?? 0) + share * (weight[k] ?? 0)
      }
    }
  }

  /** K x, read at every node of this ancestry: y = T D u */
  function descend(found: readonly number[]): void {
    for (const here of found) {
      let sum = (up[here] ?? 0) * (own[here] ?? 0)
      for (let k = first[here] ?? 0, end = first[here + 1] ?? 0; k < end; k++) sum += (down[source[k] ?? 0] ?? 0) * (weight[k] ?? 0)
      down[here] = sum
    }
  }

  const clear = (found: readonly number[]): void => { for (const here of found) up[here] = 0 }
  const norm = (found: readonly number[]): number => found.reduce((sum, here) => sum + (up[here] ?? 0) ** 2 * (own[here] ?? 0), 0)
  const read = (others: readonly number[]): Float64Array => Float64Array.from(others, other => down[other] ?? 0)

  function rowWithin(node: number, others: readonly number[], theirs: readonly number[]): Float64Array {
    const mine = ancestry([node])
    up[node] = 1
    climb(mine)
    descend(theirs)
    clear(mine)
    return read(others)
  }

  return {
    own,
    row: (node, others) => rowWithin(node, others, ancestry(others)),
    rows(list) {
      const theirs = ancestry(list)
      return list.map(node => rowWithin(node, list, theirs))
    },
    means(list) {
      const found = ancestry(list)
      for (const node of list) up[node] = (up[node] ?? 0) + 1 / list.length
      climb(found)
      descend(found)
      const group = norm(found)
      clear(found)
      return {each: read(list), group}
    },
  }
}
