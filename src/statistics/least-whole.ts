/**
 * From which whole number on does something hold?
 *
 * By doubling the step until it holds, then by halving what lies between: exact where it holds of every number above one of which it holds, as of a limit that rises with each chick that is right.
 *
 * @param from the first number asked of; whole
 * @param most the last; whole, `from` or more
 * @param holds asked of some of the numbers between
 * @returns null where it does not hold at `most`
 * @throws RangeError where the two are no such numbers
 * @example leastWhole(0, 100, n => n * n >= 50)  // 8
 */
export function leastWhole(from: number, most: number, holds: (n: number) => boolean): number | null {
  if (!Number.isSafeInteger(from) || !Number.isSafeInteger(most) || most < from) throw new RangeError(`whole numbers, the last no less than the first, and not ${from} to ${most}`)
  if (holds(from)) return from
  let fails = from, step = 1
  while (fails + step < most && !holds(fails + step)) {
    fails += step
    step *= 2
  }
  let good = Math.min(most, fails + step)
  if (good === most && !holds(most)) return null
  while (good - fails > 1) {
    const middle = fails + Math.floor((good - fails) / 2)
    if (holds(middle)) good = middle
    else fails = middle
  }
  return good
}
