import {chiSquareFit} from './chi-square-fit.ts'
import {chiSquareTail} from './chi-square-tail.ts'
import {expectedCounts} from './expected-counts.ts'
import {fitOfCounts, type FitOfCounts} from './fit-of-counts.ts'

/** A chi-square with its degrees of freedom and the chance of one as great or greater. */
export interface ChiSquare {
  readonly chiSquare: number
  readonly freedom: number
  readonly p: number
}

/** Several matings of one ratio: whether together they agree with it, and whether they agree with each other. */
export interface Heterogeneity {
  readonly matings: number
  /** all chicks put together, held against the ratio */
  readonly pooled: FitOfCounts
  /** the matings' own chi-squares added up; null when one of them is impossible */
  readonly total: ChiSquare | null
  /** what is left of the total without the pooled one: how the matings differ; null as `total` */
  readonly heterogeneity: ChiSquare | null
  /** the smallest expectation above 0 of any mating; below 5 the two chi-squares are rough */
  readonly smallestExpectation: number
}

/**
 * Do matings that should all give one ratio agree with each other? A sum that fits may hide two that stray to either side.
 *
 *     χ²_heterogeneity = Σ χ²_mating − χ²_pooled        ν = (matings − 1) · (classes − 1)
 *
 * @param matings counts of each mating, class by class, 1 mating or more and at least one chick in each
 * @param ratio parts of each class, one ratio for all
 * @returns pooled fit, total and heterogeneity
 * @throws RangeError when there is no mating, or as `expectedCounts`
 * @see Mather 1938, The Measurement of Linkage in Heredity, ch. 2; Snedecor & Cochran, Statistical Methods (both from memory, no page)
 * @example heterogeneityOf([[5474, 1850], [6022, 2001]], [3, 1]).heterogeneity  // chiSquare 0.2073, freedom 1, p 0.6489
 */
export function heterogeneityOf(matings: readonly (readonly number[])[], ratio: readonly number[]): Heterogeneity {
  if (matings.length === 0) throw new RangeError('heterogeneity is of 1 mating or more, not 0')
  const fits = matings.map(counts => chiSquareFit(counts, ratio))
  const sums = ratio.map((_, place) => matings.reduce((sum, counts) => sum + (counts[place] ?? 0), 0))
  const expectations = matings.flatMap(counts => expectedCounts(counts, ratio).expected.filter(mean => mean > 0))
  const total = totalOf(fits), pooled = fitOfCounts(sums, ratio)
  return {
    matings: matings.length,
    pooled,
    total,
    heterogeneity: total && pooled.chiSquare !== null ? chanceOf(Math.max(0, total.chiSquare - pooled.chiSquare), total.freedom - pooled.freedom) : null,
    smallestExpectation: Math.min(...expectations),
  }
}

function totalOf(fits: readonly {readonly chiSquare: number | null; readonly freedom: number}[]): ChiSquare | null {
  let sum = 0, freedom = 0
  for (const fit of fits) {
    if (fit.chiSquare === null) return null
    sum += fit.chiSquare
    freedom += fit.freedom
  }
  return chanceOf(sum, freedom)
}

/** Without a degree of freedom there is nothing to differ in, and what rounding left is no chi-square. */
function chanceOf(chiSquare: number, freedom: number): ChiSquare {
  return freedom === 0 ? {chiSquare: 0, freedom, p: 1} : {chiSquare, freedom, p: chiSquareTail(chiSquare, freedom)}
}
