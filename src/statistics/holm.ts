/**
 * Holm's correction: of many tests one will look remarkable by chance; how remarkable is each when the number of tests is taken in?
 *
 *     adjusted(j) = max over i ≤ j of min(1, (m − i + 1) · P(i))        P(1) ≤ P(2) ≤ … ≤ P(m)
 *
 * Calling remarkable whatever stays at or below 0.05 errs, even once in the whole list, in no more than 5 lists of a hundred, however the tests hang together.
 *
 * @param chances P of each test, 0 to 1
 * @returns adjusted P of each, in the order given; none for none
 * @throws RangeError when a P is not between 0 and 1
 * @see Holm 1979, Scand. J. Stat. 6:65–70
 * @example holm([0.01, 0.04, 0.03, 0.005])  // 0.03, 0.06, 0.06, 0.02
 */
export function holm(chances: readonly number[]): number[] {
  for (const p of chances) if (!(p >= 0 && p <= 1)) throw new RangeError(`a chance lies between 0 and 1, not at ${p}`)
  const order = chances.map((p, place) => ({p, place})).sort((a, b) => a.p - b.p || a.place - b.place)
  const adjusted = chances.map(() => 1)
  let greatest = 0
  order.forEach(({p, place}, rank) => {
    greatest = Math.max(greatest, Math.min(1, (chances.length - rank) * p))
    adjusted[place] = greatest
  })
  return adjusted
}
