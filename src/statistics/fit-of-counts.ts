import {chiSquareFit} from './chi-square-fit.ts'
import {exactMultinomial} from './exact-multinomial.ts'
import {expectedCounts} from './expected-counts.ts'

/** Expectations below this are too small for Pearson's approximation. */
export const SMALLEST_EXPECTATION = 5
/** Up to so many chicks the exact test is taken whatever the expectations. */
export const EXACT_UP_TO = 60

/** Whether counts agree with a ratio, and how that was worked out. */
export interface FitOfCounts {
  /** `impossible`: chicks stand in a class the ratio forbids · `exact`: multinomial · `pearson`: chi-square */
  readonly how: 'impossible' | 'exact' | 'pearson'
  /** true when the exact test was called for but has too many outcomes, so that Pearson stands in with small expectations */
  readonly rough: boolean
  readonly n: number
  readonly expected: readonly number[]
  readonly p: number
  /** Pearson's, also beside an exact P; null when impossible */
  readonly chiSquare: number | null
  readonly freedom: number
  /** places of the classes that hold chicks the ratio forbids */
  readonly impossible: readonly number[]
}

/**
 * Do the chicks of a mating agree with the ratio their parents should give?
 *
 * The exact multinomial probability when any expectation the ratio allows is below 5 or there are 60 chicks or fewer, else Pearson's
 * chi-square. Which one it was is part of the answer.
 *
 * @param counts chicks seen in each class; whole, 0 or more, at least one chick in all
 * @param ratio parts of each class, 0 or more: 9, 3, 3, 1 or the same as shares
 * @returns P and how it was worked out
 * @throws RangeError as `expectedCounts`
 * @see Cochran 1954, Biometrics 10:417–451 (expectations of 5; from memory). The bound of 60 chicks is our own, for what can be counted out in no time.
 * @example fitOfCounts([5, 2, 1], [1, 2, 1])  // how 'exact', p 0.0767
 */
export function fitOfCounts(counts: readonly number[], ratio: readonly number[]): FitOfCounts {
  const {n, expected} = expectedCounts(counts, ratio)
  const {chiSquare, freedom, p, impossible} = chiSquareFit(counts, ratio)
  const shape = {n, expected, chiSquare, freedom, impossible}
  if (impossible.length > 0) return {...shape, how: 'impossible', rough: false, p: 0}
  const small = n <= EXACT_UP_TO || expected.some(mean => mean > 0 && mean < SMALLEST_EXPECTATION)
  const exact = small ? exactMultinomial(counts, ratio) : null
  return exact === null ? {...shape, how: 'pearson', rough: small, p} : {...shape, how: 'exact', rough: false, p: exact}
}
