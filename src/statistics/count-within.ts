/**
 * How many birds lie within a stated part of a middle value, say a tenth either side of the mean?
 *
 *     |x − middle| ≤ part · middle
 *
 * A bird exactly on a limit is inside; so that rounding in the last bit cannot put it out, the limits are widened by 10⁻¹² of the middle.
 *
 * @param values measurements, all finite
 * @param middle the value they are held against, in the same unit; above 0
 * @param part a share of the middle; 0 or more, 0.1 for a tenth
 * @returns how many are inside, 0 to the number of values
 * @throws RangeError when the middle is not above 0 or the part is below 0
 * @see The uniformity count of growers' practice; "on the limit is inside" is common practice, no source.
 * @example countWithin([945, 1050, 1155, 1156], 1050, 0.1)  // 3
 */
export function countWithin(values: readonly number[], middle: number, part: number): number {
  if (!(middle > 0 && Number.isFinite(middle))) throw new RangeError(`the middle is above 0, not ${middle}`)
  if (!(part >= 0 && Number.isFinite(part))) throw new RangeError(`the part is 0 or more, not ${part}`)
  let inside = 0
  for (const value of values) if (Math.abs(value - middle) <= middle * (part + 1e-12)) inside += 1
  return inside
}
