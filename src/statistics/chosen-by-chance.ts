/** Hatch mates of one sex that were looked at, those kept, and those that show something. */
export interface ChosenClass {
  readonly all: number
  readonly kept: number
  readonly showing: number
  readonly keptShowing: number
}

/** How many of those kept show it, beside what a blind choice would have kept. */
export interface ChosenByChance {
  readonly seen: number
  readonly expected: number
  /** two-sided, 0 to 1 */
  readonly p: number
}

/**
 * Were the birds kept chosen blind, as far as this look goes?
 *
 *     P(x of the k kept show it) = C(m, x)·C(n − m, k − x)/C(n, k) in a class        P = Σ of all sums Σx no more likely than the one seen
 *
 * n birds of a class, m showing it, k kept. The exact distribution of the sum over classes, so that good hatches and sexes do not enter; no more likely within a millionth part.
 *
 * @param classes counts, whole, 0 or more; those with none or all kept, or none or all showing it, tell nothing and change nothing
 * @returns seen, expected and P
 * @throws RangeError when the counts of a class contradict each other
 * @see Mantel & Haenszel 1959, J. Natl Cancer Inst. 22:719–748, for tables by class; its exact form: Agresti, Categorical Data Analysis (both from memory)
 * @example chosenByChance([{all: 4, kept: 2, showing: 2, keptShowing: 2}])  // seen 2, expected 1, p 1/3
 */
export function chosenByChance(classes: readonly ChosenClass[]): ChosenByChance {
  let sums: readonly number[] = [1], seen = 0, expected = 0, least = 0
  for (const {all, kept, showing, keptShowing} of classes) {
    const low = Math.max(0, kept + showing - all), high = Math.min(kept, showing)
    if (![all, kept, showing, keptShowing].every(count => Number.isInteger(count) && count >= 0) || kept > all || showing > all || keptShowing < low || keptShowing > high) {
      throw new RangeError(`of ${all} birds ${kept} kept and ${showing} showing it cannot leave ${keptShowing} kept showing it`)
    }
    seen += keptShowing
    least += low
    expected += all > 0 ? (kept * showing) / all : 0
    sums = folded(sums, hypergeometric(all, kept, showing, low, high))
  }
  const own = sums[seen - least] ?? 0
  return {seen, expected, p: Math.min(1, sums.reduce((sum, chance) => (chance <= own * (1 + 1e-6) ? sum + chance : sum), 0))}
}

/** Chances of low to high, from the ratio of each to the one before. */
function hypergeometric(all: number, kept: number, showing: number, low: number, high: number): readonly number[] {
  const logs = [0]
  for (let x = low; x < high; x++) logs.push((logs.at(-1) ?? 0) + Math.log(((showing - x) * (kept - x)) / ((x + 1) * (all - showing - kept + x + 1))))
  const most = Math.max(...logs), parts = logs.map(log => Math.exp(log - most)), whole = parts.reduce((sum, part) => sum + part, 0)
  return parts.map(part => part / whole)
}

function folded(one: readonly number[], other: readonly number[]): readonly number[] {
  const sums = new Array<number>(one.length + other.length - 1).fill(0)
  one.forEach((a, i) => { other.forEach((b, j) => { sums[i + j] = (sums[i + j] ?? 0) + a * b }) })
  return sums
}
