/** All ways to put n chicks into so many classes. */
export function everyOutcome(n: number, classes: number): number[][] {
  if (classes === 1) return [[n]]
  return Array.from({length: n + 1}, (_, first) => everyOutcome(n - first, classes - 1).map(rest => [first, ...rest])).flat()
}

/** n! · Π share^count / count!, factor by factor. */
export function multinomial(counts: readonly number[], ratio: readonly number[]): number {
  const whole = ratio.reduce((sum, part) => sum + part, 0)
  let placed = 0, chance = 1
  counts.forEach((count, place) => {
    for (let each = 1; each <= count; each++) {
      placed += 1
      chance *= (placed / each) * ((ratio[place] ?? 0) / whole)
    }
  })
  return chance
}

/** P by going through every outcome: of those the order puts no better than the one seen, the chances added up. The order gives a small number to a poor fit. */
export function byEveryOutcome(counts: readonly number[], ratio: readonly number[], order: (counts: readonly number[]) => number): number {
  const n = counts.reduce((sum, count) => sum + count, 0), seen = order(counts)
  const poor = everyOutcome(n, counts.length).filter(outcome => order(outcome) <= seen + 1e-9 * Math.abs(seen))
  return poor.reduce((sum, outcome) => sum + multinomial(outcome, ratio), 0)
}
