import type {Factor} from './join-graph.ts'

/** One bird at one block of loci: a variable whose values are genotypes; of a bird that is one of several, each with the bird it is. */
export interface Held {
  readonly variable: number
  /** by value, the number of the genotype in the block */
  readonly genotypes: readonly number[]
  /** by value, the place among its candidates of the bird it is; null where there is no doubt which it is */
  readonly source: readonly number[] | null
  /** the table of what was seen of the bird itself at this block alone */
  readonly own: number
}

/** Which of several birds it was. */
export interface Doubt {
  /** null: a bird outside the pedigree */
  readonly sources: readonly (number | null)[]
  /** a variable that tells them apart, and by its value the place in `sources` */
  readonly variable: number
  readonly source: readonly number[]
}

/** The same where they stand together in one sum: each is owed a part of the entries of the chick's own table. */
export interface Pooled {
  /** null: a bird outside the pedigree */
  readonly sources: readonly (number | null)[]
  /** the chick's own table */
  readonly factor: number
  /** by place in `sources`: of the bird's genotype; null where it does not matter which */
  readonly variables: readonly (number | null)[]
  /** by place, then by value of that variable: the share of each of the table's entries that comes of the bird with that genotype; one where they are alike */
  owed(): readonly (readonly Float64Array[])[]
}

/** Variables and tables over them, as they are put together. */
export interface Network {
  readonly sizes: number[]
  readonly factors: Factor[]
  /** the number of a new variable */
  variable(size: number): number
  /** the number of a new table; `entry` is asked for each combination of values, in the order of the variables */
  factor(of: readonly number[], entry: (values: readonly number[]) => number): number
  /** the number of a new table that is worked already */
  table(of: readonly number[], table: Float64Array): number
}

export function emptyNetwork(): Network {
  const sizes: number[] = [], factors: Factor[] = []
  return {
    sizes, factors,
    variable: size => sizes.push(size) - 1,
    factor: (of, entry) => factors.push({of, table: tableOf(of.map(each => sizes[each] ?? 0), entry)}) - 1,
    table: (of, table) => factors.push({of, table}) - 1,
  }
}

/** A table over all of a bird's variables, from the numbers of its genotypes at every block. */
export function tableOver(held: readonly Held[], entry: (genotypes: readonly number[]) => number): Float64Array {
  return tableOf(held.map(({genotypes}) => genotypes.length), values => entry(held.map(({genotypes}, block) => genotypes[values[block] ?? 0] ?? 0)))
}

function tableOf(sizes: readonly number[], entry: (values: readonly number[]) => number): Float64Array {
  const table = new Float64Array(sizes.reduce((product, size) => product * size, 1))
  const values = sizes.map(() => 0)
  for (let at = 0; at < table.length; at++) {
    table[at] = entry(values)
    for (let place = sizes.length - 1; place >= 0; place--) {
      const next = (values[place] ?? 0) + 1
      values[place] = next < (sizes[place] ?? 0) ? next : 0
      if (next < (sizes[place] ?? 0)) break
    }
  }
  return table
}
