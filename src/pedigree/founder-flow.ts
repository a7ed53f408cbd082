import {isFounder, type Pedigree} from './pedigree.ts'

/** What a founder's genes come from: its base, founders it is kin to, and something of its own. Sources are nodes: bases first, then animals. */
export interface FounderFlow {
  readonly sources: readonly (readonly [node: number, weight: number])[]
  /** the part of its kinship with itself that its sources do not give; below 0 when the stated kinships contradict each other */
  readonly own: number
}

/**
 * How are birds without parents in the book related to each other?
 *
 * Two founders of one base have the base's kinship; a stated kinship of two founders takes its place. Founders stated to be kin are worked one
 * after another, each as the best forecast from those before it: with R their kinships beyond their bases',
 *
 *     w = R(earlier, earlier)⁻¹ R(earlier, this)      own = R(this, this) − w′ R(earlier, this)
 *
 * so that every figure further down needs only weights and independent parts.
 *
 * @param selfOf kinship of a founder with itself, ½(1 + F) on an autosome
 * @returns one entry for every animal without parents, by its number
 */
export function founderFlow({animals, bases, kin}: Pedigree, selfOf: (animal: number) => number): ReadonlyMap<number, FounderFlow> {
  const stated = new Map<number, Map<number, number>>()
  const state = (a: number, b: number, kinship: number) => stated.set(a, (stated.get(a) ?? new Map<number, number>()).set(b, kinship))
  for (const {animals: [a, b], kinship} of kin) {
    if (!isFounder(animals[a]) || !isFounder(animals[b])) throw new RangeError(`kinship is stated of ${a} and ${b}, which are not both founders`)
    state(a, b, kinship)
    state(b, a, kinship)
  }
  const baseOf = (animal: number) => animals[animal]?.base ?? null
  const flows = new Map<number, FounderFlow>()
  animals.forEach((bird, animal) => {
    if (!isFounder(bird) || flows.has(animal)) return
    const group = stated.has(animal) ? kinGroup(animal, stated) : [animal]
    const beyond = (a: number, b: number): number => {
      const expected = baseKinship(bases, baseOf(a), baseOf(b))
      return a === b ? selfOf(a) - expected : (stated.get(a)?.get(b) ?? expected) - expected
    }
    group.forEach((here, place) => {
      const earlier = group.slice(0, place)
      const with_ = earlier.map(other => beyond(here, other))
      const weights = solve(earlier.map(a => earlier.map(b => beyond(a, b))), with_)
      const sources = new Map<number, number>()
      const flow = (node: number | null, weight: number) => { if (node !== null && weight !== 0) sources.set(node, (sources.get(node) ?? 0) + weight) }
      flow(baseOf(here), 1)
      weights.forEach((weight, index) => {
        const other = earlier[index] ?? 0
        flow(bases.length + other, weight)
        flow(baseOf(other), -weight)
      })
      const own = weights.reduce((left, weight, index) => left - weight * (with_[index] ?? 0), beyond(here, here))
      flows.set(here, {sources: [...sources].filter(([, weight]) => weight !== 0), own})
    })
  })
  return flows
}

/** Do the kinships stated of a founder leave it less than nothing of its own? A hair below is rounding. */
export const isContradicted = (own: number): boolean => own < -1e-9

/**
 * Of which founders do the stated kinships contradict each other, so that a bird would be more like others than like itself?
 *
 * Asked of an autosome, where it is soonest so: a hen's one Z is wholly like itself.
 *
 * @returns their numbers; where there are none `coancestry` does not throw for them
 */
export function contradictedFounders(pedigree: Pedigree): readonly number[] {
  const flows = founderFlow(pedigree, animal => (1 + founderInbreeding(pedigree, animal)) / 2)
  return [...flows].flatMap(([animal, {own}]) => (isContradicted(own) ? [animal] : []))
}

/** F of a founder: that of its base. */
export function founderInbreeding({animals, bases}: Pedigree, animal: number): number {
  const base = animals[animal]?.base ?? null
  return base === null ? 0 : bases[base]?.inbreeding ?? 0
}

/** Kinship that two birds have from their base populations: that of the smallest population which holds both. */
export function baseKinship(bases: Pedigree['bases'], a: number | null, b: number | null): number {
  const around = (base: number | null): number[] => (base === null ? [] : [base, ...around(bases[base]?.within ?? null)])
  const holding = new Set(around(a))
  const shared = around(b).find(base => holding.has(base))
  return shared === undefined ? 0 : bases[shared]?.kinship ?? 0
}

/** Founders tied to one another by stated kinships, however far. */
function kinGroup(start: number, stated: ReadonlyMap<number, ReadonlyMap<number, number>>): readonly number[] {
  const group = new Set([start])
  for (const animal of group) for (const other of stated.get(animal)?.keys() ?? []) group.add(other)
  return [...group].sort((a, b) => a - b)
}

/** Solves the symmetric equations M x = y by Gaussian elimination; a row that depends on those before it gets no weight. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0])
  const size = rows.length
  const free = new Set<number>()
  for (let pivot = 0; pivot < size; pivot++) {
    const top = rows[pivot] ?? []
    const lead = top[pivot] ?? 0
    if (Math.abs(lead) < 1e-12) { free.add(pivot); continue }
    for (let below = pivot + 1; below < size; below++) {
      const row = rows[below] ?? []
      const by = (row[pivot] ?? 0) / lead
      for (let column = pivot; column <= size; column++) row[column] = (row[column] ?? 0) - by * (top[column] ?? 0)
    }
  }
  const x = new Array<number>(size).fill(0)
  for (let index = size - 1; index >= 0; index--) {
    if (free.has(index)) continue
    const row = rows[index] ?? []
    let rest = row[size] ?? 0
    for (let column = index + 1; column < size; column++) rest -= (row[column] ?? 0) * (x[column] ?? 0)
    x[index] = rest / (row[index] ?? 1)
  }
  return x
}
