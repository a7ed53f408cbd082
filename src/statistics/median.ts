/**
 * Which value has as many above as below?
 *
 *     the middle one in order, or the mean of the middle two
 *
 * @param values measurements or grades, 1 or more, all finite; in any order, left as they are
 * @returns the median, in the unit of the values
 * @throws RangeError when there is no value, or one that is not a finite number
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.1
 * @example median([7, 2, 4, 9])  // 5.5
 */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('a median needs 1 value or more, not 0')
  for (const value of values) if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
  const order = [...values].sort((a, b) => a - b), half = order.length >> 1
  const upper = order[half] ?? 0
  return order.length % 2 === 1 ? upper : (order[half - 1] ?? 0) / 2 + upper / 2
}
