import gammainc from '@stdlib/math-base-special-gammainc'

/**
 * How often does chance alone give a χ² this great or greater?
 *
 *     P(X ≥ x) = Q(ν/2, x/2)        Q the regularised upper incomplete gamma function
 *
 * Worked as the upper tail itself, not as one less the lower: a P of 10⁻²⁶ keeps its digits.
 *
 * @param chiSquare x, 0 or more
 * @param freedom ν, degrees of freedom; whole, 0 or more. With 0 nothing was free to stray, and P is 1
 * @returns P, 0 to 1
 * @throws RangeError when x is below 0 or not finite, ν no count, or x above 0 with ν = 0
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.6 and the table 1.3.6.7.4 the tests hold it against
 * @example chiSquareTail(3.8415, 1)  // 0.0500
 */
export function chiSquareTail(chiSquare: number, freedom: number): number {
  if (!(chiSquare >= 0 && Number.isFinite(chiSquare))) throw new RangeError(`a chi-square is 0 or more, not ${chiSquare}`)
  if (!Number.isInteger(freedom) || freedom < 0) throw new RangeError(`degrees of freedom are a count, not ${freedom}`)
  if (freedom > 0) return gammainc(chiSquare / 2, freedom / 2, true, true)
  if (chiSquare > 0) throw new RangeError(`a chi-square of ${chiSquare} needs a degree of freedom`)
  return 1
}
