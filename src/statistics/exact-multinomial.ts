import {expectedCounts} from './expected-counts.ts'

/** Two outcomes whose probabilities differ by less than this share are alike: rounding must not break a tie. As in R's `fisher.test`. */
const TIE = 1e-7

/**
 * The exact multinomial test: how often does chance alone give an outcome no more probable than the one seen?
 *
 *     P = Σ Pr(x) over all x with Pr(x) ≤ Pr(seen)        Pr(x) = n! · Π share_i^x_i / x_i!
 *
 * All outcomes are gone through class by class, but whole branches at once: where even the most probable way to share out the
 * rest stays under the limit, the branch is added as one multinomial sum; where even the least probable goes over it, it is left.
 *
 * @param counts chicks seen in each class; whole, 0 or more, at least one chick in all
 * @param ratio parts of each class, 0 or more: 9, 3, 3, 1 or the same as shares. A chick in a class of 0 makes P 0
 * @param most branches to go through before giving up; 60 chicks in 6 classes took 3 million at most when tried
 * @returns P, 0 to 1; null when there are more branches than `most`
 * @throws RangeError as `expectedCounts`
 * @see Radlow & Alf 1975, J. Am. Stat. Assoc. 70:811–813 (the order by probability). Branches in one piece: own.
 * @example exactMultinomial([5, 2, 1], [1, 2, 1])  // 157/2048 = 0.0767
 */
export function exactMultinomial(counts: readonly number[], ratio: readonly number[], most = 5_000_000): number | null {
  const {n, shares, impossible} = expectedCounts(counts, ratio)
  if (impossible.length > 0) return 0
  const seen = counts.filter((_, place) => (shares[place] ?? 0) > 0)
  const rest = restOfClasses(shares.filter(share => share > 0), n)
  const {logShares, logFactorials} = rest
  const logOf = (place: number, chicks: number) => chicks * (logShares[place] ?? 0) - (logFactorials[chicks] ?? 0)
  const whole = logFactorials[n] ?? 0, last = seen.length - 1
  let limit = whole + Math.log1p(TIE)
  seen.forEach((chicks, place) => { limit += logOf(place, chicks) })

  let branches = 0, sum = 0
  const added = (place: number, chicks: number, left: number, before: number): boolean => {
    const log = before + logOf(place, chicks) + logOf(place + 1, left - chicks)
    branches += 1
    if (log <= limit) sum += Math.exp(log)
    return log <= limit
  }
  const goThrough = (place: number, left: number, before: number): void => {
    if (before + (rest.best[place]?.[left] ?? 0) <= limit) sum += Math.exp(before + rest.all(place, left))
    else if (place === last || before + rest.least(place, left) > limit) return
    else if (place === last - 1) {
      // of two classes the middle is over the limit and both ends may be under it
      let low = 0, high = left
      while (low <= high && added(place, low, left, before)) low += 1
      while (high > low && added(place, high, left, before)) high -= 1
    } else {
      for (let chicks = 0; chicks <= left && branches <= most; chicks++) {
        branches += 1
        goThrough(place + 1, left - chicks, before + logOf(place, chicks))
      }
    }
  }
  goThrough(0, n, whole)
  return branches > most ? null : Math.min(1, sum)
}

/** Logarithms of Π share^x/x! over the classes from one place on, when so many chicks are left for them: the greatest, the least, and the sum of all ways. */
function restOfClasses(shares: readonly number[], n: number) {
  const logFactorials = [0]
  for (let count = 1; count <= n; count++) logFactorials.push((logFactorials[count - 1] ?? 0) + Math.log(count))
  const logShares = shares.map(share => Math.log(share))
  const logSums = shares.map((_, place) => Math.log(shares.slice(place).reduce((sum, share) => sum + share, 0)))
  const logLeast = shares.map((_, place) => Math.min(...logShares.slice(place)))
  const factorial = (count: number) => logFactorials[count] ?? 0
  return {
    logFactorials,
    logShares,
    best: shares.map((_, place) => bestFillings(shares.slice(place), n)),
    /** at a corner, since the logarithm is concave: all chicks in the rarest class */
    least: (place: number, left: number) => left * (logLeast[place] ?? 0) - factorial(left),
    /** by the multinomial theorem */
    all: (place: number, left: number) => left * (logSums[place] ?? 0) - factorial(left),
  }
}

/** The greatest log Π share^x/x! for 0 to n chicks: each further chick goes where it multiplies the product most, share/(x + 1). */
function bestFillings(shares: readonly number[], n: number): number[] {
  const filled = shares.map(() => 0), logs = [0]
  for (let chicks = 1; chicks <= n; chicks++) {
    let place = 0, gain = 0
    shares.forEach((share, candidate) => {
      const own = share / ((filled[candidate] ?? 0) + 1)
      if (own > gain) [place, gain] = [candidate, own]
    })
    filled[place] = (filled[place] ?? 0) + 1
    logs.push((logs[chicks - 1] ?? 0) + Math.log(gain))
  }
  return logs
}
