/**
 * How much of the variety that was left has gone from one step to the next?
 *
 *     ΔF = (F(t) − F(t−1)) / (1 − F(t−1))      below 0 when the later step is the less inbred
 *
 * @returns null when nothing was left to lose, F(t−1) = 1
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 4 (from memory)
 * @example rateBetween(0.25, 0.375)  // 1/6
 */
export function rateBetween(before: number, after: number): number | null {
  return before < 1 ? (after - before) / (1 - before) : null
}

/**
 * At what rate a generation did one bird's F build up over its known descent?
 *
 *     ΔF(i) = 1 − (1 − F(i))^(1 / (t(i) − 1))      t its equivalent complete generations
 *
 * The exponent leaves out one generation, in which no bird can be inbred: a bird's parents are two.
 *
 * @param founderInbreeding F that its founders bring along; F is then counted from there, (1 − F)/(1 − F founders). Default 0
 * @returns null for t of 1 or less, where F cannot have built up, and for founders wholly inbred
 * @see Gutiérrez, Cervantes & Goyache 2009, J. Anim. Breed. Genet. 126:327 (from memory); the 2008 form, Genet. Sel. Evol. 40:359, has 1/t
 * @example ownRate({inbreeding: 0.125, generations: 3})  // 0.064586
 */
export function ownRate({inbreeding, generations, founderInbreeding = 0}: Bred): number | null {
  if (!(generations > 1) || founderInbreeding >= 1) return null
  return 1 - ((1 - inbreeding) / (1 - founderInbreeding)) ** (1 / (generations - 1))
}

export interface Bred {
  /** F, 0 to 1 */
  readonly inbreeding: number
  /** equivalent complete generations */
  readonly generations: number
  readonly founderInbreeding?: number
}

export interface RealisedSize {
  /** mean ΔF a generation over the birds counted, and their number */
  readonly rate: number
  readonly count: number
  /** birds left out because their known descent is too short */
  readonly tooShort: number
  /** Ne, above 0; or why it cannot be told */
  readonly size: number | 'no descent' | 'no rise'
  /** of the size; null with one bird or where there is no size */
  readonly standardError: number | null
}

/**
 * As if bred by how many birds did F build up?
 *
 *     Ne = 1 / (2 · mean ΔF(i))        SE = 2 · Ne² · s / √n       s the standard deviation of ΔF(i), divisor n − 1
 *
 * The standard error is the spread of ΔF carried over by the slope of 1/(2x). Birds of one family are not independent, so it is the least it can be.
 *
 * @returns size `no descent` when no bird has more than one equivalent generation, `no rise` when the mean rate is not above 0
 * @see Gutiérrez et al. 2008, Genet. Sel. Evol. 40:359 (abstract seen: rates averaged over a reference group, standard error from their standard
 *   deviation; its formula from memory)
 */
export function realisedSize(birds: readonly Bred[]): RealisedSize {
  const rates = birds.map(ownRate).filter(rate => rate !== null)
  const count = rates.length
  const tooShort = birds.length - count
  if (count === 0) return {rate: 0, count, tooShort, size: 'no descent', standardError: null}
  const rate = rates.reduce((sum, each) => sum + each, 0) / count
  if (!(rate > 0)) return {rate, count, tooShort, size: 'no rise', standardError: null}
  const size = 1 / (2 * rate)
  const deviation = Math.sqrt(rates.reduce((sum, each) => sum + (each - rate) ** 2, 0) / (count - 1))
  return {rate, count, tooShort, size, standardError: count < 2 ? null : 2 * size * size * deviation / Math.sqrt(count)}
}
