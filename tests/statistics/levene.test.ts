import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {levene} from '../../src/statistics/levene.ts'
import {expectClose} from '../expect-close.ts'

/** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.10, GEAR.DAT: diameters of gears in ten batches of ten. */
const GEARS = [
  [1.006, 0.996, 0.998, 1, 0.992, 0.993, 1.002, 0.999, 0.994, 1], [0.998, 1.006, 1, 1.002, 0.997, 0.998, 0.996, 1, 1.006, 0.988],
  [0.991, 0.987, 0.997, 0.999, 0.995, 0.994, 1, 0.999, 0.996, 0.996], [1.005, 1.002, 0.994, 1, 0.995, 0.994, 0.998, 0.996, 1.002, 0.996],
  [0.998, 0.998, 0.982, 0.99, 1.002, 0.984, 0.996, 0.993, 0.98, 0.996], [1.009, 1.013, 1.009, 0.997, 0.988, 1.002, 0.995, 0.998, 0.981, 0.996],
  [0.99, 1.004, 0.996, 1.001, 0.998, 1, 1.018, 1.01, 0.996, 1.002], [0.998, 1, 1.006, 1, 1.002, 0.996, 0.998, 0.996, 1.002, 1.006],
  [1.002, 0.998, 0.996, 0.995, 0.996, 1.004, 1.004, 0.998, 0.999, 0.991], [0.991, 0.995, 0.984, 0.994, 0.997, 0.997, 0.991, 0.998, 1.004, 0.997],
]
/** R data set ChickWeight (Crowder & Hand 1990), day 21. */
const CHICKS = [
  [205, 215, 202, 157, 223, 157, 305, 98, 124, 175, 205, 96, 266, 142, 157, 117], [331, 167, 175, 74, 265, 251, 192, 233, 309, 150],
  [256, 305, 147, 341, 373, 220, 178, 290, 272, 321], [204, 281, 200, 196, 238, 205, 322, 237, 264],
]

function compared(got: ReturnType<typeof levene>) {
  if (got.kind !== 'compared') throw new Error(got.kind)
  return got
}

describe('levene(groups, centre)', () => {
  it('of the gears', () => {
    // the handbook prints W = 1.7059 for medians; to more digits, and with means, recomputed by independent code
    const medians = compared(levene(GEARS)), means = compared(levene(GEARS, 'mean'))
    expect([medians.between.freedom, medians.within.freedom]).toEqual([9, 90])
    expectClose(medians.f, 1.705917693, 1e-8)
    expectClose(medians.p, 0.0990829756, 1e-8)
    expectClose(means.f, 2.159459856, 1e-8)
    expectClose(means.p, 0.0322368266, 1e-8)
  })

  it('of chicks on four diets', () => {
    // recomputed by independent code: F 1.15972, P .33674
    const {f, p} = compared(levene(CHICKS))
    expectClose(f, 1.15972, 0.000005)
    expectClose(p, 0.33674, 0.000005)
  })

  const groups = fc.array(fc.array(fc.integer({min: 0, max: 400}), {minLength: 3, maxLength: 9}), {minLength: 2, maxLength: 5})

  it('is Levene’s W as he wrote it', () => {
    fc.assert(fc.property(groups, all => {
      const got = levene(all, 'mean')
      if (got.kind !== 'compared') return
      const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
      const z = all.map(values => values.map(value => Math.abs(value - mean(values)))), grand = mean(z.flat()), n = z.flat().length
      const above = z.reduce((sum, own) => sum + own.length * (mean(own) - grand) ** 2, 0), below = z.reduce((sum, own) => sum + own.reduce((part, value) => part + (value - mean(own)) ** 2, 0), 0)
      const w = ((n - z.length) / (z.length - 1)) * (above / below)
      expectClose(got.f, w, 1e-8 * Math.max(1, w))
    }))
  })

  it('does not see where the groups lie, only how far they spread', () => {
    fc.assert(fc.property(groups, all => {
      const got = levene(all), moved = levene(all.map((values, place) => values.map(value => value + 1000 * place)))
      expect(moved.kind).toBe(got.kind)
      if (got.kind === 'compared' && moved.kind === 'compared') expectClose(moved.f, got.f, 1e-8 * Math.max(1, got.f))
    }))
  })

  it('gives the value of its example', () => {
    const {f, p} = compared(levene([[1, 2, 3, 4], [1, 5, 9, 13]]))
    expectClose(f, 6.3529, 0.00005)
    expectClose(p, 0.0453, 0.00005)
  })
  it('says why there is none', () => {
    expect(levene([[1, 2, 3]]).kind).toBe('few')
    expect(levene([[1, 2], [3, 9]]).kind).toBe('no-spread')
  })
})
