import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {weightedKappa} from '../../src/statistics/weighted-kappa.ts'
import {expectClose} from '../expect-close.ts'

const SKIN = [[10, 4, 1, 0], [5, 10, 12, 2], [2, 4, 12, 5], [0, 2, 6, 13]]
const table = fc.integer({min: 2, max: 5}).chain(g => fc.array(fc.array(fc.integer({min: 0, max: 9}), {minLength: g, maxLength: g}), {minLength: g, maxLength: g}))

function kappa(...args: Parameters<typeof weightedKappa>) {
  const got = weightedKappa(...args)
  if (!got) throw new Error('no kappa')
  return got
}

describe('weightedKappa(table, weights)', () => {
  it('two dermatologists', () => {
    // SAS/STAT manual, the FREQ procedure, "Agreement Study" (table seen there; the figures from memory): κ .3449, error .0724, .2030 to .4868; linear weights .5082, .0655, .3798 to .6366
    // the manual's limits are κ ± 1.96 errors; ours are bent and differ little at 88 patients
    const plain = kappa(SKIN, 'none'), linear = kappa(SKIN), z = normalQuantile(0.95)
    for (const [got, expected] of [
      [plain.kappa, 0.3449], [plain.error, 0.0724], [plain.kappa - z * plain.error, 0.203], [plain.kappa + z * plain.error, 0.4868],
      [linear.kappa, 0.5082], [linear.error, 0.0655], [linear.kappa - z * linear.error, 0.3798], [linear.kappa + z * linear.error, 0.6366],
    ] as const) expectClose(got, expected, 0.00005)
    expectClose(linear.interval?.low ?? NaN, 0.3798, 0.015)
    expectClose(linear.interval?.high ?? NaN, 0.6366, 0.015)
  })

  it('two pathologists', () => {
    // Agresti, Categorical Data Analysis, table 11.8 (2nd ed. p. 432): κ .493 with error .057; quadratic weights .78 (from memory)
    const slides = [[22, 2, 2, 0], [5, 7, 14, 0], [0, 2, 36, 0], [0, 1, 17, 10]]
    expectClose(kappa(slides, 'none').kappa, 0.493, 0.0005)
    expectClose(kappa(slides, 'none').error, 0.057, 0.0005)
    expectClose(kappa(slides, 'quadratic').kappa, 0.78, 0.005)
  })

  it('with quadratic weights is the concordance of the two lists of grades', () => {
    // Fleiss & Cohen 1973, Educ. Psychol. Meas. 33:613; Lin 1989, Biometrics 45:255, with n in place of n − 1: 2·s_xy/(s_xx + s_yy + (x̄ − ȳ)²)
    fc.assert(fc.property(table, counts => {
      const got = weightedKappa(counts, 'quadratic')
      if (!got) return
      const birds = counts.flatMap((row, i) => row.flatMap((count, j) => Array.from({length: count}, () => [i, j] as const)))
      const mean = (of: (bird: readonly [number, number]) => number) => birds.reduce((sum, bird) => sum + of(bird), 0) / birds.length
      const x = mean(([i]) => i), y = mean(([, j]) => j)
      const both = mean(([i, j]) => (i - x) * (j - y)), apart = mean(([i]) => (i - x) ** 2) + mean(([, j]) => (j - y) ** 2) + (x - y) ** 2
      expectClose(got.kappa, (2 * both) / apart, 1e-9)
    }))
  })

  it('has the error that leaving out one bird after the other comes to, in a large table', () => {
    // jackknife (Fleiss & Davies 1982, Educ. Psychol. Meas. 42:683), another route to the same large-sample error
    for (const weights of ['none', 'linear', 'quadratic'] as const) {
      const many = SKIN.map(row => row.map(count => count * 20)), whole = kappa(many, weights), n = whole.n
      let squares = 0
      many.forEach((row, i) => row.forEach((count, j) => {
        if (count === 0) return
        const without = kappa(many.map((line, a) => line.map((cell, b) => (a === i && b === j ? cell - 1 : cell))), weights)
        squares += count * (without.kappa - whole.kappa) ** 2
      }))
      expectClose(Math.sqrt(((n - 1) / n) * squares), whole.error, 0.005 * whole.error, weights)
    }
  })

  it('does not mind who is called the first, nor the scale turned over; weights make no odds for two grades', () => {
    fc.assert(fc.property(table, fc.constantFrom('none', 'linear', 'quadratic' as const), (counts, weights) => {
      const got = weightedKappa(counts, weights)
      const turned = weightedKappa(counts.map((_, i) => counts.map(row => row[i] ?? 0)), weights), upside = weightedKappa([...counts].reverse().map(row => [...row].reverse()), weights)
      expect(turned === null).toBe(got === null)
      if (!got) return
      for (const other of [turned, upside]) {
        expectClose(other?.kappa ?? NaN, got.kappa, 1e-9)
        expectClose(other?.error ?? NaN, got.error, 1e-6)
      }
      expect(got.kappa).toBeLessThanOrEqual(1 + 1e-12)
      expect(got.kappa).toBeGreaterThanOrEqual(-1 - 1e-12)
      if (got.interval) expect(got.interval.low).toBeLessThanOrEqual(got.interval.high)
      if (counts.length === 2) expectClose(got.kappa, weightedKappa(counts, 'none')?.kappa ?? NaN, 1e-12)
    }))
  })

  it.each([['none', 20], ['linear', 20], ['quadratic', 20], ['linear', 60], ['quadratic', 60]] as const)('covers a true agreement about 95 times in a hundred: weights %s, %i birds', (weights, n) => {
    const chance = chanceOf(70), share = () => chance.next() / 2 ** 32
    const scored = (birds: number) => {
      const counts = Array.from({length: 5}, () => [0, 0, 0, 0, 0])
      for (let each = 0; each < birds; each++) {
        const truth = share(), grade = () => Math.min(4, Math.max(0, Math.floor(5 * truth + (share() + share() - 1) * 1.6)))
        const row = counts[grade()] ?? [], column = grade()
        row[column] = (row[column] ?? 0) + 1
      }
      return counts
    }
    const truth = kappa(scored(200_000), weights).kappa
    let held = 0
    for (let run = 0; run < 2000; run++) {
      const interval = weightedKappa(scored(n), weights)?.interval
      if (interval && interval.low <= truth && truth <= interval.high) held += 1
    }
    // standard error 0.005; quadratic weights fall a little short with 20 birds
    expectClose(held / 2000, 0.943, 0.02)
  })

  it('is 1 without an interval where they agree fully', () => expect(weightedKappa([[3, 0], [0, 4]])).toMatchObject({kappa: 1, error: 0, interval: null}))
  it('says nothing of no bird, and of one grade for all', () => {
    expect(weightedKappa([[0, 0], [0, 0]])).toBeNull()
    expect(weightedKappa([[5, 0], [0, 0]])).toBeNull()
  })
  it('gives the value of its example', () => expectClose(kappa(SKIN, 'none').kappa, 0.3449, 0.00005))
  it.each([[[]], [[[1]]], [[[1, 2], [3]]], [[[1, -1], [0, 0]]], [[[1, 0.5], [0, 0]]]])('refuses %j', counts => expect(() => weightedKappa(counts)).toThrow(RangeError))
})
