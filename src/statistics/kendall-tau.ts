import {dealtScores} from './kendall-deals.ts'
import type {Ordered} from './kendall-orders.ts'

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
  /** the least that p could have been with these shared marks, had both agreed as far as they can: where it is large nothing could be told; null where tau is */
  readonly leastP: number | null
  /** `exact`: of all ways to deal the second’s marks out · `drawn`: of so many seeded draws, where there are too many ways */
  readonly how: 'exact' | 'drawn'
  /** null where exact */
  readonly draws: number | null
}

/** Seed of the draws, named where the method is told; any other gives other draws of the same worth. */
export const KENDALL_SEED = 1938

/**
 * Do the judge and the keeper put the birds in the same order, class by class?
 *
 *     τ_b = (C − D) / √( (N − N₁)(N − N₂) )        N pairs of birds of one class, N₁ and N₂ those put level by the one and by the other, both over all classes
 *     exact: share of all ways to deal the second's marks out among the birds, each keeping what it is dealt through all its classes, with |C − D| as large or larger
 *     drawn: (r + 1)/(m + 1), r of m draws with as large a one
 *
 * Birds of two classes are never a pair: no judge held them against each other. With one class it is Kendall's own coefficient. A bird of two classes is named by the third of its `Ordered`, one and the same
 * in both; it is then dealt one mark for both, since a bird that is liked once will be liked again, by chance or not.
 *
 * @param classes one entry a class: what either gave each bird, all finite
 * @param seed of the draws
 * @throws RangeError when a mark is not finite
 * @see Kendall 1945, Biometrika 33:239–251 (ties). Good 2005, Permutation, Parametric and Bootstrap Tests of Hypotheses (exchangeable units; from memory). Davison & Hinkley 1997, 4.2 ((r + 1)/(m + 1); from memory)
 * @example kendallTau([[[1, 1], [2, 3], [3, 2]]])  // tau 0.3333, p 1
 */
export function kendallTau(classes: readonly (readonly Ordered[])[], seed = KENDALL_SEED): KendallTau {
  for (const mark of classes.flatMap(birds => birds.flatMap(([one, other]) => [one, other]))) if (!Number.isFinite(mark)) throw new RangeError(`a mark is a finite number, not ${mark}`)
  const held = classes.filter(birds => birds.length > 1), count = {concordant: 0, discordant: 0, tiedOne: 0, tiedOther: 0, tiedBoth: 0}
  for (const birds of held) birds.forEach(([one, other], place) => {
    for (const [nextOne, nextOther] of birds.slice(place + 1)) count[pairOf(Math.sign(one - nextOne), Math.sign(other - nextOther))] += 1
  })
  const score = count.concordant - count.discordant, untied = count.concordant + count.discordant
  const across = Math.sqrt((untied + count.tiedOther) * (untied + count.tiedOne)), tau = across === 0 ? null : score / across
  const shape = {...count, pairs: held.reduce((sum, {length}) => sum + (length * (length - 1)) / 2, 0), classes: held.length, birds: held.reduce((sum, {length}) => sum + length, 0), tau}
  if (tau === null) return {...shape, how: 'exact', draws: null, p: null, leastP: null}
  const dealt = dealtScores(held, seed), most = Math.max(Math.abs(score), ...[...dealt.scores.keys()].map(Math.abs))
  const asFar = (far: number): number => [...dealt.scores].reduce((sum, [at, often]) => sum + (Math.abs(at) >= far ? often : 0), 0)
  if (dealt.how === 'exact') return {...shape, how: 'exact', draws: null, p: Math.min(1, asFar(Math.abs(score))), leastP: Math.min(1, asFar(most))}
  return {...shape, how: 'drawn', draws: dealt.draws, p: (asFar(Math.abs(score)) + 1) / (dealt.draws + 1), leastP: (asFar(most) + 1) / (dealt.draws + 1)}
}

function pairOf(one: number, other: number): 'concordant' | 'discordant' | 'tiedOne' | 'tiedOther' | 'tiedBoth' {
  if (one === 0) return other === 0 ? 'tiedBoth' : 'tiedOne'
  return other === 0 ? 'tiedOther' : one === other ? 'concordant' : 'discordant'
}
