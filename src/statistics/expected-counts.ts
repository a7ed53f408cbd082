/** What a ratio lets one expect of so many chicks. */
export interface ExpectedCounts {
  /** chicks in all classes together, 1 or more */
  readonly n: number
  /** the ratio as shares that sum to 1 */
  readonly shares: readonly number[]
  /** n · share, class by class */
  readonly expected: readonly number[]
  /** classes the ratio allows, less one */
  readonly freedom: number
  /** places of the classes that hold chicks and yet should hold none whatever: not a poor fit, but an impossible one */
  readonly impossible: readonly number[]
}

/**
 * How many chicks of each class should there be?
 *
 *     expected_i = n · part_i / Σ part        n = Σ count
 *
 * @param counts chicks seen in each class; whole, 0 or more, at least one chick in all
 * @param ratio parts of each class, 0 or more and not all 0: 9, 3, 3, 1 or the same as shares
 * @returns shares, expected counts, degrees of freedom, and the classes in which chicks stand that cannot be
 * @throws RangeError when the lists differ in length, a count is none, a part is below 0, or there is nothing to share out
 * @see Pearson 1900, Phil. Mag. 50:157–175
 * @example expectedCounts([315, 108, 101, 32], [9, 3, 3, 1]).expected  // 312.75, 104.25, 104.25, 34.75
 */
export function expectedCounts(counts: readonly number[], ratio: readonly number[]): ExpectedCounts {
  if (counts.length !== ratio.length) throw new RangeError(`${counts.length} counts do not go with a ratio of ${ratio.length} parts`)
  let n = 0, whole = 0
  for (const count of counts) {
    if (!Number.isInteger(count) || count < 0) throw new RangeError(`a count is a whole number, 0 or more, not ${count}`)
    n += count
  }
  for (const part of ratio) {
    if (!(part >= 0 && Number.isFinite(part))) throw new RangeError(`a part of a ratio is 0 or more, not ${part}`)
    whole += part
  }
  if (n === 0) throw new RangeError('a ratio is held against 1 chick or more, not 0')
  if (whole === 0) throw new RangeError('a ratio has a part above 0')
  const shares = ratio.map(part => part / whole)
  return {
    n,
    shares,
    expected: shares.map(share => n * share),
    freedom: shares.filter(share => share > 0).length - 1,
    impossible: counts.flatMap((count, place) => (count > 0 && shares[place] === 0 ? [place] : [])),
  }
}
