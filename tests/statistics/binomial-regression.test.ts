import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {binomialRegression, shareAt, type BinomialRow} from '../../src/statistics/binomial-regression.ts'
import {chanceOf} from '../../src/statistics/chance.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'

/** Bliss 1935, Ann. Appl. Biol. 22:134. */
const BEETLES: BinomialRow[] = [[1.6907, 59, 6], [1.7242, 60, 13], [1.7552, 62, 18], [1.7842, 56, 28], [1.8113, 63, 52], [1.8369, 59, 53], [1.861, 62, 61], [1.8839, 60, 60]]
  .map(([dose = 0, n = 0, k = 0]) => ({k, n, x: [dose]}))

function fitted(...args: Parameters<typeof binomialRegression>) {
  const got = binomialRegression(...args)
  if (got.kind !== 'fitted') throw new Error(got.kind)
  return got
}
const slopeOf = (fit: ReturnType<typeof fitted>, place = 0) => fit.slopes[place] ?? {value: NaN, error: NaN, interval: null, p: NaN}
const row = fc.integer({min: 1, max: 15}).chain(n => fc.record({k: fc.integer({min: 0, max: n}), n: fc.constant(n), x: fc.tuple(fc.integer({min: 0, max: 5}))}))

describe('binomialRegression(rows)', () => {
  it('of beetles', () => {
    // Dobson, An Introduction to Generalized Linear Models, table 7.3: slope 34.270, error 2.912; Pearson's X² 10.03 on 6 degrees of freedom (from memory; the data agree with it)
    const got = fitted(BEETLES), {value, error} = slopeOf(got)
    expectClose(value, 34.27, 0.0005)
    expectClose(got.extra, 10.03 / 6, 0.005 / 6)
    expectClose(error, 2.912 * Math.sqrt(got.extra), 0.001)
    expect(got).toMatchObject({how: 'plain', n: 481, clusters: 8, freedom: 6})
  })

  it('ends where the likelihood has fallen by ½φt², by a plain search over the other coefficient', () => {
    const got = fitted(BEETLES), {interval} = slopeOf(got)
    const likelihood = (a: number, b: number) => BEETLES.reduce((sum, {k, n, x: [x = 0]}) => {
      const eta = a + b * (x - 1.79)
      return sum + k * eta - n * Math.log1p(Math.exp(eta))
    }, 0)
    const profile = (b: number) => {
      // rising, then falling in a: thirds taken off
      let low = -5, high = 5
      for (let step = 0; step < 200; step++) {
        const third = (high - low) / 3
        if (likelihood(low + third, b) < likelihood(high - third, b)) low += third
        else high -= third
      }
      return likelihood(low, b)
    }
    const fall = (b: number) => (2 * (profile(slopeOf(got).value) - profile(b))) / got.extra
    const t = studentQuantile(0.95, 6)
    expectClose(fall(interval?.low ?? NaN), t ** 2, 1e-5)
    expectClose(fall(interval?.high ?? NaN), t ** 2, 1e-5)
  })

  it('follows the unit of a column, and turns when failures are counted', () => {
    fc.assert(fc.property(fc.array(row, {minLength: 4, maxLength: 8}), rows => {
      const got = binomialRegression(rows), perTen = binomialRegression(rows.map(each => ({...each, x: [each.x[0] / 10]}))), failures = binomialRegression(rows.map(each => ({...each, k: each.n - each.k})))
      expect([perTen.kind, failures.kind]).toEqual([got.kind, got.kind])
      if (got.kind !== 'fitted' || perTen.kind !== 'fitted' || failures.kind !== 'fitted') return
      const {value, error, interval, p} = slopeOf(got), tol = 1e-5 * Math.max(1, Math.abs(value), error)
      expectClose(slopeOf(perTen).value, 10 * value, 10 * tol)
      expectClose(slopeOf(failures).value, -value, tol)
      expectClose(slopeOf(failures).p, p, 1e-4)
      expect(error).toBeGreaterThan(0)
      expect(p).toBeGreaterThanOrEqual(0)
      expect(p).toBeLessThanOrEqual(1)
      if (interval) {
        expect(interval.low).toBeLessThan(value)
        expect(interval.high).toBeGreaterThan(value)
        if (Math.abs(p - 0.05) > 1e-3) expect(interval.low < 0 && interval.high > 0).toBe(p > 0.05)
      }
      const at = shareAt(got, [2.5])
      expect(at.low).toBeGreaterThanOrEqual(0)
      expect(at.low).toBeLessThanOrEqual(at.share)
      expect(at.high).toBeGreaterThanOrEqual(at.share)
      expect(at.high).toBeLessThanOrEqual(1)
    }), {numRuns: 50})
  })

  it('expects the shares of two groups as they are', () => {
    const rows = [[8, 0], [7, 0], [6, 1], [5, 1]].map(([k = 0, x = 0]) => ({k, n: 10, x: [x]}))
    const got = fitted(rows)
    expectClose(shareAt(got, [0]).share, 0.75, 1e-9)
    expectClose(shareAt(got, [1]).share, 0.55, 1e-9)
  })

  it('does not mind how the eggs of a cluster are written, but for the spread inside it', () => {
    const whole = [[9, 10, 0], [7, 10, 0.1], [9, 12, 0.1], [5, 11, 0.25], [8, 10, 0.2]].map(([k = 0, n = 0, x = 0], place) => ({k, n, x: [x], cluster: `hatch ${place}`}))
    const parted = whole.flatMap(each => [{...each, k: Math.ceil(each.k / 2), n: Math.ceil(each.n / 2)}, {...each, k: Math.floor(each.k / 2), n: Math.floor(each.n / 2)}])
    const one = fitted(whole), other = fitted(parted)
    expectClose(slopeOf(other).value, slopeOf(one).value, 1e-6)
    expect(other.freedom).toBe(one.freedom)
  })

  it('is penalised where the columns part failures from successes, with an interval that ends', () => {
    const got = fitted([{k: 10, n: 10, x: [0]}, {k: 10, n: 10, x: [0]}, {k: 6, n: 10, x: [0.25]}, {k: 7, n: 10, x: [0.25]}, {k: 10, n: 10, x: [0]}])
    expect(got.how).toBe('penalised')
    // ½ more in each cell: log(13.5/7.5) − log(30.5/0.5), per 0.25
    expectClose(slopeOf(got).value, (Math.log(13.5 / 7.5) - Math.log(30.5 / 0.5)) / 0.25, 1e-5)
    expect(Number.isFinite(slopeOf(got).interval?.low)).toBe(true)
    expect(slopeOf(got).interval?.high).toBeLessThan(0)
  })

  it('covers a true loss about 95 times in a hundred where hatches differ as a whole, and finds none where there is none about 95 times', () => {
    // 14 hatches of 18 eggs over two hens each; logit 2 − slope·F, and every hatch better or worse by a normal amount of SD 0.6
    const chance = chanceOf(31), share = () => (chance.next() + 0.5) / 2 ** 32
    const flock = (slope: number): BinomialRow[] => Array.from({length: 14}, (_, hatch) => {
      const own = 0.6 * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())
      return [0, 1].map(hen => {
        const f = 0.02 * (hatch % 7) + 0.04 * hen + 0.05 * share(), right = 1 / (1 + Math.exp(-(1.2 + own + slope * f)))
        let k = 0
        for (let egg = 0; egg < 9; egg++) if (share() < right) k += 1
        return {k, n: 9, x: [f], cluster: `${hatch}`}
      })
    }).flat()
    const runs = 400
    const held = (slope: number) => {
      let inside = 0
      for (let run = 0; run < runs; run++) {
        const {interval} = slopeOf(fitted(flock(slope)))
        // the slope inside hatches is steeper than the mean of all by a few hundredths: Zeger, Liang & Albert 1988, Biometrics 44:1049
        if (interval && interval.low <= slope * 0.95 && slope * 0.95 <= interval.high) inside += 1
      }
      return inside / runs
    }
    // standard error 0.011
    expectClose(held(-4), 0.95, 0.035)
    expectClose(held(0), 0.95, 0.035)
  }, 120_000)

  it('gives the value of its example', () => {
    const got = fitted([{k: 9, n: 10, x: [0]}, {k: 8, n: 10, x: [0]}, {k: 6, n: 10, x: [0.25]}, {k: 7, n: 10, x: [0.25]}])
    expectClose(slopeOf(got).value, -4.4622, 0.00005)
    expect(got.extra).toBe(1)
  })
  it('says why there is none', () => {
    expect(binomialRegression([])).toEqual({kind: 'few', n: 0, clusters: 0})
    expect(binomialRegression([{k: 1, n: 2, x: [0]}, {k: 1, n: 2, x: [1]}]).kind).toBe('few')
    expect(binomialRegression([1, 2, 3, 4].map(k => ({k, n: 5, x: [0.1]})))).toEqual({kind: 'dependent', n: 20, clusters: 4, columns: [0]})
  })
  it('refuses what does not fit', () => {
    expect(() => binomialRegression([{k: 3, n: 2, x: []}])).toThrow(RangeError)
    expect(() => binomialRegression([{k: 1, n: 2, x: [1]}, {k: 1, n: 2, x: []}])).toThrow(RangeError)
    expect(() => binomialRegression([{k: 1, n: 2, x: [NaN]}])).toThrow(RangeError)
    expect(() => binomialRegression([], 1)).toThrow(RangeError)
    expect(() => shareAt(fitted(BEETLES), [])).toThrow(RangeError)
  })

  it('leaves the limits of columns before the first one asked for, and changes nothing else', () => {
    const rows = [[9, 0, 0], [8, 0, 1], [6, 0.25, 0], [7, 0.25, 1], [8, 0.1, 0], [5, 0.2, 1]].map(([k = 0, f = 0, season = 0]) => ({k, n: 10, x: [season, f]}))
    const all = binomialRegression(rows), asked = binomialRegression(rows, 0.95, 1)
    if (all.kind !== 'fitted' || asked.kind !== 'fitted') throw new Error('no fit')
    expect(asked.slopes[1]).toEqual(all.slopes[1])
    expect([asked.slopes[0]?.value, asked.slopes[0]?.error, asked.slopes[0]?.interval]).toEqual([all.slopes[0]?.value, all.slopes[0]?.error, null])
    expect(Math.abs((asked.slopes[0]?.p ?? NaN) - (all.slopes[0]?.p ?? NaN))).toBeLessThan(0.05)
  })
})

describe('binomialRegression of families', () => {
  const pairs = [0, 1, 2, 3, 4, 5, 6, 7], hatched = [9, 4, 8, 7, 3, 9, 2, 8, 10, 5, 7, 9, 2, 8, 4, 9, 9, 3, 9, 8, 5, 10, 3, 7]
  const rows: BinomialRow[] = hatched.map((k, place) => ({k, n: 10, x: [0.05 * ((place % 8) % 3)], cluster: `h${place}`, family: `p${place % 8}`}))

  it('of pairs of one size is the regression of their sums, spread and freedom too', () => {
    const sums = pairs.map((pair): BinomialRow => ({k: hatched.filter((_, place) => place % 8 === pair).reduce((sum, k) => sum + k, 0), n: 30, x: [0.05 * (pair % 3)]}))
    const got = fitted(rows), plain = fitted(sums)
    expectClose(got.freedom, 6, 1e-9)
    expectClose(got.extra, plain.extra, 1e-7)
    for (const side of ['low', 'high'] as const) expectClose(slopeOf(got).interval?.[side] ?? NaN, slopeOf(plain).interval?.[side] ?? NaN, 1e-5)
    expect(got).toMatchObject({clusters: 24, families: 8})
  })

  it('pays for a season with hatches, not with pairs that were all set in it', () => {
    const got = fitted(rows.map((each, place) => ({...each, x: [...each.x, Number(place >= 16)]})))
    expect(got.freedom).toBeGreaterThan(5.8)
    expect(got.freedom).toBeLessThanOrEqual(6 + 1e-9)
  })

  it('of one hatch a pair is the same as without their names, and of two pairs has too few', () => {
    const bare = fitted(rows.map(({k, n, x, cluster}) => ({k, n, x, cluster: cluster ?? ''}))), each = fitted(rows.map(one => ({...one, family: one.cluster ?? ''})))
    expectClose(each.freedom, bare.freedom, 1e-9)
    expectClose(each.extra, bare.extra, 1e-9)
    expect(binomialRegression(rows.filter(({family}) => family === 'p0' || family === 'p1')).kind).toBe('few')
  })
})
