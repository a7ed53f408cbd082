import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {logitFit, type LogitRow} from '../../src/statistics/logit-fit.ts'
import {expectClose} from '../expect-close.ts'

function fit(...args: Parameters<typeof logitFit>) {
  const got = logitFit(...args)
  if (!got) throw new Error('no fit')
  return got
}

/** Bliss 1935, Ann. Appl. Biol. 22:134: beetles killed by carbon disulphide, by logarithm of the dose. */
const BEETLES: LogitRow[] = [[1.6907, 59, 6], [1.7242, 60, 13], [1.7552, 62, 18], [1.7842, 56, 28], [1.8113, 63, 52], [1.8369, 59, 53], [1.861, 62, 61], [1.8839, 60, 60]]
  .map(([dose = 0, n = 0, k = 0]) => ({k, n, x: [1, dose]}))

const counts = fc.integer({min: 1, max: 20}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))

/** log L + ½ log|I| for two columns, as it is written. */
function penalisedLikelihood(rows: readonly LogitRow[], [a = 0, b = 0]: readonly number[]): number {
  let log = 0, i00 = 0, i01 = 0, i11 = 0
  for (const {k, n, x: [one = 0, x = 0]} of rows) {
    const share = 1 / (1 + Math.exp(-(a * one + b * x))), weight = n * share * (1 - share)
    log += k * Math.log(share) + (n - k) * Math.log(1 - share)
    i00 += weight * one * one
    i01 += weight * one * x
    i11 += weight * x * x
  }
  return log + 0.5 * Math.log(i00 * i11 - i01 ** 2)
}

describe('logitFit(rows, options)', () => {
  it('of beetles: −60.717 and 34.270, errors 5.181 and 2.912', () => {
    // Dobson, An Introduction to Generalized Linear Models, table 7.3 (from memory; the data agree with it)
    const got = fit(BEETLES, {penalised: false})
    expectClose(got.coefficients[0] ?? NaN, -60.717, 0.0005)
    expectClose(got.coefficients[1] ?? NaN, 34.27, 0.0005)
    expectClose(Math.sqrt(got.inverse[0]?.[0] ?? NaN), 5.181, 0.0005)
    expectClose(Math.sqrt(got.inverse[1]?.[1] ?? NaN), 2.912, 0.0005)
  })

  it('is the odds ratio of a table of four, and with the penalty that of ½ more in each cell', () => {
    // Firth 1993; Haldane 1956 and Anscombe 1956 for the ½
    fc.assert(fc.property(counts, counts, (one, other) => {
      const rows = [{...one, x: [1, 0]}, {...other, x: [1, 1]}]
      const odds = (k: number, n: number, more: number) => Math.log((k + more) / (n - k + more))
      const penalised = fit(rows, {penalised: true})
      expectClose(penalised.coefficients[0] ?? NaN, odds(one.k, one.n, 0.5), 1e-7)
      expectClose(penalised.coefficients[1] ?? NaN, odds(other.k, other.n, 0.5) - odds(one.k, one.n, 0.5), 1e-7)
      const plain = logitFit(rows, {penalised: false})
      if (one.k > 0 && one.k < one.n && other.k > 0 && other.k < other.n) {
        expectClose(plain?.coefficients[1] ?? NaN, odds(other.k, other.n, 0) - odds(one.k, one.n, 0), 1e-7)
      } else expect(plain).toBeNull()
    }), {seed: 5})
  })

  it('gives rows their own chicks on average without the penalty, and stands at the top of the penalised likelihood with it', () => {
    fc.assert(fc.property(fc.array(fc.tuple(counts, fc.integer({min: -2, max: 2})), {minLength: 3, maxLength: 10}), lines => {
      if (new Set(lines.map(([, x]) => x)).size < 2) return
      const rows = lines.map(([count, x]) => ({...count, x: [1, x]}))
      const plain = logitFit(rows, {penalised: false})
      if (plain) for (const place of [0, 1]) expectClose(rows.reduce((sum, {k, n, x}, row) => sum + (x[place] ?? 0) * (k - n * (plain.shares[row] ?? 0)), 0), 0, 1e-5)
      const got = fit(rows, {penalised: true}), top = penalisedLikelihood(rows, got.coefficients)
      expectClose(got.logLikelihood, top, 1e-8 * Math.max(1, Math.abs(top)))
      for (const [a, b] of [[0.01, 0], [-0.01, 0], [0, 0.01], [0, -0.01]] as const) {
        expect(penalisedLikelihood(rows, [(got.coefficients[0] ?? 0) + a, (got.coefficients[1] ?? 0) + b])).toBeLessThan(top)
      }
    }), {seed: 5, numRuns: 60})
  })

  it('settles with the penalty where three rows part failures from successes', () => {
    const rows = [{k: 0, n: 1, x: [1, 0]}, {k: 0, n: 1, x: [1, -2]}, {k: 17, n: 17, x: [1, 1]}], {coefficients} = fit(rows, {penalised: true}), top = penalisedLikelihood(rows, coefficients)
    for (const [a, b] of [[0.01, 0], [-0.01, 0], [0, 0.01], [0, -0.01]] as const) expect(penalisedLikelihood(rows, [(coefficients[0] ?? 0) + a, (coefficients[1] ?? 0) + b])).toBeLessThan(top)
  })

  it('holds a coefficient where it is told, and is then no likelier', () => {
    const best = fit(BEETLES, {penalised: false}), held = fit(BEETLES, {penalised: false, fixed: {place: 1, value: 30}, start: best.coefficients.map(value => value * 30 / (best.coefficients[1] ?? NaN))})
    expect(held.coefficients[1]).toBe(30)
    expect(held.logLikelihood).toBeLessThan(best.logLikelihood)
  })

  it('has no plain fit where the columns part failures from successes', () => {
    const rows = [{k: 5, n: 5, x: [1, 0]}, {k: 5, n: 5, x: [1, 1]}, {k: 0, n: 5, x: [1, 2]}]
    expect(logitFit(rows, {penalised: false})).toBeNull()
    expect(fit(rows, {penalised: true}).coefficients.every(Number.isFinite)).toBe(true)
  })
  it('gives the value of its example', () => expectClose(fit([{k: 3, n: 10, x: [1]}], {penalised: true}).shares[0] ?? NaN, 3.5 / 11, 1e-8))
})
