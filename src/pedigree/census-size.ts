/** The rule-of-thumb forecast from counting breeders: how fast must a flock mated at random lose its variety? */

/**
 * As many birds as which ideal flock, half cocks and half hens, do these breeders count for?
 *
 *     Ne = 4 M N / (M + N)
 *
 * The scarcer sex decides: one cock with any number of hens never counts for 4. With unequal families or parents that are kin, Ne is smaller still.
 *
 * @param males M, breeding cocks, above 0 (a mean over pens need not be whole)
 * @param females N, breeding hens, above 0
 * @throws RangeError when there are none of a sex
 * @see Wright 1931, Genetics 16:97
 * @example effectiveSize(1, 10)  // 3.6364
 */
export function effectiveSize(males: number, females: number): number {
  mustBreed(males, females)
  return 4 * males * females / (males + females)
}

/**
 * How much of the variety that is left goes with each generation, mated at random?
 *
 *     ΔF = 1 / (8 M) + 1 / (8 N)  =  1 / (2 Ne)
 *
 * An approximation, good for more than a handful of birds: one cock with one hen, brother with sister for ever, lose 19.1 %, not 25 %.
 *
 * @returns a share, above 0
 * @throws RangeError as `effectiveSize`
 * @see Wright 1931, Genetics 16:97
 * @example rateAtRandom(4, 16)  // 0.039063
 */
export function rateAtRandom(males: number, females: number): number {
  mustBreed(males, females)
  return 1 / (8 * males) + 1 / (8 * females)
}

/**
 * The same when every cock leaves one son and every hen one daughter to breed from: what evening out the families spares.
 *
 *     ΔF = 3 / (32 M) + 1 / (32 N)      M the scarcer sex
 *
 * @returns a share, above 0 and never above `rateAtRandom`
 * @throws RangeError as `effectiveSize`
 * @see Gowe, Robertson & Latter 1959, Poult. Sci. 38:462 (from memory)
 * @example rateOfEvenFamilies(5, 25)  // 0.02
 */
export function rateOfEvenFamilies(males: number, females: number): number {
  mustBreed(males, females)
  return 3 / (32 * Math.min(males, females)) + 1 / (32 * Math.max(males, females))
}

/**
 * What size do unequal years come to? The poorest year weighs most.
 *
 *     Ne = t / Σ (1 / N(i))        the harmonic mean
 *
 * @param sizes Ne of each year (or generation), above 0, at least one
 * @throws RangeError without a size, or with one not above 0
 * @see Wright 1938, Science 87:430 (from memory); Falconer & Mackay 1996, ch. 4 (from memory)
 * @example effectiveSizeOverYears([10, 100, 50])  // 23.0769
 */
export function effectiveSizeOverYears(sizes: readonly number[]): number {
  if (sizes.length === 0) throw new RangeError('no year to take a mean of')
  for (const size of sizes) if (!(size > 0)) throw new RangeError(`a size is above 0, not ${size}`)
  return sizes.length / sizes.reduce((sum, size) => sum + 1 / size, 0)
}

/**
 * To what has F built up after some generations at a steady rate?
 *
 *     F(t) = 1 − (1 − F(0)) (1 − ΔF)^t
 *
 * @param rate ΔF a generation, 0 to 1
 * @param generations t, 0 or more
 * @param start F(0), 0 to 1; default 0
 * @throws RangeError outside these
 * @see Falconer & Mackay 1996, ch. 4 (from memory)
 * @example builtUp(0.01, 10)  // 0.095618
 */
export function builtUp(rate: number, generations: number, start = 0): number {
  if (!(rate >= 0 && rate <= 1)) throw new RangeError(`a rate is 0 to 1, not ${rate}`)
  if (!(generations >= 0)) throw new RangeError(`generations are 0 or more, not ${generations}`)
  if (!(start >= 0 && start <= 1)) throw new RangeError(`F is 0 to 1, not ${start}`)
  return 1 - (1 - start) * (1 - rate) ** generations
}

function mustBreed(males: number, females: number): void {
  if (!(males > 0)) throw new RangeError(`breeding cocks are more than 0, not ${males}`)
  if (!(females > 0)) throw new RangeError(`breeding hens are more than 0, not ${females}`)
}
