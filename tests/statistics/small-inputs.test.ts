/** Three birds, one hatch, all alike, no eggs: every figure says what it can, or why it cannot, and never a number that is none. */
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {analysisOfVariance} from '../../src/statistics/analysis-of-variance.ts'
import {binomialRegression, shareAt} from '../../src/statistics/binomial-regression.ts'
import {clopperPearson} from '../../src/statistics/clopper-pearson.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import {familyDifference} from '../../src/statistics/family-difference.ts'
import {familyTrend} from '../../src/statistics/family-trend.ts'
import {heterosis} from '../../src/statistics/heterosis.ts'
import {leastSquares} from '../../src/statistics/least-squares.ts'
import {levene} from '../../src/statistics/levene.ts'
import {logitFit} from '../../src/statistics/logit-fit.ts'
import {mannKendall} from '../../src/statistics/mann-kendall.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {parentOffspring} from '../../src/statistics/parent-offspring.ts'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {realisedHeritability} from '../../src/statistics/realised-heritability.ts'
import {recoveryOfType} from '../../src/statistics/recovery-of-type.ts'
import {relativeDeviations, spreadOfSteps} from '../../src/statistics/relative-deviations.ts'
import {expectedResponse, selectionDifferential} from '../../src/statistics/selection-differential.ts'
import {senSlope} from '../../src/statistics/sen-slope.ts'
import {shareDifference} from '../../src/statistics/share-difference.ts'
import {shareTrend} from '../../src/statistics/share-trend.ts'
import {shiftWithin} from '../../src/statistics/shift.ts'
import {varianceRatio} from '../../src/statistics/variance-ratio.ts'
import {variationRatio} from '../../src/statistics/variation-ratio.ts'
import {weightedKappa} from '../../src/statistics/weighted-kappa.ts'
import {withinClasses} from '../../src/statistics/within-classes.ts'

/** Names under which a figure lies between 0 and 1. */
const SHARES = new Set(['p', 'share', 'rSquared', 'superiority', 'smallestP', 'seen', 'chance'])
/** Where an interval of a share or of a heritability must stay. */
const BOUNDS: Readonly<Record<string, readonly [number, number]>> = {share: [0, 1], difference: [-1, 1], heritability: [0, 1], kappa: [-1, 1]}

/** Every number in a result is finite, every share a share, every interval the right way round, inside its bounds and around its value. */
function expectSound(result: unknown, of: keyof typeof BOUNDS | 'any' = 'any', way = 'result'): void {
  if (typeof result === 'number') expect(Number.isFinite(result), way).toBe(true)
  if (typeof result !== 'object' || result === null) return
  const fields = result as Readonly<Record<string, unknown>>
  const {low, high} = fields
  if (typeof low === 'number' && typeof high === 'number') {
    const [least, most] = BOUNDS[of] ?? [-Infinity, Infinity]
    expect(low, way).toBeLessThanOrEqual(high)
    expect(low, way).toBeGreaterThanOrEqual(least)
    expect(high, way).toBeLessThanOrEqual(most)
  }
  for (const [name, value] of Object.entries(fields)) {
    if (SHARES.has(name) && typeof value === 'number') {
      expect(value, `${way}.${name}`).toBeGreaterThanOrEqual(0)
      expect(value, `${way}.${name}`).toBeLessThanOrEqual(1)
    }
    expectSound(value, of, `${way}.${name}`)
  }
}

// few values of few kinds, so that ties, all alike, none and one are common
const value = fc.constantFrom(0.1, 0.1, 1, 2, 2, 3, 1500, 1500.5)
const some = fc.array(value, {maxLength: 4})
const one = fc.array(value, {minLength: 1, maxLength: 4})
const count = fc.integer({min: 0, max: 3}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n)}))
const filled = count.filter(({n}) => n > 0)
const seed = fc.integer({min: 0, max: 9})
const runs = {numRuns: 150}

describe('figures of very few birds', () => {
  it('are looked at closely enough: what is unsound is found', () => {
    for (const unsound of [{a: NaN}, {deep: [{b: Infinity}]}, {low: 2, high: 1}, {p: 1.1}, {interval: {low: NaN, high: 1}}]) expect(() => expectSound(unsound)).toThrow()
    expect(() => expectSound({low: -0.1, high: 1}, 'share')).toThrow()
  })

  it('shares', () => {
    fc.assert(fc.property(filled, filled, (first, second) => {
      expectSound(clopperPearson(first.k, first.n), 'share')
      expectSound(shareDifference(first, second), 'difference')
    }), runs)
    fc.assert(fc.property(fc.array(count, {maxLength: 7}), fc.array(count, {maxLength: 7}), seed, (rows, others, from) => {
      expectSound(shareTrend(rows))
      expectSound(shareTrend(rows, rows.map((_, place) => place >> 1)))
      const resampling = {seed: from, draws: 20}
      expectSound(familyShare(rows, resampling), 'share')
      const apart = familyDifference(rows, others, resampling)
      if (apart) expectSound({low: apart.low, high: apart.high, difference: apart.difference}, 'difference')
      expectSound(familyTrend([rows, others], resampling))
      expectSound(familyTrend([rows, others, rows], resampling, [0, 1, 1]))
    }), runs)
  })

  it('spread', () => {
    fc.assert(fc.property(fc.array(some, {maxLength: 4}), groups => {
      expectSound(analysisOfVariance(groups))
      expectSound(levene(groups))
      expectSound(levene(groups, 'mean'))
      expectSound(spreadOfSteps([groups, groups.slice(1)]))
      for (const values of groups) if (values.length > 1) expectSound(relativeDeviations(values))
    }), runs)
    fc.assert(fc.property(one, one, one, (first, second, third) => {
      const [a, b, c] = [meanAndDeviation(first), meanAndDeviation(second), meanAndDeviation(third)]
      expectSound(heterosis(a, b, c))
      expectSound(recoveryOfType(a, b, c))
      if (a.sd === null || b.sd === null) return
      expectSound(varianceRatio({sd: a.sd, freedom: a.n - 1}, {sd: b.sd, freedom: b.n - 1}))
      expectSound(variationRatio([{cv: a.sd / a.mean, freedom: a.n - 1}], [{cv: b.sd / b.mean, freedom: b.n - 1}]))
    }), runs)
  })

  it('grades and seasons', () => {
    fc.assert(fc.property(some, some, (first, second) => {
      expectSound(rankSum(first, second))
      expectSound(shiftWithin([{one: first, other: second}]))
      expectSound(mannKendall(first))
      expectSound(senSlope(first))
      expectSound(mannKendall([...first, ...second]))
      expectSound(senSlope([...first, ...second]))
    }), runs)
    fc.assert(fc.property(fc.array(fc.integer({min: 0, max: 2}), {minLength: 9, maxLength: 9}), fc.constantFrom('none', 'linear', 'quadratic' as const), (counts, weights) => {
      expectSound(weightedKappa([counts.slice(0, 3), counts.slice(3, 6), counts.slice(6)], weights), 'kappa')
      expectSound(weightedKappa([counts.slice(0, 2), counts.slice(2, 4)], weights), 'kappa')
    }), runs)
  })

  it('lines and regressions', () => {
    const row = fc.record({group: fc.constantFrom('a', 'b'), x: fc.tuple(value, fc.constantFrom(0, 0, 0.25)), y: value})
    fc.assert(fc.property(fc.array(row, {maxLength: 6}), rows => {
      expectSound(withinClasses(rows))
      expectSound(leastSquares(rows.map(({x}) => [1, ...x]), rows.map(({y}) => y)))
      for (const parents of ['one', 'both'] as const) {
        const pairs = parentOffspring(rows.map(({x, y, group}) => ({parent: x[0], offspring: y, group})), parents)
        expectSound(pairs)
        if (pairs.kind === 'estimated') expectSound(pairs.heritability.interval, 'heritability')
      }
    }), runs)
    fc.assert(fc.property(fc.array(fc.record({count, x: fc.tuple(fc.constantFrom(0, 0, 0.125, 0.25)), cluster: fc.constantFrom('a', 'b', 'c', undefined)}), {maxLength: 7}), lines => {
      const rows = lines.map(({count: {k, n}, x, cluster}) => ({k, n, x, cluster}))
      const got = binomialRegression(rows)
      expectSound(got)
      expect(got.kind).not.toBe('unsettled')
      if (got.kind === 'fitted') expectSound(shareAt(got, [0.1]), 'share')
      expectSound(logitFit(rows.filter(({n}) => n > 0).map(({k, n}) => ({k, n, x: [1]})), {penalised: true}))
    }), runs)
  })

  it('inheritance', () => {
    fc.assert(fc.property(fc.array(fc.record({differential: fc.constantFrom(-1, 0, 0, 2), response: value}), {maxLength: 4}), steps => {
      const got = realisedHeritability(steps)
      expectSound(got)
      if (got.kind === 'estimated') expectSound(got.interval, 'heritability')
    }), runs)
    fc.assert(fc.property(fc.array(one, {maxLength: 3}), fc.integer({min: 1, max: 3}), (classes, weight) => {
      const got = selectionDifferential(classes.map(all => ({all, bred: all.slice(1).map(each => ({value: each, weight}))})))
      expectSound(got)
      if (got) expectSound(expectedResponse(got.differential, 0, {value: 0.2, low: 0, high: 1}))
    }), runs)
  })
})
