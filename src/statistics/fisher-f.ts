import betainc from '@stdlib/math-base-special-betainc'
import {betaQuantile} from './beta-quantile.ts'

/**
 * How often does chance alone give a ratio of two variances this great or greater?
 *
 *     P(F ≥ f) = I_y(ν₂/2, ν₁/2)        y = ν₂ / (ν₂ + ν₁·f)        I the regularised incomplete beta function
 *
 * The lower tail is worked first and P from it where it is the smaller, so that neither a small P nor one close to 1 loses its digits.
 *
 * @param f 0 or more
 * @param above ν₁, degrees of freedom of the upper variance; above 0
 * @param below ν₂, of the lower one; above 0, fractions allowed
 * @returns P, 0 to 1
 * @throws RangeError when an argument is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.5 and the table 1.3.6.7.3 the tests hold it against
 * @example fisherTail(3.8853, 2, 12)  // 0.0500
 */
export function fisherTail(f: number, above: number, below: number): number {
  if (!(f >= 0 && Number.isFinite(f))) throw new RangeError(`a ratio of variances is 0 or more, not ${f}`)
  checkFreedom(above)
  checkFreedom(below)
  const whole = below + above * f
  const under = betainc((above * f) / whole, above / 2, below / 2, true, false)
  return under < 0.5 ? 1 - under : betainc(below / whole, below / 2, above / 2, true, false)
}

/**
 * Which ratio of variances is exceeded with a stated probability?
 *
 *     f with P(F ≥ f) = probability
 *
 * @param probability above 0 and below 1, of the upper tail: 0.025 for the upper limit of a 95 % interval
 * @param above as above
 * @param below as above
 * @returns f, above 0
 * @throws RangeError when an argument is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3
 * @example fisherQuantile(0.05, 2, 12)  // 3.8853
 */
export function fisherQuantile(probability: number, above: number, below: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError(`a probability lies between 0 and 1, not at ${probability}`)
  checkFreedom(above)
  checkFreedom(below)
  const upper = betaQuantile(probability, below / 2, above / 2)
  if (upper <= 0.5) return (below / above) * ((1 - upper) / upper)
  const lower = betaQuantile(1 - probability, above / 2, below / 2)
  return (below / above) * (lower / (1 - lower))
}

function checkFreedom(freedom: number): void {
  if (!(freedom > 0 && Number.isFinite(freedom))) throw new RangeError(`degrees of freedom are above 0, not ${freedom}`)
}
