import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles} from '../heredity/locus.ts'
import type {Heredity} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'

/** What two birds have between them at the loci of a group. */
export interface ParentsTogether {
  readonly one: readonly Alleles[]
  readonly other: readonly Alleles[]
}

export interface PairsOfGenotypes {
  /** summing to 1 */
  readonly pairs: readonly Probable<ParentsTogether>[]
  readonly exact: boolean
}

/** Below this a genotype is not followed further. */
const NEGLIGIBLE = 1e-9

/**
 * How likely is each pair of genotypes of two birds together? Kin, and parents of common chicks, are not independent of each other:
 *
 *     P(g, h) = P(g) · P(h | g)
 *
 * the group is worked anew for each genotype that the first may have, as if a test had found it.
 *
 * @param one, other numbers of two different animals
 */
export function parentsTogether({workedOtherwise}: Pick<Heredity, 'workedOtherwise'>, group: LocusGroup, one: number, other: number): PairsOfGenotypes {
  const both = new Set([one, other]), {found} = workedOtherwise(group, {}, both)
  const first = found.together(one).filter(({probability}) => probability > NEGLIGIBLE)
  if (first.length === 1) return {exact: found.exact, pairs: found.together(other).map(({is, probability}) => ({is: {one: first[0]?.is ?? [], other: is}, probability}))}
  let exact = found.exact
  const pairs = first.flatMap(({is, probability}) => {
    const {found: given} = workedOtherwise(group, {tested: animal => (animal === one ? is.map(([a, b]) => [a, b ?? 'none'] as const) : null)}, both)
    exact &&= given.exact
    return given.together(other).map(each => ({is: {one: is, other: each.is}, probability: probability * each.probability}))
  })
  const sum = pairs.reduce((total, {probability}) => total + probability, 0)
  return {exact, pairs: pairs.map(({is, probability}) => ({is, probability: probability / sum}))}
}
