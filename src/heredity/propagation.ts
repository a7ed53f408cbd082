import {ClusterMessages, type Settling, type Supposed} from './cluster-messages.ts'
import {componentsOf} from './components.ts'
import {joinGraph, type Factor} from './join-graph.ts'
import {withoutLeaves} from './leaves.ts'
import {entriesOver} from './tables.ts'
import type {Propagation} from './what-tables-say.ts'

export interface Limits extends Settling {
  /** most entries of one cluster, and of all of a component, where the answer is to be exact */
  readonly exactCluster: number
  readonly exactAll: number
  /** most entries of a cluster that joins several tables where it is not */
  readonly looseCluster: number
  /** components of so many variables or more are known to be too wide: exactness is not tried again */
  readonly tooWideFrom?: number
}

export const LIMITS: Limits = {exactCluster: 2 ** 21, exactAll: 2 ** 24, looseCluster: 2 ** 7, sweeps: 100, settled: 1e-3}

/** Of components up to so many variables a second order is tried before the answer is no longer exact; of larger ones it hardly ever helps, and takes long. */
const TRIED_TWICE = 4000

/** Where only what lies near a supposition is asked, so many sweeps over rings tell it; on trees all is told. */
const SUPPOSED = {near: {sweeps: 3, settled: 3e-3}, exact: {sweeps: 3, settled: 1e-9}} as const

/**
 * Given tables over variables, how likely is each value of each variable under their product?
 *
 * Each connected component is worked by itself: exactly, by a tree of clusters, where the limits allow; otherwise by messages on a graph of clusters, sent to
 * and fro until they settle. A variable in no table has all its values alike.
 *
 * @param sizes how many values each variable has
 * @throws {RangeError} where a table does not fit its variables
 */
export function propagate(sizes: ArrayLike<number>, factors: readonly Factor[], limits: Limits = LIMITS): Propagation {
  for (const {of, table} of factors) {
    if (table.length !== entriesOver(of, sizes)) throw new RangeError(`a table of ${table.length} entries does not fit variables ${of.join(', ')}`)
  }
  const trimmed = withoutLeaves(sizes, factors)
  return trimmed.withLeaves(propagated(sizes, trimmed.factors, trimmed.hung, limits), () => propagated(sizes, factors, new Int32Array(sizes.length), limits))
}

/** @param hung by variable: how many more hang on it, that were summed out before */
function propagated(sizes: ArrayLike<number>, factors: readonly Factor[], hung: Int32Array, limits: Limits): Propagation {
  const {components, componentOf, placeOf, componentOfFactor, placeOfFactor} = componentsOf(sizes, factors)
  const constant = factors.filter(({of}) => of.length === 0).reduce((sum, {table}) => sum + Math.log(table[0] ?? 0), 0)
  const parts = components.map(component => {
    const scopes = component.factors.map(({of}) => of)
    const whole = (alike: boolean) => joinGraph(component.sizes, scopes, limits.exactCluster, limits.exactAll, alike)
    const count = component.variables.reduce((sum, variable) => sum + 1 + (hung[variable] ?? 0), 0)
    const graph = (count < (limits.tooWideFrom ?? Infinity) ? whole(false) ?? (count <= TRIED_TWICE ? whole(true) : null) : null) ?? joinGraph(component.sizes, scopes, limits.looseCluster)
    if (!graph) throw new Error('a graph without a limit is always made')
    return {exact: graph.exact, count, messages: new ClusterMessages(graph, component.sizes, component.factors, limits)}
  })
  const marginal = (variable: number): Float64Array => {
    const size = sizes[variable] ?? 0
    return parts[componentOf[variable] ?? -1]?.messages.marginals[placeOf[variable] ?? -1] ?? new Float64Array(size).fill(1 / size)
  }
  return {
    marginal,
    logSum: parts.reduce((sum, {messages}) => sum + messages.logSum, constant),
    exact: parts.every(({exact}) => exact),
    tooWideFrom: parts.reduce((least, {exact, count}) => (exact ? least : Math.min(least, count)), Infinity),
    change: parts.reduce((most, {messages}) => Math.max(most, messages.change), 0),
    sweeps: parts.reduce((most, {messages}) => Math.max(most, messages.sweeps), 0),
    joint(factor) {
      const part = parts[componentOfFactor[factor] ?? -1]
      if (!part) throw new RangeError(`there is no factor ${factor} over variables`)
      return part.messages.joint(placeOfFactor[factor] ?? -1)
    },
    jointWith(factor, variable) {
      const part = parts[componentOfFactor[factor] ?? -1]
      if (!part || componentOfFactor[factor] !== componentOf[variable]) throw new RangeError(`factor ${factor} and variable ${variable} have nothing to do with each other`)
      return part.messages.jointWith(placeOfFactor[factor] ?? -1, placeOf[variable] ?? -1)
    },
    supposing(tables, read, whole = false) {
      const byPart = new Map<number, Map<number, Float64Array>>()
      for (const [factor, table] of tables) {
        const part = componentOfFactor[factor] ?? -1, own = byPart.get(part) ?? new Map<number, Float64Array>()
        byPart.set(part, own.set(placeOfFactor[factor] ?? -1, table))
      }
      const supposed = new Map<number, Supposed>()
      const enter = ([first, ...rest]: readonly (readonly [number, Map<number, Float64Array>])[]): ReturnType<typeof read> => {
        if (!first) {
          return read({
            marginal: variable => supposed.get(componentOf[variable] ?? -1)?.marginal(placeOf[variable] ?? -1) ?? marginal(variable),
            joint: factor => {
              const part = componentOfFactor[factor] ?? -1, inPart = supposed.get(part) ?? parts[part]?.messages
              if (!inPart) throw new RangeError(`there is no factor ${factor} over variables`)
              return inPart.joint(placeOfFactor[factor] ?? -1)
            },
            logSum: () => parts.reduce((sum, {messages}, part) => sum + (supposed.get(part)?.logSum() ?? messages.logSum), constant),
          })
        }
        const [number, own] = first, part = parts[number]
        if (!part) throw new RangeError('there is no such factor over variables')
        return part.messages.supposing(own, part.exact ? SUPPOSED.exact : whole ? limits : SUPPOSED.near, inPart => {
          supposed.set(number, inPart)
          return enter(rest)
        })
      }
      return enter([...byPart])
    },
    isExact: variable => parts[componentOf[variable] ?? -1]?.exact ?? true,
  }
}
