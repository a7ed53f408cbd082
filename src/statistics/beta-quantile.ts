import betainc from '@stdlib/math-base-special-betainc'

/**
 * Below which share does a beta curve hold a stated part of itself? The limits of exact intervals, of t and of F are such shares.
 *
 *     I_x(a, b) = probability        I the regularised incomplete beta function, which only rises with x
 *
 * Found by halving until two neighbouring numbers are left: slow beside a series, and as exact as the incomplete beta function itself.
 * A limit near 1 keeps its digits when asked for from the other end: 1 − x is the quantile of 1 − probability with a and b exchanged.
 *
 * @param probability 0 to 1
 * @param a above 0
 * @param b above 0
 * @returns x, 0 to 1; 0 for a probability of 0, 1 for 1
 * @throws RangeError when an argument is out of its range
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.17; Abramowitz & Stegun 1964, 26.5
 * @example betaQuantile(0.025, 3, 48)  // 0.0125
 */
export function betaQuantile(probability: number, a: number, b: number): number {
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`a probability lies between 0 and 1, not at ${probability}`)
  for (const shape of [a, b]) if (!(shape > 0 && Number.isFinite(shape))) throw new RangeError(`a shape is above 0, not ${shape}`)
  if (probability === 0 || probability === 1) return probability
  let low = 0, high = 1
  for (;;) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return middle
    if (betainc(middle, a, b, true, false) < probability) low = middle
    else high = middle
  }
}
