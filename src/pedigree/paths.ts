import type {Coancestry} from './coancestry.ts'
import {climb, closedAncestry, type ClosedAncestry} from './closed-ancestry.ts'
import {largestPaths, type Path} from './largest-paths.ts'

export interface SharedAncestor {
  readonly animal: number
  /** part of the kinship that comes from this ancestor, over all paths that meet in it, listed or not */
  readonly kinship: number
  /** the paths that were listed, largest first */
  readonly paths: readonly Path[]
}

export interface Paths {
  /** of the two birds: F of their chicks */
  readonly kinship: number
  /** every ancestor in which paths meet, the largest part first; of equals the one that stands first in the pedigree */
  readonly ancestors: readonly SharedAncestor[]
  /** part of the kinship by paths that are not listed */
  readonly unlisted: number
  /** part of the kinship that comes from founders being kin, by their base or as stated, and not from an ancestor shared */
  readonly fromFounders: number
}

/**
 * Why are these two birds related? Through which ancestors, and by what ways?
 *
 *     K(a, b) = Σ over paths  w(a … A) · w(b … A) · K(A, A)   (+ what founders have in common)
 *             = Σ (½)^(n1 + n2 + 1) · (1 + F(A))              parents certain, n1 and n2 generations up to the common ancestor A
 *
 * w is the product of the weights of the gene flow along the way: ½ a generation, times the chance where a parent is doubtful. The two ways of
 * a path have only A in common.
 *
 * The parts of the ancestors are exact, and need no list of paths. Let T(a, A) be the sum of w over all ways from a to A; two ways drawn apart that
 * both come to A have met there first, or in a descendant B of A and come up from it apart:
 *
 *     m(A) = T(a, A) · T(b, A) − Σ m(B) · T(B, A)²     worked from the youngest up; the part of A is m(A) · K(A, A)
 *
 * Paths are listed the largest first: the unfinished pair of ways that promises most is led on by one step, the younger bird's, until enough have met.
 * A pair promises its product so far, times the best way from each to any ancestor of the other. So pairs that cannot come into the list are never led on.
 *
 * @param limit paths listed at most; default 12
 * @param generations longest way searched, up from each bird; default 16
 * @param steps work spent on the list at most; default 100 000 pairs led on. What was not found is in `unlisted`
 * @see Wright 1922, Am. Nat. 56:330, for the paths; the sums without a list are worked out here
 * @example full sibs: two ancestors of ⅛ each, one path each
 */
export function paths(
  {flow, between, self}: Pick<Coancestry, 'flow' | 'between' | 'self'>, a: number, b: number,
  {limit = 12, generations = 16, steps = 100_000}: {limit?: number; generations?: number; steps?: number} = {},
): Paths {
  const ancestry = closedAncestry(flow, [a, b])
  const pair = [placeOf(ancestry, a), placeOf(ancestry, b)] as const
  const selves = Float64Array.from(ancestry.ancestors, ({animal, unknown}) => (unknown === null ? self(animal) : 0))
  const parts = partsOf(ancestry, pair).map((meeting, place) => meeting * (selves[place] ?? 0))
  const listed = new Map<number, Path[]>()
  let sumListed = 0
  for (const path of largestPaths(ancestry, selves, pair, {limit, generations, steps})) {
    const meeting = path.up[0].at(-1) ?? NaN
    listed.set(meeting, [...listed.get(meeting) ?? [], path])
    sumListed += path.kinship
  }
  const ancestors = [...parts].flatMap((kinship, place): SharedAncestor[] => {
    const animal = ancestry.ancestors[place]?.animal ?? NaN
    return kinship === 0 ? [] : [{animal, kinship, paths: listed.get(animal) ?? []}]
  }).sort((one, other) => rounded(other.kinship) - rounded(one.kinship) || one.animal - other.animal)
  const kinship = a === b ? self(a) : between(a, b)
  const shared = ancestors.reduce((sum, ancestor) => sum + ancestor.kinship, 0)
  return {kinship, ancestors, unlisted: nothingLess(shared - sumListed), fromFounders: nothingLess(kinship - shared)}
}

const rounded = (kinship: number): number => Math.round(kinship * 1e12)
/** Differences of sums that should be equal are a hair beside 0. */
const nothingLess = (rest: number): number => (rest < 1e-12 ? 0 : rest)

const placeOf = ({ancestors}: ClosedAncestry, animal: number): number =>
  ancestors.findIndex(ancestor => ancestor.animal === animal && ancestor.unknown === null)

/** For every place: chance that the ways up from two places, drawn apart, first meet there. */
function partsOf(ancestry: ClosedAncestry, [a, b]: readonly [number, number]): Float64Array {
  const count = ancestry.ancestors.length
  const fromA = wayUp(a), fromB = wayUp(b)
  const met = new Float64Array(count), parts = new Float64Array(count)
  for (let place = count - 1; place >= 0; place--) {
    const both = (fromA[place] ?? 0) * (fromB[place] ?? 0)
    const part = both - (met[place] ?? 0)
    if (both === 0 || part < both * 1e-12) continue
    parts[place] = part
    const further = wayUp(place)
    for (let above = 0; above < place; above++) met[above] = (met[above] ?? 0) + part * (further[above] ?? 0) ** 2
  }
  return parts

  /** T: the sum of w over all ways from one place to each */
  function wayUp(from: number): Float64Array {
    const sum = new Float64Array(count)
    sum[from] = 1
    return climb(ancestry, sum, from)
  }
}
