/** NIST Statistical Reference Datasets, univariate summary statistics: certified values. Tolerances are what double precision can hold. */
import {describe, it} from 'vitest'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {expectClose} from '../expect-close.ts'

/** `first`, then `one` and `other` in turn, 1001 values in all. */
const inTurn = (first: number, one: number, other: number): number[] => [first, ...Array.from({length: 1000}, (_, index) => (index % 2 === 0 ? one : other))]

// Michelson's speed of light in air, thousands of km/s, 1879 (Dorsey 1944)
const MICHELSO = `299.85 299.74 299.90 300.07 299.93 299.85 299.95 299.98 299.98 299.88 300.00 299.98 299.93 299.65 299.76 299.81 300.00 300.00 299.96 299.96
  299.96 299.94 299.96 299.94 299.88 299.80 299.85 299.88 299.90 299.84 299.83 299.79 299.81 299.88 299.88 299.83 299.80 299.79 299.76 299.80
  299.88 299.88 299.88 299.86 299.72 299.72 299.62 299.86 299.97 299.95 299.88 299.91 299.85 299.87 299.84 299.84 299.85 299.84 299.84 299.84
  299.89 299.81 299.81 299.82 299.80 299.77 299.76 299.74 299.75 299.76 299.91 299.92 299.89 299.86 299.88 299.72 299.84 299.85 299.85 299.78
  299.89 299.84 299.78 299.81 299.76 299.81 299.79 299.81 299.82 299.85 299.87 299.87 299.81 299.74 299.81 299.94 299.95 299.80 299.81 299.87`
  .split(/\s+/).map(Number)

describe('meanAndDeviation against NIST StRD', () => {
  it.each([
    ['NumAcc1', [10_000_001, 10_000_003, 10_000_002], 10_000_002, 1, 0],
    ['NumAcc2', inTurn(1.2, 1.1, 1.3), 1.2, 0.1, 1e-13],
    // the shortcut of squares gives a variance of 0.0115 here in place of 0.01
    ['NumAcc3', inTurn(1_000_000.2, 1_000_000.1, 1_000_000.3), 1_000_000.2, 0.1, 1e-8],
    ['Michelso', MICHELSO, 299.8524, 0.0790105478190518, 1e-11],
  ])('gives the certified values of %s', (name, values, mean, sd, relative) => {
    const got = meanAndDeviation(values)
    expectClose(got.mean, mean, Math.max(relative === 0 ? 0 : 1e-15, 0) * mean, `${name}, mean`)
    expectClose(got.sd ?? NaN, sd, relative * sd, `${name}, standard deviation`)
  })
})
