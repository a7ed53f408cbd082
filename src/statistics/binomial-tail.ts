import betainc from '@stdlib/math-base-special-betainc'

/**
 * How likely are at least k of n chicks to be of the wanted kind?
 *
 *     P(X ≥ k) = Σ_{x=k}^{n} C(n, x) · p^x · (1 − p)^(n − x) = I_p(k, n − k + 1)        I the regularised incomplete beta function
 *
 * @param k chicks wanted; whole, 0 or more
 * @param n chicks hatched; whole, 0 or more
 * @param chance p of each chick, 0 to 1
 * @returns P, 0 to 1; 1 when none is wanted, 0 when more are wanted than hatched
 * @throws RangeError when k or n is no count or the chance lies outside 0 to 1
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.18; Abramowitz & Stegun 1964, 26.5.24
 * @example binomialTail(3, 23, 1 / 4)  // 0.9508
 */
export function binomialTail(k: number, n: number, chance: number): number {
  if (!Number.isInteger(k) || k < 0) throw new RangeError(`k is a count of 0 or more, not ${k}`)
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`n is a count of 0 or more, not ${n}`)
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance lies between 0 and 1, not at ${chance}`)
  if (k === 0) return 1
  return k > n ? 0 : betainc(chance, k, n - k + 1, true, false)
}
