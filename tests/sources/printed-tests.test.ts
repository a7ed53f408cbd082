/** Tests and regressions against worked examples in print, none of which stands beside the functions themselves. */
import {describe, expect, it} from 'vitest'
import {binomialRegression} from '../../src/statistics/binomial-regression.ts'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {shareTrend} from '../../src/statistics/share-trend.ts'
import {weightedKappa} from '../../src/statistics/weighted-kappa.ts'
import {expectClose} from '../expect-close.ts'

describe('rankSum with ties', () => {
  it('reaction times under two stimulants', () => {
    // SAS/STAT User's Guide, version 8, example 47.2 (seen): rank sum of the second 79.5, exact two-sided P 0.1054
    const first = [1.94, 1.94, 2.92, 2.92, 2.92, 2.92, 3.27, 3.27, 3.27, 3.27, 3.7, 3.7, 3.74], second = [3.27, 3.27, 3.27, 3.7, 3.7, 3.74]
    const got = rankSum(second, first)
    expect(got).toMatchObject({kind: 'compared', how: 'exact', u: 79.5 - 21})
    if (got.kind === 'compared') expectClose(got.p, 0.1054, 0.00005)
  })
})

describe('shareTrend', () => {
  it('adverse effects by dose', () => {
    // SAS/STAT User's Guide, the FREQ procedure, Cochran–Armitage example (table seen; Z −4.7918, of those without, from memory)
    const doses = [[6, 32], [7, 33], [9, 32], [14, 32], [23, 32]].map(([k = 0, n = 0]) => ({k, n}))
    expectClose(shareTrend(doses).z ?? NaN, 4.7918, 0.00005)
  })

  it('smokers among patients of four hospitals', () => {
    // R's help of prop.trend.test (data seen; Fleiss 1981, p. 139; χ² 8.2249, P .004132 from memory)
    const {z, p} = shareTrend([[83, 86], [90, 93], [129, 136], [70, 82]].map(([k = 0, n = 0]) => ({k, n})))
    expectClose((z ?? NaN) ** 2, 8.2249, 0.00005)
    expect(z).toBeLessThan(0)
    expectClose(p, 0.004132, 5e-7)
  })
})

describe('weightedKappa', () => {
  it('two abstractors of a hundred pregnancies', () => {
    // Gwet's package irrCAC, data set cont3x3abstractors and its output (seen): κ .7964094; with quadratic weights .8921569
    const table = [[13, 0, 0], [0, 20, 7], [0, 4, 56]]
    expectClose(weightedKappa(table, 'none')?.kappa ?? NaN, 0.7964094, 5e-8)
    expectClose(weightedKappa(table, 'quadratic')?.kappa ?? NaN, 0.8921569, 5e-8)
  })
})

describe('binomialRegression with extra spread', () => {
  it('seeds of two kinds on two extracts, 21 plates', () => {
    // Crowder 1978, Appl. Stat. 27:34–37; Breslow & Clayton 1993, J. Am. Stat. Assoc. 88:9–25: logits −0.558 (level), 0.146, 1.318, −0.778, errors 0.126, 0.223, 0.177, 0.306 without extra
    // spread; φ of quasi-likelihood 1.8618 on 17 degrees of freedom (all from memory; the data give them)
    const plates: readonly (readonly [0 | 1, 0 | 1, readonly (readonly [number, number])[]])[] = [
      [0, 0, [[10, 39], [23, 62], [23, 81], [26, 51], [17, 39]]], [0, 1, [[5, 6], [53, 74], [55, 72], [32, 51], [46, 79], [10, 13]]],
      [1, 0, [[8, 16], [10, 30], [8, 28], [23, 45], [0, 4]]], [1, 1, [[3, 12], [22, 41], [15, 30], [32, 51], [3, 7]]],
    ]
    const got = binomialRegression(plates.flatMap(([kind, extract, counts]) => counts.map(([k, n]) => ({k, n, x: [kind, extract, kind * extract]}))))
    if (got.kind !== 'fitted') expect.fail(got.kind)
    expect(got.freedom).toBe(17)
    expectClose(got.extra, 1.8618, 0.00005)
    const printed = [[0.146, 0.223], [1.318, 0.177], [-0.778, 0.306]] as const
    printed.forEach(([value, error], place) => {
      expectClose(got.slopes[place]?.value ?? NaN, value, 0.0005)
      expectClose((got.slopes[place]?.error ?? NaN) / Math.sqrt(got.extra), error, 0.001)
    })
  })
})
