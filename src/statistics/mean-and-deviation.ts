/** Mean and standard deviation of a sample, in the sample's unit. */
export interface MeanAndDeviation {
  readonly n: number
  readonly mean: number
  /** divides by n − 1; null for a single value, which has no spread */
  readonly sd: number | null
  /** degrees of freedom that sd rests on, where they are not n − 1: a spread put together of several classes */
  readonly freedom?: number
}

/** What the spread of a mean rests on. */
export const freedomOf = ({n, freedom = n - 1}: MeanAndDeviation): number => freedom

/**
 * How heavy are they on average, and how far do they stray?
 *
 *     mean = Σx / n        sd = √( Σ(x − mean)² / (n − 1) )
 *
 * Two passes, the second mending the mean by what rounding left over: the shortcut Σx² − (Σx)²/n loses every digit
 * when the spread is small beside the mean.
 *
 * @param values measurements of one unit; 1 or more, all finite
 * @returns n, mean and sd in the unit of the values; sd is null when n = 1
 * @throws RangeError when there is no value, or one that is not a finite number
 * @see Chan, Golub & LeVeque 1983, Am. Stat. 37:242–247 (the corrected two-pass algorithm). Held against NIST StRD.
 * @example meanAndDeviation([205, 215, 202])  // n 3, mean 207.33, sd 6.81
 */
export function meanAndDeviation(values: readonly number[]): MeanAndDeviation {
  const n = values.length
  if (n === 0) throw new RangeError('a mean needs 1 value or more, not 0')
  let sum = 0
  for (const value of values) {
    if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
    sum += value
  }
  const first = sum / n
  let left = 0
  for (const value of values) left += value - first
  const mean = first + left / n
  if (n === 1) return {n, mean, sd: null}
  let squares = 0, rest = 0
  for (const value of values) {
    squares += (value - mean) ** 2
    rest += value - mean
  }
  return {n, mean, sd: Math.sqrt(Math.max(0, squares - rest ** 2 / n) / (n - 1))}
}
