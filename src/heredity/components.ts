import type {Factor} from './join-graph.ts'

/** Variables that tables tie to each other, straight or through others, numbered anew among themselves. */
export interface Component {
  /** the component's variables as they were numbered, rising */
  readonly variables: readonly number[]
  readonly sizes: readonly number[]
  /** the tables over them, in the new numbers */
  readonly factors: readonly Factor[]
}

export interface Components {
  readonly components: readonly Component[]
  /** by variable: its component, −1 for one in no table; and its number there */
  readonly componentOf: Int32Array
  readonly placeOf: Int32Array
  /** by factor: the same of tables; −1 for one over no variable */
  readonly componentOfFactor: Int32Array
  readonly placeOfFactor: Int32Array
}

/**
 * What can be worked apart: no table holds variables of two components.
 *
 * @param sizes how many values each variable has
 */
export function componentsOf(sizes: ArrayLike<number>, factors: readonly Factor[]): Components {
  const up = Int32Array.from(sizes, (_, index) => index)
  const top = (variable: number): number => {
    let at = variable
    while (up[at] !== at) at = up[at] = up[up[at] ?? at] ?? at
    return at
  }
  const inTable = new Uint8Array(sizes.length)
  for (const {of} of factors) {
    for (const variable of of) {
      inTable[variable] = 1
      up[top(variable)] = top(of[0] ?? variable)
    }
  }
  const componentOf = new Int32Array(sizes.length).fill(-1), placeOf = new Int32Array(sizes.length).fill(-1)
  const components: {variables: number[]; sizes: number[]; factors: Factor[]}[] = [], numbers = new Map<number, number>()
  for (let variable = 0; variable < sizes.length; variable++) {
    if (inTable[variable] === 0) continue
    const root = top(variable), number = numbers.get(root) ?? components.push({variables: [], sizes: [], factors: []}) - 1
    numbers.set(root, number)
    componentOf[variable] = number
    placeOf[variable] = (components[number]?.variables.push(variable) ?? 0) - 1
    components[number]?.sizes.push(sizes[variable] ?? 0)
  }
  const componentOfFactor = new Int32Array(factors.length).fill(-1), placeOfFactor = new Int32Array(factors.length).fill(-1)
  factors.forEach(({of, table}, index) => {
    const [first] = of
    if (first === undefined) return
    const number = componentOf[first] ?? -1
    componentOfFactor[index] = number
    placeOfFactor[index] = (components[number]?.factors.push({of: of.map(variable => placeOf[variable] ?? -1), table}) ?? 0) - 1
  })
  return {components, componentOf, placeOf, componentOfFactor, placeOfFactor}
}
