import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {contemporaryMeans} from '../../src/statistics/contemporary-means.ts'
import {contrast} from '../../src/statistics/contrast.ts'
import {expectClose} from '../expect-close.ts'
import {chance} from '../findings/vigour-book.ts'

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

describe('contemporaryMeans(classes, families)', () => {
  const named = (all: readonly (readonly (readonly number[])[])[]) => all.map((groups, at) => groups.map((values, group) => values.map((_, bird) => `${group} ${(bird + at) % 3}`)))

  it('agrees with its slow twin, which leaves family after family out of the sum', () => {
    fc.assert(fc.property(classes(2), all => {
      const names = named(all), found = contemporaryMeans(all, names), plain = contemporaryMeans(all)
      found?.groups.forEach(({mean, n, sd, freedom}, group) => {
        const whole = all.flatMap((each, at) => (each.every(values => values.length > 0) ? [at] : [])), weight = (at: number) => 1 / (all[at] ?? []).map(values => 1 / values.length).reduce((a, b) => a + b, 0)
        const total = whole.map(weight).reduce((a, b) => a + b, 0), families = [...new Set(whole.flatMap(at => names[at]?.[group] ?? []))]
        const adds = families.map(family => whole.map(at => {
          const values = all[at]?.[group] ?? [], own = values.filter((_, bird) => names[at]?.[group]?.[bird] === family), middle = values.reduce((a, b) => a + b, 0) / values.length
          const share = (weight(at) / total) * (own.length / values.length)
          return own.length === 0 ? [0, 0] : [share, share * (own.reduce((a, b) => a + b, 0) / own.length - middle)]
        }).reduce(([a = 0, b = 0], [c = 0, d = 0]) => [a + c, b + d], [0, 0]))
        const drawn = (1 - 1 / families.length) * adds.map(([share = 0, add = 0]) => (add / (1 - share)) ** 2).reduce((a, b) => a + b, 0), one = plain?.groups[group]
        expectClose(mean, one?.mean ?? NaN, 1e-9)
        if (sd === null) expect(families.length).toBe(1)
        else expect(Math.abs(sd ** 2 / n - Math.max(drawn, (one?.sd ?? 0) ** 2 / (one?.n ?? 1)))).toBeLessThan(1e-6 * (1 + drawn))
        expect(freedom).toBe(Math.min(one?.freedom ?? 0, families.length - 1))
      })
    }))
  })

  it('holds the truth where sibs are alike, as birds one by one do not', () => {
    let plain = 0, drawn = 0
    for (let run = 0; run < 400; run++) {
      const {normal, below} = chance(1000 + 7 * run), lines = [0, 1].map(() => Array.from({length: 8}, () => 0.5 * normal()))
      const birds = Array.from({length: 6}, () => lines.map(families => families.flatMap((good, family) => Array.from({length: below(3)}, () => ({name: String(family), value: good + Math.sqrt(0.75) * normal()})))))
      const values = birds.map(groups => groups.map(own => own.map(({value}) => value))), names = birds.map(groups => groups.map(own => own.map(({name}) => name)))
      const holds = (found: ReturnType<typeof contemporaryMeans>) => {
        const [a, b] = found?.groups ?? [], of = a && b && contrast([{of: a, times: 1}, {of: b, times: -1}])
        return of && of.interval.low <= 0 && of.interval.high >= 0
      }
      if (holds(contemporaryMeans(values))) plain += 1
      if (holds(contemporaryMeans(values, names))) drawn += 1
    }
    expect(drawn / 400).toBeGreaterThan(0.92)
    expect(plain / 400).toBeLessThan(0.87)
  })
})
