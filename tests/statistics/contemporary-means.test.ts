import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {contemporaryMeans} from '../../src/statistics/contemporary-means.ts'
import {expectClose} from '../expect-close.ts'

const value = fc.integer({min: -500, max: 4000})
const classes = (groups: number) => fc.array(fc.array(fc.array(value, {maxLength: 5}), {minLength: groups, maxLength: groups}), {maxLength: 6})

/** The slow twin: weights and sums written out, the variance of each mean as that of a sum of single birds. */
function twin(all: readonly (readonly (readonly number[])[])[], group: number) {
  const whole = all.filter(each => each.every(values => values.length > 0))
  const weight = (each: readonly (readonly number[])[]) => 1 / each.map(values => 1 / values.length).reduce((a, b) => a + b, 0)
  const total = whole.map(weight).reduce((a, b) => a + b, 0)
  const birds = whole.flatMap(each => (each[group] ?? []).map(x => ({x, share: weight(each) / total / (each[group]?.length ?? 1), from: each[group] ?? []})))
  const squares = birds.map(({x, from}) => (x - from.reduce((a, b) => a + b, 0) / from.length) ** 2).reduce((a, b) => a + b, 0), freedom = birds.length - whole.length
  return {mean: birds.map(({x, share}) => x * share).reduce((a, b) => a + b, 0), n: 1 / birds.map(({share}) => share ** 2).reduce((a, b) => a + b, 0), variance: freedom > 0 ? squares / freedom : null, freedom}
}

describe('contemporaryMeans(classes)', () => {
  it('weighs classes as by hand: 1 and 2/3', () => {
    const found = contemporaryMeans([[[10, 12], [14, 16]], [[20], [23, 25]], [[9], []]])
    expect(found?.classes).toBe(2)
    expect(found?.groups.map(({mean, birds, freedom}) => [Number(mean.toFixed(9)), birds, freedom])).toEqual([[14.6, 3, 1], [18.6, 4, 2]])
  })

  it('agrees with its slow twin', () => {
    fc.assert(fc.property(classes(3), all => {
      const found = contemporaryMeans(all)
      if (found === null) {
        expect(all.every(each => each.some(values => values.length === 0))).toBe(true)
        return
      }
      found.groups.forEach(({mean, n, sd, freedom, birds}, group) => {
        const slow = twin(all, group)
        expectClose(mean, slow.mean, 1e-9)
        expectClose(n, slow.n, 1e-12)
        expect(freedom).toBe(slow.freedom)
        expect(n).toBeLessThanOrEqual(birds + 1e-9)
        if (sd === null || slow.variance === null) expect([sd, slow.variance]).toEqual([null, null])
        else expect(Math.abs(sd ** 2 - slow.variance)).toBeLessThan(1e-6 * (1 + slow.variance))
      })
    }))
  })

  it('lets a good hatch fall out of every difference', () => {
    fc.assert(fc.property(classes(2), fc.array(value, {minLength: 6, maxLength: 6}), (all, lifts) => {
      const before = contemporaryMeans(all), after = contemporaryMeans(all.map((groups, place) => groups.map(values => values.map(x => x + (lifts[place] ?? 0)))))
      const difference = (found: typeof before) => (found?.groups[0]?.mean ?? 0) - (found?.groups[1]?.mean ?? 0)
      expect(difference(after)).toBeCloseTo(difference(before), 6)
    }))
  })

  it('is plain mean, SD and n in a single class', () => {
    const [one] = contemporaryMeans([[[205, 215, 202], [1]]])?.groups ?? []
    expect(one?.n).toBeCloseTo(3, 12)
    expect(one?.mean).toBeCloseTo(622 / 3, 9)
    expect(one?.sd).toBeCloseTo(Math.sqrt(278 / 3 / 2), 9)
  })

  it('says nothing of no class, and refuses classes that do not fit', () => {
    expect(contemporaryMeans([])).toBeNull()
    expect(contemporaryMeans([[[1], []]])).toBeNull()
    expect(() => contemporaryMeans([[[1]], [[1], [2]]])).toThrow(RangeError)
    expect(() => contemporaryMeans([[[NaN]]])).toThrow(RangeError)
  })
})
