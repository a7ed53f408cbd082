import type {Supposed} from './cluster-messages.ts'
import type {Factor} from './join-graph.ts'
import type {Propagation} from './what-tables-say.ts'
import {entriesOver, keptFromVanishing, makeWhole, multiplyEach} from './tables.ts'

/** Tables with the ends of their lines summed out, and the way back. */
export interface WithoutLeaves {
  /** tables over the same variables: those that stay, then what the leaves say, one table for all that hang on the same variables */
  readonly factors: readonly Factor[]
  /** by variable: how many leaves hang on it and the rest of a table */
  readonly hung: Int32Array
  /** what was found of these tables, told of all that were given */
  withLeaves(found: Propagation, whole: () => Propagation): Propagation
}

/** A variable of one table with others, and of tables of its own. */
interface Leaf {
  readonly variable: number
  /** numbers of tables: that with others, where it comes last, and its own */
  readonly tied: number
  readonly own: readonly number[]
}

interface Branch {
  /** variables the leaves hang on */
  readonly of: readonly number[]
  readonly leaves: Leaf[]
  readonly entries: number
}

type TableOf = (factor: number) => Float64Array

/**
 * Chicks that had no chicks themselves are most of a flock, and each tells its parents but one thing:
 *
 *     told(parents) = Σ over its values  tied(parents, value) · own(value)
 *
 * The product of what all chicks of like parents tell is one table, so that only the birds between are left to be worked. Of a chick itself
 *
 *     P(parents, value | seen) = P(parents | seen) · tied(parents, value) · own(value) / told(parents)
 *
 * The sums are the same to the last rounding, exact or not.
 *
 * @param sizes how many values each variable has
 */
export function withoutLeaves(sizes: ArrayLike<number>, factors: readonly Factor[]): WithoutLeaves {
  const {leafOf, branches, branchOf} = leavesOf(sizes, factors)
  const stays = factors.map((_, number) => number).filter(number => branchOf[number] === -1), coreOf = new Int32Array(factors.length).fill(-1)
  stays.forEach((number, place) => { coreOf[number] = place })
  const given: TableOf = factor => factors[factor]?.table ?? NOTHING, hung = new Int32Array(sizes.length)
  const told = branches.map(branch => {
    for (const {variable} of branch.leaves) hung[branch.of[0] ?? variable] = (hung[branch.of[0] ?? variable] ?? 0) + 1
    return toldBy(branch, sizes, given)
  })
  const numberOf = (branch: number): number => stays.length + branch
  return {
    hung,
    factors: [...stays.flatMap(number => factors[number] ?? []), ...branches.map(({of}, branch) => ({of, table: told[branch]?.table ?? NOTHING}))],
    withLeaves(found, whole) {
      // of what stands now, for what is read while something is supposed is still asked of this
      const parents = branches.map((_, branch) => found.joint(numberOf(branch)))
      const logs = told.reduce((sum, {log}) => sum + log, 0), shares = telling(found, given, branch => parents[branch] ?? NOTHING), along = new Map<string, readonly Float64Array[]>()
      let all: Propagation | null = null
      return {
        ...found, logSum: found.logSum + logs, marginal: shares.marginal, joint: shares.joint,
        isExact(variable) {
          const leaf = leafOf[variable], [first] = branches[branchOf[leaf?.tied ?? -1] ?? -1]?.of ?? []
          return found.isExact(leaf ? first ?? variable : variable)
        },
        jointWith(factor, variable) {
          const branch = branchOf[factor] ?? -1, at = leafAt(factor)
          if (branch < 0 && !leafOf[variable]) return found.jointWith(coreOf[factor] ?? -1, variable)
          // of two ends of lines it is seldom asked
          if (leafOf[variable] || !at) return (all ??= whole()).jointWith(factor, variable)
          return withTables(branch, variable).map(parents => spread(at, parents, given, factors[factor]?.of.length === 1))
        },
        supposing(tables, read, far) {
          const core = new Map<number, Float64Array>(), changed = new Set<number>(), tableOf: TableOf = factor => tables.get(factor) ?? given(factor)
          for (const [factor, table] of tables) {
            const branch = branchOf[factor] ?? -1
            if (branch < 0) core.set(coreOf[factor] ?? -1, table)
            else changed.add(branch)
          }
          let more = logs
          for (const branch of changed) {
            const anew = toldBy(branches[branch] ?? EMPTY, sizes, tableOf)
            more += anew.log - (told[branch]?.log ?? 0)
            core.set(numberOf(branch), anew.table)
          }
          return found.supposing(core, supposed => {
            const now: Float64Array[] = []
            return read({...telling(supposed, tableOf, branch => now[branch] ??= supposed.joint(numberOf(branch))), logSum: () => supposed.logSum() + more})
          }, far)
        },
      }

      /** parents with a variable: of chicks of like parents it is asked again and again */
      function withTables(branch: number, variable: number): readonly Float64Array[] {
        const key = `${branch} ${variable}`, before = along.get(key) ?? found.jointWith(numberOf(branch), variable)
        along.set(key, before)
        return before
      }
    },
  }

  /** the leaf whose table it is */
  function leafAt(factor: number): Leaf | undefined {
    const of = factors[factor]?.of ?? [], leaf = leafOf[of.at(-1) ?? -1]
    return leaf && (leaf.tied === factor || of.length === 1) ? leaf : undefined
  }

  function telling(found: Pick<Supposed, 'marginal' | 'joint'>, tableOf: TableOf, parentsAt: (branch: number) => Float64Array): Pick<Supposed, 'marginal' | 'joint'> {
    const marginals: Float64Array[] = [], parentsOf = ({tied}: Leaf): Float64Array => parentsAt(branchOf[tied] ?? -1)
    const marginal = (variable: number): Float64Array => {
      const leaf = leafOf[variable]
      return leaf ? marginals[variable] ??= whole(spread(leaf, parentsOf(leaf), tableOf, true)) : found.marginal(variable)
    }
    return {
      marginal,
      joint(factor) {
        const leaf = leafAt(factor)
        if (!leaf) return found.joint(coreOf[factor] ?? -1)
        return leaf.tied === factor ? whole(spread(leaf, parentsOf(leaf), tableOf, false)) : marginal(leaf.variable)
      },
    }
  }

  /** Shares of parents told of a chick too: over both, or of the chick alone. */
  function spread({variable, tied, own}: Leaf, parents: Float64Array, tableOf: TableOf, alone: boolean): Float64Array {
    const size = sizes[variable] ?? 0, table = tableOf(tied), its = productOf(own, size, tableOf), shares = new Float64Array(alone ? size : parents.length * size)
    for (let entry = 0; entry < parents.length; entry++) {
      let sum = 0
      for (let value = 0; value < size; value++) sum += (table[entry * size + value] ?? 0) * (its[value] ?? 0)
      if (sum === 0) continue
      const times = (parents[entry] ?? 0) / sum
      for (let value = 0; value < size; value++) {
        const to = alone ? value : entry * size + value
        shares[to] = (shares[to] ?? 0) + times * (table[entry * size + value] ?? 0) * (its[value] ?? 0)
      }
    }
    return shares
  }
}

function leavesOf(sizes: ArrayLike<number>, factors: readonly Factor[]) {
  const times = new Int32Array(sizes.length), tied = new Int32Array(sizes.length), own: number[][] = []
  factors.forEach(({of}, number) => {
    const [variable] = of
    if (of.length === 1 && variable !== undefined) (own[variable] ??= []).push(number)
    else for (const each of of) {
      times[each] = (times[each] ?? 0) + 1
      tied[each] = number
    }
  })
  const leafOf: (Leaf | undefined)[] = [], branches: Branch[] = [], byParents = new Map<string, number>(), branchOf = new Int32Array(factors.length).fill(-1)
  for (let variable = 0; variable < sizes.length; variable++) {
    const number = tied[variable] ?? -1, of = factors[number]?.of
    if (times[variable] !== 1 || of?.at(-1) !== variable) continue
    const parents = of.slice(0, -1), key = parents.join(), branch = byParents.get(key) ?? branches.push({of: parents, leaves: [], entries: entriesOver(parents, sizes)}) - 1
    const leaf = {variable, tied: number, own: own[variable] ?? []}
    byParents.set(key, branch)
    branches[branch]?.leaves.push(leaf)
    leafOf[variable] = leaf
    for (const each of [number, ...leaf.own]) branchOf[each] = branch
  }
  return {leafOf, branches, branchOf}
}

/** What all leaves of a branch tell, and the logarithm of what was divided out. */
function toldBy({leaves, entries}: Branch, sizes: ArrayLike<number>, tableOf: TableOf): {readonly table: Float64Array; readonly log: number} {
  const table = new Float64Array(entries).fill(1), one = new Float64Array(entries)
  let log = 0
  for (const {variable, tied, own} of leaves) {
    const size = sizes[variable] ?? 0, its = productOf(own, size, tableOf), tables = tableOf(tied)
    for (let entry = 0, at = 0; entry < entries; entry++) {
      let sum = 0
      for (let value = 0; value < size; value++) sum += (tables[at++] ?? 0) * (its[value] ?? 0)
      one[entry] = sum
    }
    log += keptFromVanishing(table, multiplyEach(table, one))
  }
  return {table, log}
}

function productOf(own: readonly number[], size: number, tableOf: TableOf): Float64Array {
  const [first, ...others] = own
  if (first !== undefined && others.length === 0) return tableOf(first)
  const product = new Float64Array(size).fill(1)
  for (const factor of own) multiplyEach(product, tableOf(factor))
  return product
}

function whole(shares: Float64Array): Float64Array {
  makeWhole(shares)
  return shares
}

const EMPTY: Branch = {of: [], leaves: [], entries: 1}
const NOTHING = new Float64Array(0)
