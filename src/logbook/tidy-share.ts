/** As much as a sum of a few chances may be off: four roundings of a number near 1. */
const ROUNDING = 4 * 2 ** -53
const GRID = 1e12

/**
 * A share or chance worked out by sums and divisions, rid of what their rounding left: 0.7000000000000001 is 0.7.
 * Only a number that lies within a few roundings of one with at most 12 decimals becomes that one; every other is a figure of its own.
 *
 * @param share 0 to 1
 * @returns the same, moved by at most 4 × 2^−53
 * @example tidyShare(1 − 0.7) → 0.3 · tidyShare(1 / 3) → 1 / 3
 */
export function tidyShare(share: number): number {
  const short = Math.round(share * GRID) / GRID
  return short > 0 && Math.abs(share - short) <= ROUNDING ? short : share
}

/**
 * The sum of shares or chances, tidied. Each addition's rounding is kept and added back, so that sixty hens' chances come out as even as two's.
 *
 * @see Neumaier 1974, Z. Angew. Math. Mech. 54 (from memory)
 * @example sumOfShares([0.1, 0.2]) → 0.3
 */
export function sumOfShares(shares: readonly number[]): number {
  let sum = 0, lost = 0
  for (const share of shares) {
    const next = sum + share
    lost += Math.abs(sum) >= Math.abs(share) ? sum - next + share : share - next + sum
    sum = next
  }
  return tidyShare(sum + lost)
}
