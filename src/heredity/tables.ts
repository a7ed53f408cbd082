/** Tables over variables of a few values each: the last variable runs fastest. Entries are at least 0. */

export const entriesOver = (of: readonly number[], sizes: ArrayLike<number>): number => of.reduce((product, variable) => product * (sizes[variable] ?? 1), 1)

/**
 * Where the entries of a table fall in one over some of its variables. A place is a sum over the variables, so it is held in two parts: entry
 * h · (length of `tail`) + t of the wider table falls on `head[h] + tail[t]` of the narrower.
 */
export interface Onto {
  readonly head: Int32Array
  readonly tail: Int32Array
}

/** As many entries of the wider table as are gone through in one run; what the tail holds at most. */
const RUN = 1024

/** Makes the `Onto` of two lists of variables. Like ones are made once: in a flock most tables are over sire, dam and chick. */
export class Folding {
  readonly #sizes: ArrayLike<number>
  readonly #known = new Map<string, Onto>()

  /** @param sizes how many values each variable has */
  constructor(sizes: ArrayLike<number>) {
    this.#sizes = sizes
  }

  /** @param some variables among `of`, in any order */
  onto(of: readonly number[], some: readonly number[]): Onto {
    const sizes = of.map(variable => this.#sizes[variable] ?? 1)
    const strides = of.map(variable => {
      const place = some.indexOf(variable)
      return place < 0 ? 0 : entriesOver(some.slice(place + 1), this.#sizes)
    })
    const key = `${sizes.join()}|${strides.join()}`
    const known = this.#known.get(key)
    if (known) return known
    let from = of.length, length = 1
    while (from > 0 && length * (sizes[from - 1] ?? 1) <= RUN) length *= sizes[--from] ?? 1
    const made = {head: places(sizes.slice(0, from), strides), tail: places(sizes.slice(from), strides.slice(from))}
    this.#known.set(key, made)
    return made
  }
}

function places(sizes: readonly number[], strides: readonly number[]): Int32Array {
  let all = new Int32Array([0])
  sizes.forEach((size, place) => {
    const stride = strides[place] ?? 0, wider = new Int32Array(all.length * size)
    for (let at = 0; at < wider.length; at++) wider[at] = (all[Math.floor(at / size)] ?? 0) + (at % size) * stride
    all = wider
  })
  return all
}

/** Multiplies a narrower table into a wider one; the largest entry of what comes of it. */
export function multiplyInto(table: Float64Array, {head, tail}: Onto, narrow: Float64Array): number {
  const run = tail.length
  let most = 0, at = 0
  for (let place = 0; place < head.length; place++) {
    const base = head[place] ?? 0
    for (let step = 0; step < run; step++) {
      const entry = (table[at] ?? 0) * (narrow[base + (tail[step] ?? 0)] ?? 0)
      table[at++] = entry
      if (entry > most) most = entry
    }
  }
  return most
}

/** Adds every entry of the wider table up where it falls in the narrower, which is emptied first. */
export function sumInto(narrow: Float64Array, {head, tail}: Onto, table: Float64Array): void {
  narrow.fill(0)
  const run = tail.length
  let at = 0
  for (let part = 0; part < head.length; part++) {
    const base = head[part] ?? 0
    for (let step = 0; step < run; step++) {
      const place = base + (tail[step] ?? 0)
      narrow[place] = (narrow[place] ?? 0) + (table[at++] ?? 0)
    }
  }
}

/** Adds every entry of a wide table, times the entry of a factor where it falls there, up where it falls in the narrower table, which is emptied first. */
export function sumProductInto(narrow: Float64Array, onto: Onto, table: Float64Array, ontoFactor: Onto, factor: Float64Array): void {
  narrow.fill(0)
  let at = 0
  for (let run = 0; run < onto.head.length; run++) {
    const base = onto.head[run] ?? 0, factorBase = ontoFactor.head[run] ?? 0
    for (let step = 0; step < onto.tail.length; step++) {
      const place = base + (onto.tail[step] ?? 0)
      narrow[place] = (narrow[place] ?? 0) + (table[at++] ?? 0) * (factor[factorBase + (ontoFactor.tail[step] ?? 0)] ?? 0)
    }
  }
}

/** Multiplies entry by entry; the largest of what comes of it. */
export function multiplyEach(table: Float64Array, other: Float64Array): number {
  let most = 0
  for (let at = 0; at < table.length; at++) {
    const entry = (table[at] ?? 0) * (other[at] ?? 0)
    table[at] = entry
    if (entry > most) most = entry
  }
  return most
}

/** A table whose largest entry is below this is scaled up before its entries vanish. */
const SMALL = 1e-100

/** Divides a table by its largest entry where that is nearly 0; the logarithm of what it was divided by. A table of nothing but 0 stays as it is. */
export function keptFromVanishing(table: Float64Array, most: number): number {
  if (most >= SMALL || most === 0) return 0
  for (let at = 0; at < table.length; at++) table[at] = (table[at] ?? 0) / most
  return Math.log(most)
}

export function total(table: Float64Array): number {
  let sum = 0
  for (let at = 0; at < table.length; at++) sum += table[at] ?? 0
  return sum
}

/** Divides a table by its total; nothing but 0 stays. */
export function makeWhole(table: Float64Array): void {
  const sum = total(table)
  if (sum > 0) for (let at = 0; at < table.length; at++) table[at] = (table[at] ?? 0) / sum
}

/** Tables to work in, used again and again: one of each length at each place. What stands in one when it is taken is left over. */
export class WorkingTables {
  readonly #tables: Map<number, Float64Array>[] = []
  readonly #messages: Map<number, Float64Array>[] = []

  table(place: number, entries: number): Float64Array {
    return among(this.#tables, place, entries)
  }

  message(place: number, entries: number): Float64Array {
    return among(this.#messages, place, entries)
  }
}

function among(all: Map<number, Float64Array>[], place: number, entries: number): Float64Array {
  const here = all[place] ??= new Map<number, Float64Array>()
  const known = here.get(entries) ?? new Float64Array(entries)
  here.set(entries, known)
  return known
}
