import type {Bird} from '../logbook/book.ts'
import {sharesFrom} from '../pedigree/shares-from.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** F of the chicks of two birds: the mean over what is doubtful, and the least and most over the parents that the two may have. */
export interface ChicksOfPair {
  readonly mean: number
  readonly low: number
  readonly high: number
}

/** A bird, or the population that a parent outside the book is drawn from, by its row among the kinships worked; null where neither is known. */
type Source = number | null

/** What a bird in doubt may be: a chick of one of its matings, or one of the birds it was found to be perhaps. Its genes come from these in equal parts: sire and dam, or itself. */
type Possibility = readonly Source[]

/**
 * What would the F of their chicks be, for any two of a set of birds?
 *
 *     mean = K(a, b)
 *     range over the matings p of a and q of b:  ¼ (K(sₚ, s_q) + K(sₚ, d_q) + K(dₚ, s_q) + K(dₚ, d_q))
 *
 * Where b is a parent of a, or an ancestor further up, the ways down from it are gone by their chances, T in all to a parent x of a; what K(x, s) has
 * by them is taken out, and b's kinship with itself as a chick of q put in its place:
 *
 *     K(x, b | q) = ½ Σ over s_q, d_q of (K(x, s) − T · K(b, s)) + T · ½ (1 + K(s_q, d_q))
 *
 * A bird with itself: ½ (1 + F), over the range of its own F.
 *
 * Chicks of one family have one dam in every case. Doubt about other birds is averaged. The range holds the mean, whatever the chances want to the
 * whole. Two lists of matings are gone through once, whichever chicks of theirs are asked about, unless one descends from the other.
 *
 * @param birds those that will be asked about; their kinships are worked at once
 */
export function pairKinship(
  {pedigree: {animals}, numberOf}: Pick<PedigreeOfBook, 'pedigree' | 'numberOf'>, {autosome}: Pick<Kinship, 'autosome'>, birds: readonly Bird[],
): (a: Bird, b: Bird) => ChicksOfPair {
  const {bases, level} = autosome.flow
  const asked = birds.map(bird => bases + numberOf(bird))
  const nodes = [...new Set([...asked, ...asked.flatMap(node => (waysOf(node) ?? []).flat()).filter(node => node !== null)])]
  const place = new Map(nodes.map((node, index) => [node, index] as const))
  const rows = autosome.amongNodes(nodes)
  const doubts = new Map<object, readonly Possibility[]>(), ofNode = new Map<number, readonly Possibility[] | null>()
  const ranges = new Map<readonly Possibility[], Map<readonly Possibility[], Range>>()
  const sources = new Map<readonly Possibility[], readonly Source[]>(), below = new Map<readonly Possibility[], Map<number, boolean>>()
  const shareFrom = sharesFrom(autosome.flow), told = new Map<Bird, Map<Bird, ChicksOfPair>>()

  return (one, other) => {
    const known = told.get(one) ?? new Map<Bird, ChicksOfPair>(), chicks = known.get(other) ?? chicksOf(one, other)
    told.set(one, known.set(other, chicks))
    return chicks
  }

  function chicksOf(one: Bird, other: Bird): ChicksOfPair {
    if (one === other) return withItself(one)
    const [a, b] = [bases + numberOf(one), bases + numberOf(other)].sort((x, y) => (level[y] ?? 0) - (level[x] ?? 0)) as [number, number]
    const mean = between(rowOf(a), rowOf(b)), ofYounger = possibilitiesOf(a), ofOlder = possibilitiesOf(b)
    if (!ofYounger && !ofOlder) return {mean, low: mean, high: mean}
    const {low, high} = rangeOf(a, ofYounger ?? [[rowOf(a)]], b, ofOlder)
    return {mean, low: Math.min(low, mean), high: Math.max(high, mean)}
  }

  function withItself(bird: Bird): ChicksOfPair {
    const f = autosome.inbreeding[numberOf(bird)]
    if (!f) throw new Error(`${bird.id} was not worked`)
    return {mean: (1 + f.mean) / 2, low: (1 + f.low) / 2, high: (1 + f.high) / 2}
  }

  function rangeOf(a: number, ofYounger: readonly Possibility[], b: number, ofOlder: readonly Possibility[] | null): Range {
    const dam = animals[a - bases]?.damStandIn
    const isFamily = dam !== undefined && dam === animals[b - bases]?.damStandIn
    const isApart = ofOlder !== null && !isFamily && !comesOf(ofYounger, b)
    const known = isApart ? ranges.get(ofYounger)?.get(ofOlder) : undefined
    if (known) return known
    const sides = sidesOf(ofYounger), kinships = new Float64Array(sides.length)
    let low = Infinity, high = -Infinity
    for (const q of ofOlder ?? [null]) {
      for (let place = 0; place < sides.length; place++) kinships[place] = withB(sides[place] ?? null, b, q)
      for (const p of ofYounger) {
        if (isFamily && p[1] !== q?.[1]) continue
        let sum = 0
        for (let side = 0; side < p.length; side++) sum += kinships[sides.indexOf(p[side] ?? null)] ?? 0
        const f = sum / p.length
        low = Math.min(low, f)
        high = Math.max(high, f)
      }
    }
    if (isApart) ranges.set(ofYounger, (ranges.get(ofYounger) ?? new Map<readonly Possibility[], Range>()).set(ofOlder, {low, high}))
    return {low, high}
  }

  /** has a bird that may be any of these b among its ancestors? */
  function comesOf(possible: readonly Possibility[], b: number): boolean {
    const known = below.get(possible) ?? new Map<number, boolean>(), before = known.get(b)
    if (before !== undefined) return before
    const found = sidesOf(possible).some(side => side !== null && shareFrom(nodes[side] ?? -1, b) !== 0)
    below.set(possible, known.set(b, found))
    return found
  }

  /** each of the sources of these once */
  function sidesOf(possible: readonly Possibility[]): readonly Source[] {
    const known = sources.get(possible) ?? [...new Set(possible.flat())]
    sources.set(possible, known)
    return known
  }

  /** kinship of a bird with b, if b is this */
  function withB(side: Source, b: number, q: Possibility | null): number {
    if (side === null || q === null) return between(side, rowOf(b))
    const part = shareFrom(nodes[side] ?? -1, b)
    const [by = null, from = null] = q
    const itself = q.length === 1 ? between(by, by) : (1 + between(by, from)) / 2
    let sum = 0
    for (let place = 0; place < q.length; place++) sum += between(side, q[place] ?? null) - part * between(rowOf(b), q[place] ?? null)
    return sum / q.length + part * itself
  }

  /** null where there is no doubt; one list for all that are in the same doubt */
  function possibilitiesOf(node: number): readonly Possibility[] | null {
    const before = ofNode.get(node)
    if (before !== undefined) return before
    const found = possibilitiesFrom(node, waysOf(node))
    ofNode.set(node, found)
    return found
  }

  function possibilitiesFrom(node: number, told: ReturnType<typeof waysOf>): readonly Possibility[] | null {
    if (told === null) return null
    const {matings, oneOf} = animals[node - bases] ?? {}
    const key = oneOf ?? matings ?? told
    const known = doubts.get(key)
    if (known) return known
    const all = told.map(way => way.map(each => (each === null ? null : rowOf(each))))
    doubts.set(key, all)
    return all
  }

  /** the nodes that a bird in doubt may come from, way by way */
  function waysOf(node: number): readonly (readonly (number | null)[])[] | null {
    const {matings = [], oneOf, outside} = animals[node - bases] ?? {}
    if (oneOf) return oneOf.map(each => [bases + each.animal])
    const from = (parent: number | null, beyond: number | null = null) => (parent === null ? beyond : bases + parent)
    return matings.length > 1 ? matings.map(({sire, dam}) => [from(sire, outside?.sire), from(dam, outside?.dam)]) : null
  }

  function rowOf(node: number): number {
    const row = place.get(node)
    if (row === undefined) throw new Error(`node ${node} was not asked about`)
    return row
  }

  function between(a: Source, b: Source): number {
    return a === null || b === null ? 0 : Math.max(0, rows[a]?.[b] ?? NaN)
  }
}

interface Range {
  readonly low: number
  readonly high: number
}

/** One male with each of some hens: F of the chicks, mean over the hens, and the hen it may be highest with (the first of equals). */
export interface MaleWithHens {
  readonly mean: number
  readonly worst: ChicksOfPair & {readonly hen: Bird}
  readonly each: readonly (ChicksOfPair & {readonly hen: Bird})[]
}

/** @param hens one or more */
export function maleWithHens(male: Bird, hens: readonly Bird[], chicksOf: (a: Bird, b: Bird) => ChicksOfPair): MaleWithHens {
  const each = hens.map(hen => ({hen, ...chicksOf(male, hen)}))
  return {each, mean: each.reduce((sum, {mean}) => sum + mean, 0) / each.length, worst: each.reduce((most, here) => (here.high > most.high ? here : most))}
}
