import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile'
import {fisherQuantile} from './fisher-f.ts'
import type {Interval} from './interval.ts'

/** A mean square of an analysis of variance, with its degrees of freedom. */
export interface MeanSquare {
  /** 0 or more */
  readonly square: number
  /** whole, 1 or more */
  readonly freedom: number
}

/**
 * What does a mixture of independent mean squares leave open, some taken off from others?
 *
 *     γ = Σ a_i θ_i        low = γ̂ − √V_L        high = γ̂ + √V_U
 *     V_L = Σ₊ G_i²a_i²S_i² + Σ₋ H_j²a_j²S_j² + Σ₊Σ₋ G_ij |a_i a_j| S_i S_j        G_i = 1 − ν_i/χ²        H_j = ν_j/χ² − 1        G_ij = ((F − 1)² − G_i²F² − H_j²)/F
 *
 * the modified large-sample limits: exact when one mean square stands alone or two of opposite sign sum to 0, close in between. V_U changes upper and lower quantiles.
 *
 * @param squares the mean squares S_i
 * @param mixture a_i, one for each; any sign
 * @param level above 0 and below 1; default 0.95
 * @returns limits of γ, in the unit of the squares; low at most γ̂, high at least
 * @throws RangeError when an argument is out of its range
 * @see Graybill & Wang 1980, J. Am. Stat. Assoc. 75:869–873. Ting, Burdick, Graybill, Jeyaratnam & Lu 1990, J. Stat. Comput. Simul. 35:135–143. Both from memory.
 * @example mixtureLimits([{square: 10, freedom: 9}], [1])  // 4.7312 to 33.3285
 */
export function mixtureLimits(squares: readonly MeanSquare[], mixture: readonly number[], level = 0.95): Interval {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  if (mixture.length !== squares.length || !mixture.every(Number.isFinite)) throw new RangeError('a mixture has a finite part of every mean square')
  for (const {square, freedom} of squares) {
    if (!(square >= 0 && Number.isFinite(square))) throw new RangeError(`a mean square is 0 or more, not ${square}`)
    if (!Number.isInteger(freedom) || freedom < 1) throw new RangeError(`degrees of freedom are a count of 1 or more, not ${freedom}`)
  }
  const outside = (1 - level) / 2
  const value = squares.reduce((sum, {square}, place) => sum + square * (mixture[place] ?? 0), 0)
  // the upper limit is the lower one of the mixture with every sign turned
  return {low: value - Math.sqrt(fall(squares, mixture, outside)), high: value + Math.sqrt(fall(squares, mixture.map(part => -part), outside))}
}

/** Quantiles that were worked once: a search asks for the same ones at every step. */
const known = new Map<string, number>()

function once(key: string, quantile: () => number): number {
  const before = known.get(key)
  if (before !== undefined) return before
  const value = quantile()
  known.set(key, value)
  return value
}

const chiSquare = (probability: number, freedom: number) => once(`${probability} ${freedom}`, () => chiSquareQuantile(probability, freedom))
const fisher = (probability: number, above: number, below: number) => once(`${probability} ${above} ${below}`, () => fisherQuantile(probability, above, below))

/** V_L, 0 or more. */
function fall(squares: readonly MeanSquare[], mixture: readonly number[], outside: number): number {
  const terms = squares.map(({square, freedom}, place) => {
    const part = mixture[place] ?? 0
    const bend = part > 0 ? 1 - freedom / chiSquare(1 - outside, freedom) : freedom / chiSquare(outside, freedom) - 1
    return {size: Math.abs(part) * square, plus: part > 0, bend, freedom}
  }).filter(({size}) => size > 0)
  let sum = terms.reduce((all, {size, bend}) => all + (bend * size) ** 2, 0)
  for (const plus of terms.filter(term => term.plus)) {
    for (const minus of terms.filter(term => !term.plus)) {
      const f = fisher(outside, plus.freedom, minus.freedom)
      sum += (((f - 1) ** 2 - (plus.bend * f) ** 2 - minus.bend ** 2) / f) * plus.size * minus.size
    }
  }
  return Math.max(0, sum)
}
