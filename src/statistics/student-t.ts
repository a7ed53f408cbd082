import {fisherQuantile, fisherTail} from './fisher-f.ts'

/**
 * How often does chance alone carry a mean this many standard errors away, to either side?
 *
 *     P(|T| ≥ |t|) = P(F ≥ t²)        F with 1 and ν degrees of freedom
 *
 * @param t difference in standard errors; either sign
 * @param freedom ν, degrees of freedom; above 0, fractions allowed (Welch)
 * @returns two-sided P, 0 to 1
 * @throws RangeError when t is not finite or ν is not above 0
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.4 and the table 1.3.6.7.2 the tests hold it against
 * @example studentTail(2.2281, 10)  // 0.0500
 */
export function studentTail(t: number, freedom: number): number {
  return fisherTail(t ** 2, 1, freedom)
}

/**
 * How many standard errors either side of an estimate hold a stated share, when the error was itself estimated?
 *
 * @param level share held, above 0 and below 1; 0.95 for a 95 % interval
 * @param freedom ν as above
 * @returns t, above 0
 * @throws RangeError when an argument is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2
 * @example studentQuantile(0.95, 10)  // 2.2281
 */
export function studentQuantile(level: number, freedom: number): number {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  return Math.sqrt(fisherQuantile(1 - level, 1, freedom))
}
