/** The slow twin of `propagate`: goes through every combination of values of every variable. And small random tables for it. */
import fc from 'fast-check'
import type {Factor} from '../../src/heredity/join-graph.ts'

export interface Summed {
  readonly total: number
  /** by variable, shares of its values */
  readonly marginals: readonly (readonly number[])[]
  /** by factor, shares of its entries */
  readonly joints: readonly (readonly number[])[]
}

export function summed(sizes: readonly number[], factors: readonly Factor[]): Summed {
  const marginals = sizes.map(size => Array.from({length: size}, () => 0)), joints = factors.map(({table}) => Array.from(table, () => 0))
  const combinations = sizes.reduce((product, size) => product * size, 1)
  let total = 0
  for (let number = 0; number < combinations; number++) {
    let rest = number
    const values = sizes.map(size => {
      const value = rest % size
      rest = Math.floor(rest / size)
      return value
    })
    const entries = factors.map(({of}) => of.reduce((entry, variable) => entry * sizes[variable]! + values[variable]!, 0))
    const product = factors.reduce((all, {table}, index) => all * table[entries[index]!]!, 1)
    total += product
    values.forEach((value, variable) => { marginals[variable]![value]! += product })
    entries.forEach((entry, index) => { joints[index]![entry]! += product })
  }
  const shares = (table: number[]) => table.map(entry => (total === 0 ? 0 : entry / total))
  return {total, marginals: marginals.map(shares), joints: joints.map(shares)}
}

export interface Problem {
  readonly sizes: readonly number[]
  readonly factors: readonly Factor[]
}

/** Two to eight variables of one to three values, and tables over up to three of them; now and then an entry of 0. */
export const someTables: fc.Arbitrary<Problem> = fc.array(fc.integer({min: 1, max: 3}), {minLength: 2, maxLength: 8}).chain(sizes =>
  fc.array(fc.uniqueArray(fc.nat(sizes.length - 1), {maxLength: 3}), {minLength: 1, maxLength: 9}).chain(scopes =>
    fc.tuple(...scopes.map(of => fc.array(fc.oneof({arbitrary: fc.constant(0), weight: 1}, {arbitrary: fc.integer({min: 1, max: 9}), weight: 9}), {
      minLength: of.reduce((product, variable) => product * sizes[variable]!, 1), maxLength: of.reduce((product, variable) => product * sizes[variable]!, 1),
    }))).map(tables => ({sizes, factors: scopes.map((of, index) => ({of, table: Float64Array.from(tables[index]!)}))}))))
