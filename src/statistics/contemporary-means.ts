import {meanAndDeviation, type MeanAndDeviation} from './mean-and-deviation.ts'

/** The mean of one group as it stands among its contemporaries. */
export interface ContemporaryMean extends MeanAndDeviation {
  /** so many birds of one class would tell as much; a fraction, at most `birds` */
  readonly n: number
  /** pooled inside classes; null where every class has a single bird of the group */
  readonly sd: number | null
  /** birds less classes */
  readonly freedom: number
  readonly birds: number
}

/** Groups held against each other in the classes that hold all of them. */
export interface ContemporaryMeans {
  /** in the order of the groups */
  readonly groups: readonly ContemporaryMean[]
  /** that hold every group */
  readonly classes: number
}

/**
 * How heavy are these lines, when each is weighed only beside the others?
 *
 *     M_g = Σ w_c·m_gc / Σ w_c        w_c = 1/Σ_g (1/n_gc)        s_g² = Σ (n_gc − 1)·s_gc² / Σ (n_gc − 1)        n* = 1/Σ_c (W_c²/n_gc), W = w/Σ w
 *
 * over the classes c that hold every group: birds of one sex that were reared alike. Each class weighs alike in every group, so that a good hatch or a sex falls out
 * of every difference of the means; s²/n* is the variance of M.
 *
 * @param classes for each class the values of each group, all finite, the groups in one order
 * @returns the means; null where no class holds every group
 * @throws RangeError when classes name different numbers of groups, or a value is not finite
 * @see Snedecor & Cochran, Statistical Methods: unequal numbers in two-way tables, weighted means (from memory, no page)
 * @example contemporaryMeans([[[10, 12], [14, 16]], [[20], [23, 25]], [[9], []]])  // means 14.6 and 18.6: the first class counts 1, the second 2/3
 */
export function contemporaryMeans(classes: readonly (readonly (readonly number[])[])[]): ContemporaryMeans | null {
  const count = classes[0]?.length ?? 0
  if (classes.some(groups => groups.length !== count)) throw new RangeError(`every class names ${count} groups`)
  const whole = classes.filter(groups => groups.every(values => values.length > 0)).map(groups => groups.map(values => meanAndDeviation(values)))
  if (whole.length === 0 || count === 0) return null
  const raw = whole.map(groups => 1 / groups.reduce((sum, {n}) => sum + 1 / n, 0)), all = raw.reduce((sum, weight) => sum + weight, 0)
  const weights = raw.map(weight => weight / all)
  const groups = Array.from({length: count}, (_, place): ContemporaryMean => {
    let mean = 0, spent = 0, birds = 0, squares = 0, freedom = 0
    whole.forEach((each, index) => {
      const own = each[place], weight = weights[index] ?? 0
      if (!own) return
      mean += weight * own.mean
      spent += weight ** 2 / own.n
      birds += own.n
      squares += (own.n - 1) * (own.sd ?? 0) ** 2
      freedom += own.n - 1
    })
    return {n: 1 / spent, mean, sd: freedom > 0 ? Math.sqrt(squares / freedom) : null, freedom, birds}
  })
  return {groups, classes: whole.length}
}
