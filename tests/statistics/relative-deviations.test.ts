import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {levene} from '../../src/statistics/levene.ts'
import {relativeDeviations, spreadOfSteps} from '../../src/statistics/relative-deviations.ts'
import {expectClose} from '../expect-close.ts'

const oneClass = fc.array(fc.integer({min: 500, max: 4000}), {minLength: 2, maxLength: 12})

/** Normal draws by Box & Muller 1958, Ann. Math. Stat. 29:610. */
function normalDraws(seed: number): (mean: number, sd: number) => number {
  const chance = chanceOf(seed), share = () => (chance.next() + 0.5) / 2 ** 32
  return (mean, sd) => mean + sd * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())
}

describe('relativeDeviations(values)', () => {
  it('leaves one bird out of an odd class and none out of an even one, and knows no unit', () => {
    fc.assert(fc.property(oneClass, values => {
      const got = relativeDeviations(values), pounds = relativeDeviations(values.map(value => value * 0.00220462))
      expect(got).toHaveLength(values.length - (values.length % 2))
      got.forEach((deviation, place) => expectClose(pounds[place] ?? NaN, deviation, 1e-9))
      expect(Math.min(...got)).toBeGreaterThanOrEqual(0)
    }))
  })

  it('makes small classes look as uneven as large ones', () => {
    // the mean is the coefficient of variation, 10 %; unscaled, classes of 4 come to 6.6 % and of 30 to 7.8 %, and with √(n/(n − 1)) classes of 4 to 7.7 % and of 5 to 9.3 %
    const draw = normalDraws(4)
    const mean = (n: number) => {
      const all = Array.from({length: Math.ceil(40_000 / n)}, () => relativeDeviations(Array.from({length: n}, () => draw(2000, 200)))).flat()
      return all.reduce((sum, value) => sum + value, 0) / all.length
    }
    for (const n of [2, 3, 4, 5, 10, 30]) expectClose(mean(n), 0.1, 0.002, {n})
  })

  it('gives the value of its example', () => {
    const [first, second] = relativeDeviations([90, 100, 120])
    expectClose(first ?? NaN, 0.1182, 0.00005)
    expectClose(second ?? NaN, 0.2363, 0.00005)
  })
  it.each([[[1]], [[0, 1]], [[1, NaN]], [[-1, 2]]])('refuses %j', values => expect(() => relativeDeviations(values)).toThrow(RangeError))
})

describe('spreadOfSteps(steps)', () => {
  it('is Brown and Forsythe’s test for one even class a step of one median', () => {
    // the first two even batches of NIST’s gears, scaled so that both medians are 1: levene's W of the same values
    const one = [0.98, 1.02, 0.95, 1.05, 0.99, 1.01], other = [0.9, 1.1, 0.99, 1.01, 0.8, 1.2]
    const got = spreadOfSteps([[one], [other]]), plain = levene([one, other])
    if (got.kind !== 'compared' || plain.kind !== 'compared') throw new Error('not compared')
    expectClose(got.f, plain.f, 1e-9)
  })

  it('does not see a hatch that was fed better, nor cocks beside hens', () => {
    fc.assert(fc.property(fc.array(oneClass, {minLength: 1, maxLength: 3}), fc.array(oneClass, {minLength: 1, maxLength: 3}), (one, other) => {
      const got = spreadOfSteps([one, other]), fed = spreadOfSteps([one.map((values, place) => values.map(value => value * (2 + place))), other])
      expect(fed.kind).toBe(got.kind)
      if (got.kind === 'compared' && fed.kind === 'compared') expectClose(fed.f, got.f, 1e-6 * Math.max(1, got.f))
    }))
  })

  it('calls steps of one evenness different about 5 times in a hundred, and finds 8 % against 16 %', () => {
    const draw = normalDraws(6), runs = 1500
    const step = (cv: number, sizes: readonly number[]) => sizes.map((size, place) => Array.from({length: size}, () => draw(1500 + 300 * place, cv * (1500 + 300 * place))))
    const called = (one: number, other: number) => {
      let found = 0
      for (let run = 0; run < runs; run++) {
        const got = spreadOfSteps([step(one, [5, 7, 12]), step(other, [6, 9, 5, 8])])
        if (got.kind === 'compared' && got.p <= 0.05) found += 1
      }
      return found / runs
    }
    expectClose(called(0.1, 0.1), 0.05, 0.02)
    expect(called(0.08, 0.16)).toBeGreaterThan(0.7)
  })

  it('gives the value of its example', () => {
    const got = spreadOfSteps([[[90, 101, 110, 130], [180, 200, 220]], [[98, 100, 102], [196, 201, 204]]])
    if (got.kind !== 'compared') throw new Error(got.kind)
    expectClose(got.f, 5.4627, 0.00005)
    expectClose(got.p, 0.0476, 0.00005)
  })
  it('passes over single birds', () => expect(spreadOfSteps([[[900]], [[800, 900]]]).kind).toBe('few'))
})
