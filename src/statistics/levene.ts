import {analysisOfVariance, type AnalysisOfVariance} from './analysis-of-variance.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'
import {median} from './median.ts'

/**
 * Levene's test: is one group more uneven than another, whatever the shape of their spread?
 *
 *     W = F of a one-way analysis of variance on |x − centre of its own group|
 *
 * With medians it is Brown and Forsythe's form, which keeps its error with skewed values; with means Levene's own.
 *
 * @param groups values of each, one unit throughout, all finite; groups without a value are passed over
 * @param centre default `median`
 * @returns as `analysisOfVariance`, of the deviations; `no-spread` also when every bird lies as far from its centre as its mates
 * @throws RangeError when a value is not finite
 * @see Levene 1960, in Contributions to Probability and Statistics, 278–292. Brown & Forsythe 1974, J. Am. Stat. Assoc. 69:364–367. NIST/SEMATECH e-Handbook, 1.3.5.10.
 * @example levene([[1, 2, 3, 4], [1, 5, 9, 13]])  // kind 'compared', f 6.3529, p 0.0453
 */
export function levene(groups: readonly (readonly number[])[], centre: 'median' | 'mean' = 'median'): AnalysisOfVariance {
  return analysisOfVariance(groups.filter(values => values.length > 0).map(values => {
    const middle = centre === 'median' ? median(values) : meanAndDeviation(values).mean
    return values.map(value => Math.abs(value - middle))
  }))
}
