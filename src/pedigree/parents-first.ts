/** Parents before their chicks, and the loops that make this impossible. */

export interface Order {
  /** every index once, parents before their chicks; stable: otherwise in the order given. Birds on a loop stand in the order given. */
  readonly order: readonly number[]
  /** each loop as the birds on it, each the chick of the one before it and the first the chick of the last */
  readonly loops: readonly (readonly number[])[]
}

/**
 * In which order can figures be worked out, so that a parent is always done before its chick? And which birds are their own ancestors?
 *
 * Depth first from each bird in turn; a bird met again while its own descent is still being walked closes a loop, which is reported once
 * and then left out of the walk. Time and memory are proportional to birds plus parents.
 *
 * @param count birds, numbered 0 to count − 1
 * @param parentsOf the numbers of a bird's possible parents
 * @see Tarjan 1972, SIAM J. Comput. 1:146–160, for the walk (from memory)
 * @example parentsFirst(3, bird => [[1], [2], []][bird] ?? []).order  // [2, 1, 0]
 */
export function parentsFirst(count: number, parentsOf: (bird: number) => readonly number[]): Order {
  const NEW = 0, WALKING = 1, DONE = 2
  const state = new Uint8Array(count)
  const order: number[] = []
  const loops: number[][] = []
  for (let start = 0; start < count; start++) {
    if (state[start] !== NEW) continue
    const way: {bird: number; parents: readonly number[]; next: number}[] = [{bird: start, parents: parentsOf(start), next: 0}]
    state[start] = WALKING
    for (let here = way.at(-1); here; here = way.at(-1)) {
      const parent = here.parents[here.next]
      if (parent === undefined) {
        state[here.bird] = DONE
        order.push(here.bird)
        way.pop()
        continue
      }
      here.next += 1
      if (state[parent] === NEW) {
        state[parent] = WALKING
        way.push({bird: parent, parents: parentsOf(parent), next: 0})
      } else if (state[parent] === WALKING) {
        const from = way.findIndex(step => step.bird === parent)
        loops.push(way.slice(from).map(step => step.bird).reverse())
      }
    }
  }
  return {order, loops}
}
