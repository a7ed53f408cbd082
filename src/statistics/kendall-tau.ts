import {chiSquareTail} from './chi-square-tail.ts'
import {permutedScores, scoreVariance, type Ordered} from './kendall-orders.ts'

/** How far two orders of the same birds agree, pair by pair. */
export interface KendallTau {
  /** pairs of birds of one class: put the same way round by both, and the other way round */
  readonly concordant: number
  readonly discordant: number
  /** put level by the first alone, by the second alone, by both */
  readonly tiedOne: number
  readonly tiedOther: number
  readonly tiedBoth: number
  readonly pairs: number
  /** classes of two birds or more */
  readonly classes: number
  readonly birds: number
  /** −1 every pair the other way round, 1 every pair alike; null where there is no pair, or one of the two put all level */
  readonly tau: number | null
  /** two-sided; null where tau is */
  readonly p: number | null
  /** the least that p could have been with these shared marks, had both agreed as far as they can: where it is large nothing could be told; 0 where a class is too large to go through */
  readonly leastP: number | null
  /** `exact`: of all ways to deal the second’s marks within the classes; `asymptotic` where a class is too large for that */
  readonly how: 'exact' | 'asymptotic'
}

/**
 * Do the judge and the keeper put the birds in the same order, class by class?
 *
 *     τ_b = (C − D) / √( (N − N₁)(N − N₂) )        N pairs of birds of one class, N₁ and N₂ those put level by the one and by the other, both over all classes
 *     exact: share of all ways to deal the second's marks out anew within each class with |C − D| as large or larger
 *     else z = max(0, |C − D| − 1)/σ, σ² summed over classes
 *
 * Birds of two classes are never a pair: no judge held them against each other. With one class it is Kendall's own coefficient.
 *
 * @param classes one entry a class: what either gave each bird, all finite
 * @throws RangeError when a mark is not finite
 * @see Kendall 1945, Biometrika 33:239–251 (ties). Kendall 1970, Rank Correlation Methods (variance; from memory). Dealing within classes: own, of the usual permutation test.
 * @example kendallTau([[[1, 1], [2, 3], [3, 2]]])  // tau 0.3333, p 1
 */
export function kendallTau(classes: readonly (readonly Ordered[])[]): KendallTau {
  for (const mark of classes.flat(2)) if (!Number.isFinite(mark)) throw new RangeError(`a mark is a finite number, not ${mark}`)
  const held = classes.filter(birds => birds.length > 1), count = {concordant: 0, discordant: 0, tiedOne: 0, tiedOther: 0, tiedBoth: 0}
  for (const birds of held) birds.forEach(([one, other], place) => {
    for (const [nextOne, nextOther] of birds.slice(place + 1)) count[pairOf(Math.sign(one - nextOne), Math.sign(other - nextOther))] += 1
  })
  const score = count.concordant - count.discordant, untied = count.concordant + count.discordant
  const across = Math.sqrt((untied + count.tiedOther) * (untied + count.tiedOne)), tau = across === 0 ? null : score / across
  const shape = {...count, pairs: held.reduce((sum, {length}) => sum + (length * (length - 1)) / 2, 0), classes: held.length, birds: held.reduce((sum, {length}) => sum + length, 0), tau}
  const chances = held.map(permutedScores).reduce<ReadonlyMap<number, number> | null>((all, own) => (all && own ? added(all, own) : null), new Map([[0, 1]]))
  if (chances) {
    const asFar = (far: number): number | null => (tau === null ? null : Math.min(1, [...chances].reduce((sum, [at, chance]) => sum + (Math.abs(at) >= far ? chance : 0), 0)))
    return {...shape, how: 'exact', p: asFar(Math.abs(score)), leastP: asFar(Math.max(...[...chances.keys()].map(Math.abs)))}
  }
  const variance = held.reduce((sum, birds) => sum + scoreVariance(birds), 0)
  return {...shape, how: 'asymptotic', leastP: tau === null ? null : 0, p: tau === null ? null : chiSquareTail(Math.max(0, Math.abs(score) - 1) ** 2 / variance, 1)}
}

function pairOf(one: number, other: number): 'concordant' | 'discordant' | 'tiedOne' | 'tiedOther' | 'tiedBoth' {
  if (one === 0) return other === 0 ? 'tiedBoth' : 'tiedOne'
  return other === 0 ? 'tiedOther' : one === other ? 'concordant' : 'discordant'
}

/** Chances of a sum of two scores that do not hang together. */
function added(one: ReadonlyMap<number, number>, other: ReadonlyMap<number, number>): ReadonlyMap<number, number> {
  const sums = new Map<number, number>()
  for (const [at, chance] of one) for (const [more, also] of other) sums.set(at + more, (sums.get(at + more) ?? 0) + chance * also)
  return sums
}
