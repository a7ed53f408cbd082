import {meanAndDeviation} from './mean-and-deviation.ts'

/** Spread of birds reared in several classes, taken inside the classes only. */
export interface PooledVariation {
  /** birds in all classes together */
  readonly n: number
  readonly classes: number
  /** of all birds together, in the unit of the values */
  readonly mean: number
  /** in the unit of the values */
  readonly sd: number
  /** a share: 0.1 is 10 % */
  readonly cv: number
  /** degrees of freedom, n less the number of classes */
  readonly freedom: number
  /** the classes' own figures, in the order given */
  readonly own: readonly {readonly n: number; readonly mean: number; readonly sd: number; readonly cv: number; readonly freedom: number}[]
}

/**
 * How even are birds that were not all reared together? Differences between hatches are left aside: each bird is compared
 * with its own class, and the classes are put together by their degrees of freedom.
 *
 *     SD = √( Σ ν_c·s_c² / Σ ν_c )        CV = √( Σ ν_c·(s_c / m_c)² / Σ ν_c )        ν_c = n_c − 1
 *
 * @param classes the values of each class, one unit throughout; one class or more, each of 2 values or more with a mean above 0
 * @returns SD and mean in the unit of the values, CV as a share
 * @throws RangeError when there is no class, a class of fewer than 2, or a mean that is not above 0
 * @see Snedecor & Cochran, Statistical Methods, pooled variance (from memory, no page); the pooled CV² is its counterpart on relative deviations.
 * @example pooledVariation([[9, 10, 11], [18, 20, 22]])  // n 6, mean 15, sd 1.5811, cv 0.1
 */
export function pooledVariation(classes: readonly (readonly number[])[]): PooledVariation {
  if (classes.length === 0) throw new RangeError('a pooled spread needs 1 class or more, not 0')
  const own = classes.map(values => {
    if (values.length < 2) throw new RangeError(`a class has 2 values or more, not ${values.length}`)
    const {n, mean, sd} = meanAndDeviation(values)
    if (!(mean > 0)) throw new RangeError(`a class has a mean above 0, not ${mean}`)
    return {n, mean, sd: sd ?? 0, cv: (sd ?? 0) / mean, freedom: n - 1}
  })
  let n = 0, freedom = 0, squares = 0, relative = 0
  for (const each of own) {
    n += each.n
    freedom += each.freedom
    squares += each.freedom * each.sd ** 2
    relative += each.freedom * each.cv ** 2
  }
  const {mean} = meanAndDeviation(classes.flat())
  return {n, classes: classes.length, mean, sd: Math.sqrt(squares / freedom), cv: Math.sqrt(relative / freedom), freedom, own}
}
