import betainc from '@stdlib/math-base-special-betainc'
import {chiSquareTail} from './chi-square-tail.ts'
import {normalQuantile} from './normal-quantile.ts'

/** Where the curve is below 10⁻¹⁷ and the integral may end, in standard deviations. */
const FAR = 8.6
/** What was worked once: the same k and n come again for class after class. */
const known = new Map<string, number>()

/**
 * By how many standard deviations do the best few of a hatch stand above its mean, when nothing but the trait decides?
 *
 *     i = 1/k · Σ of the expected values of the k largest of n = n/k · ∫ x·φ(x)·P(X ≤ k − 1) dx        X binomial of n − 1 and 1 − Φ(x)
 *
 * @param kept birds kept, k; whole, 1 to n
 * @param of birds to choose from, n; whole, 1 or more
 * @returns i in standard deviations, 0 or more; 0 when all are kept
 * @throws RangeError when k and n cannot be counts
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, appendix table B; Becker 1984, Manual of Quantitative Genetics (both from memory)
 * @example selectionIntensity(2, 10)  // 1.2701
 */
export function selectionIntensity(kept: number, of: number): number {
  if (!Number.isInteger(of) || of < 1) throw new RangeError(`n is a count of 1 or more, not ${of}`)
  if (!Number.isInteger(kept) || kept < 1 || kept > of) throw new RangeError(`k is a count from 1 to ${of}, not ${kept}`)
  if (kept === of) return 0
  const key = `${kept}/${of}`, before = known.get(key)
  if (before !== undefined) return before
  // a sum over even steps is as good as exact for so smooth a curve, as long as the steps are small beside its steepest part
  const step = Math.min(0.1, 0.6 / Math.sqrt(of))
  let sum = 0
  for (let x = -FAR; x <= FAR; x += step) {
    const tail = chiSquareTail(x ** 2, 1) / 2
    sum += x * density(x) * (1 - betainc(x > 0 ? tail : 1 - tail, kept, of - kept, true, false))
  }
  const intensity = Math.max(0, (of / kept) * sum * step)
  known.set(key, intensity)
  return intensity
}

/**
 * The same out of so many birds that their number no longer matters.
 *
 *     i = φ(x)/share        x the value that so large a share lies above
 *
 * @param share part kept, above 0 and at most 1
 * @returns i in standard deviations, 0 or more; 0 when all are kept
 * @throws RangeError when the share is out of its range
 * @see Falconer & Mackay 1996, appendix table A (from memory)
 * @example selectionIntensityOfShare(0.2)  // 1.3998
 */
export function selectionIntensityOfShare(share: number): number {
  if (!(share > 0 && share <= 1)) throw new RangeError(`a share kept is above 0 and at most 1, not ${share}`)
  if (share === 1) return 0
  const x = share === 0.5 ? 0 : normalQuantile(Math.abs(1 - 2 * share))
  return density(x) / share
}

const density = (x: number): number => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI)
