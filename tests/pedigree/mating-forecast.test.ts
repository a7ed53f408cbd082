import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {groupsAmong} from '../../src/pedigree/breeding-groups.ts'
import {rateAtRandom} from '../../src/pedigree/census-size.ts'
import {longRunRate, matingForecast, seasonPassing} from '../../src/pedigree/mating-forecast.ts'
import {clans, closedPen, closedPens, rollingPens, wholeFlock, type MatingSystem, type PenSize} from '../../src/pedigree/mating-systems.ts'
import type {Animal, Mating} from '../../src/pedigree/pedigree.ts'
import {chanceOf} from '../bench/chance.ts'
import {expectClose} from '../expect-close.ts'
import {flockByBird, foundersOf} from './flock-by-bird.ts'

const alike = (count: number, males: number, females: number): PenSize[] => Array.from({length: count}, () => ({males, females}))
const courseOf = (system: MatingSystem, seasons: number) => matingForecast(system, seasons).map(({inbreeding}) => inbreeding)
const inTurn = (count: number) => Array.from({length: count - 1}, (_, index) => index + 1)
const eight = {cockerels: 1, cocks: 1, pullets: 4, hens: 4}

describe('matingForecast(system, seasons): published systems', () => {
  it.each([
    // source: Wright 1921, Genetics 6:111; Falconer & Mackay 1996, Table 5.1
    ['brother × sister', closedPen({males: 1, females: 1}), [0, 1 / 4, 3 / 8, 1 / 2, 19 / 32, 43 / 64, 47 / 64, 201 / 256]],
    ['half sibs: one male, hens without number', closedPen({males: 1, females: 1e12}), [0, 0.125, 0.21875, 0.3046875, 0.380859375, 0.448730469]],
    ['double first cousins: two pairs, males exchanged', clans(alike(2, 1, 1)), [0, 0, 1 / 8, 3 / 16, 1 / 4, 5 / 16, 47 / 128, 107 / 256, 119 / 256, 65 / 128]],
  ])('%s', (_, system, expected) => {
    courseOf(system, expected.length).forEach((f, index) => expectClose(f, expected[index] ?? NaN, 1e-9, `generation ${index + 1}`))
  })

  // source: an independent working of the clan recursion, printed to 0.1 %
  it.each([
    ['3 clans of 1 and 4', clans(alike(3, 1, 4)), [0, 0, 3.9, 7.6, 14.2, 20.4, 31.4]],
    ['the same birds at random', wholeFlock(alike(3, 1, 4)), [0, 5.2, 9.9, 14.3, 22.6, 30, 42.9]],
    ['a closed pen of 1 and 4', closedPen({males: 1, females: 4}), [0, 15.6, 26.4, 36.2, 52, 63.8, 79.5]],
    ['5 clans of 1 and 5', clans(alike(5, 1, 5)), [0, 0, 3.8, 6.4, 10.6, 14.2, 20.8]],
  ])('%s', (_, system, printed) => {
    const course = courseOf(system, 12)
    // half a unit of the last digit, and a hair for 3.75 printed as 3.8
    ;[1, 2, 3, 4, 6, 8, 12].forEach((generation, index) => expectClose(100 * (course[generation - 1] ?? NaN), printed[index] ?? NaN, 0.05 + 1e-9, `generation ${generation}`))
  })

  it('rolling pens: the second and third year by hand', () => {
    // worked by hand. Year 2: cockerel × his mother's pen ½·1/16, cock × daughters ½·1/4. Year 3 apart: hens' pen 1/32 by shared dams, half sibs 1/8
    expect(courseOf(rollingPens(eight), 2)).toEqual([0, (1 / 32 + 1 / 8) / 2])
    expect(courseOf(rollingPens(eight, {fathers: true}), 2)).toEqual([0, 1 / 64])
    expect(courseOf(rollingPens(eight, {fathers: true, mothers: true}), 3)).toEqual([0, 0, (1 / 32 + 1 / 8) / 2])
  })

  it('closed pens side by side are each what it is alone, weighed by their hens', () => {
    const sizes = [{males: 1, females: 3}, {males: 2, females: 5}]
    const alone = sizes.map(size => courseOf(closedPen(size), 6))
    courseOf(closedPens(sizes), 6).forEach((f, index) => expectClose(f, (3 * (alone[0]?.[index] ?? NaN) + 5 * (alone[1]?.[index] ?? NaN)) / 8, 1e-12))
    expect(() => closedPens([])).toThrow(RangeError)
  })

  it('says the same of nothing', () => {
    expect(matingForecast(closedPen({males: 1, females: 1}), 0)).toEqual([])
  })
})

describe('longRunRate(system)', () => {
  it.each([
    // source: an independent working of the clan recursion, printed to 0.1 or 0.01 %
    ['3 clans of 1 and 4', clans(alike(3, 1, 4)), 0.037, 0.0005],
    ['the same birds at random', wholeFlock(alike(3, 1, 4)), 0.049, 0.0005],
    ['5 clans of 1 and 5', clans(alike(5, 1, 5)), 0.02, 0.0005],
    ['4 clans of 1 and 4', clans(alike(4, 1, 4)), 0.0262, 0.00005],
    ['the same, shifts 1, 2, 3 in turn', clans(alike(4, 1, 4), [1, 2, 3]), 0.0269, 0.00005],
    // source: Falconer & Mackay 1996, ch. 5 (from memory): 1 − (1 + √5)/4
    ['brother × sister', closedPen({males: 1, females: 1}), 1 - (1 + Math.sqrt(5)) / 4, 1e-9],
  ])('%s', (_, system, expected, tolerance) => expectClose(longRunRate(system), expected, tolerance))

  it.each([[8, 0.14], [12, 0.065], [16, 0.035]])('%d pairs in a circle', (pairs, off) => {
    // source: Kimura & Crow 1963, Genet. Res. 4:399, abstract: circular pair mating, 1 − λ ~ π²/(N + 12)², the nearer the more pairs
    const approximate = Math.PI ** 2 / (2 * pairs + 12) ** 2
    expectClose(longRunRate(clans(alike(pairs, 1, 1))) / approximate, 1, off, pairs)
  })

  it.each([4, 6, 8, 16])('%d pairs, every shift in turn', pairs => {
    // source: Farid et al. 1987, Theor. Appl. Genet. 73:506, abstract: mean rate about 1/(4N − (log2 N + 1)), within a cycle from below −3 % to above 6 %
    const birds = 2 * pairs, system = clans(alike(pairs, 1, 1), inTurn(pairs))
    expectClose(longRunRate(system) * (4 * birds - Math.log2(birds) - 1), 1, 0.015, pairs)
    const rates = matingForecast(system, 12 * (pairs - 1)).slice(-(pairs - 1)).map(({rate}) => rate ?? NaN)
    expect(Math.max(...rates)).toBeGreaterThan(0.06)
    if (pairs > 4) expect(Math.min(...rates)).toBeLessThan(-0.03)
  })

  it('at random is the root of the recursion, and near the rule of thumb with many birds', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 40}), fc.integer({min: 1, max: 80}), (males, females) => {
      // 1 − F, two generations: P″ = (1 − c) P′ + (c/2) P with c = ¼ (1/M + 1/N); source: Wright 1931, Genetics 16:97
      const c = (1 / males + 1 / females) / 4
      const rate = longRunRate(closedPen({males, females}))
      expectClose(rate, 1 - ((1 - c) + Math.sqrt(1 + c * c)) / 2, 1e-6, {males, females})
      expect(rate).toBeLessThan(rateAtRandom(males, females))
      expect(rate).toBeGreaterThan(rateAtRandom(males, females) * (1 - rateAtRandom(males, females)) - 1e-6)
    }), {numRuns: 60})
  })
})

const size = fc.integer({min: 1, max: 3})
const anyPen = fc.record({males: size, females: size})
const anySystem: fc.Arbitrary<MatingSystem> = fc.oneof(
  fc.integer({min: 1, max: 4}).chain(count => fc.tuple(fc.array(anyPen, {minLength: count, maxLength: count}), fc.boolean()))
    .map(([pens, turning]) => clans(pens, turning && pens.length > 1 ? inTurn(pens.length) : [1])),
  fc.tuple(fc.record({cockerels: size, cocks: size, pullets: size, hens: size}), fc.record({fathers: fc.boolean(), mothers: fc.boolean()}))
    .map(([birds, apart]) => rollingPens(birds, apart)),
)

/** Two generations of birds, and breeders among them for every group. */
const anyStart = ({sizes}: MatingSystem) => {
  const groups = sizes.length
  // a kept group that shrinks is a mean over who is kept, which one pedigree does not show
  const most = Math.min(...sizes)
  return fc.tuple(
    fc.array(fc.tuple(fc.nat(5), fc.nat(4)), {minLength: 6 + 3 * groups, maxLength: 6 + 3 * groups}),
    fc.array(fc.integer({min: 1, max: most}), {minLength: groups, maxLength: groups}),
  ).map(([parents, counts]) => {
    const founder: Animal = {sex: 'unknown', base: null, matings: []}
    const born = parents.map(([sire, step], index): Animal => {
      // six of the founders, the others of those six
      const from = index < 6 ? 0 : 6
      return {sex: 'unknown', base: null, matings: [{sire: from + sire, dam: from + (sire + 1 + step) % 6, chance: 1}]}
    })
    const birds = [...Array.from({length: 6}, () => founder), ...born]
    const alive = birds.map((_, index) => index).slice(6)
    return {birds, members: counts.map(count => alive.splice(0, count))}
  })
}

/** Expects the forecast to be what the pedigree, written out bird by bird, gives. */
function expectSame(system: MatingSystem, {birds, members}: {readonly birds: readonly Animal[]; readonly members: readonly (readonly number[])[]}, seasons: number): void {
  const {pedigree, chicks} = flockByBird(system, seasons, birds, members)
  const {inbreeding, between, among} = coancestry(pedigree)
  const course = matingForecast(system, seasons, groupsAmong(among(birds.map((_, bird) => bird)), members))
  expect(course).toHaveLength(seasons)
  course.forEach(({inbreeding: f, byPen, kinship}, index) => {
    const {any: [one, other], byPen: probes} = chicks[index] ?? {any: [NaN, NaN], byPen: []}
    expectClose(f, inbreeding[one]?.mean ?? NaN, 1e-12, `F of season ${index + 1}`)
    expectClose(kinship, between(one, other), 1e-12, `kinship of season ${index + 1}`)
    expect(byPen).toHaveLength(probes.length)
    probes.forEach((probe, pen) => expectClose(byPen[pen] ?? NaN, inbreeding[probe]?.mean ?? NaN, 1e-12, `F of pen ${pen}, season ${index + 1}`))
  })
}

describe('matingForecast(system, seasons, start): its slow twin', () => {
  it('equals the coancestry of the flock written out bird by bird, from unrelated founders', () => {
    fc.assert(fc.property(anySystem, system => expectSame(system, foundersOf(system), 6)), {numRuns: 60})
  })

  it('equals it from birds that are kin, in numbers of their own', () => {
    fc.assert(fc.property(anySystem.chain(system => fc.tuple(fc.constant(system), anyStart(system))),
      ([system, start]) => expectSame(system, start, 5)), {numRuns: 60})
  })

  it('F of the first chicks is the mean kinship of the mates', () => {
    const kinship = [[0.5, 0.1, 0.2, 0.3], [0.1, 0.5, 0.4, 0], [0.2, 0.4, 0.5, 0.05], [0.3, 0, 0.05, 0.6]]
    const [first] = matingForecast(closedPen({males: 1, females: 5}), 1, groupsAmong(kinship, [[0], [1, 2, 3]]))
    expect(first?.inbreeding).toBeCloseTo((0.1 + 0.2 + 0.3) / 3, 15)
    // males of clan 0 go to the hens of clan 1
    const [apart] = matingForecast(clans(alike(2, 1, 1)), 1, groupsAmong(kinship, [[0], [1], [2], [3]]))
    expect(apart?.byPen).toEqual([0.4, 0.3])
  })

  it('a group that is kept in part is a mean over those that may be kept', () => {
    const kinship = [[0.5, 0.25, 0, 0.1, 0], [0.25, 0.6, 0.2, 0, 0], [0, 0.2, 0.5, 0, 0.05], [0.1, 0, 0, 0.5, 0.15], [0, 0, 0.05, 0.15, 0.5]]
    const system = rollingPens({cockerels: 2, cocks: 1, pullets: 1, hens: 1})
    const [, second] = matingForecast(system, 2, groupsAmong(kinship, [[0, 1], [2], [3], [4]]))
    // cock 0 or 1 with the one pullet, a chick of 2 × 3 or of 0 or 1 × 4; hen 3 with cockerels of the same hatch
    const chickWith = (bird: number) => {
      const of = (other: number) => kinship[bird]?.[other] ?? NaN
      return ((of(2) + of(3)) / 2 + ((of(0) + of(1)) / 2 + of(4)) / 2) / 2
    }
    expect(second?.byPen[0]).toBeCloseTo(chickWith(3), 15)
    expect(second?.byPen[1]).toBeCloseTo((chickWith(0) + chickWith(1)) / 2, 15)
  })

  // F of a flock strays by less than 10 points, the mean of 500 by 0.45
  it.each([
    ['rolling pens', rollingPens(eight)],
    ['rolling pens, fathers and daughters apart', rollingPens(eight, {fathers: true})],
    ['rolling pens, parents and chicks apart', rollingPens(eight, {fathers: true, mothers: true})],
    ['3 clans of 1 and 4', clans(alike(3, 1, 4))],
    ['4 clans, shifts in turn', clans(alike(4, 1, 2), [1, 2, 3])],
  ])('%s: the mean of flocks drawn by chance', (_, system) => {
    const flocks = 500, seasons = 8
    const chance = chanceOf(20260101)
    /** by its chance, all matings of a pen being equally likely */
    const draw = (matings: readonly Mating[]) => chance.oneOf(matings)
    const {birds, members} = foundersOf(system)
    const sum = Array.from({length: seasons}, () => 0)
    for (let flock = 0; flock < flocks; flock++) {
      const {pedigree, chicks} = flockByBird(system, seasons, birds, members, draw)
      const {inbreeding} = coancestry(pedigree)
      chicks.forEach(({any: [chick]}, index) => (sum[index] = (sum[index] ?? 0) + (inbreeding[chick]?.mean ?? NaN)))
    }
    courseOf(system, seasons).forEach((f, index) => expectClose((sum[index] ?? NaN) / flocks, f, 0.0125, `season ${index + 1}`))
  })
})

describe('matingForecast(system, seasons): laws', () => {
  it('F and kinship lie between 0 and 1', () => {
    fc.assert(fc.property(anySystem, system => {
      for (const {inbreeding, kinship, byPen} of matingForecast(system, 30)) {
        for (const each of [inbreeding, kinship, ...byPen]) expect(each >= -1e-12 && each <= 1).toBe(true)
      }
    }))
  })

  it('in a closed pen F never falls, and is the kinship of the season before', () => {
    fc.assert(fc.property(anyPen, pen => {
      const course = matingForecast(closedPen(pen), 20)
      course.slice(1).forEach(({inbreeding, rate}, index) => {
        expectClose(inbreeding, course[index]?.kinship ?? NaN, 1e-12)
        expect(rate ?? NaN).toBeGreaterThan(0)
      })
    }))
  })

  it('kinship of the whole flock never falls under any system without kept breeders', () => {
    fc.assert(fc.property(anySystem.filter(({plan}) => plan(1).next.every(origin => 'chicksOf' in origin)), system => {
      const course = matingForecast(system, 20)
      course.slice(1).forEach(({kinship}, index) => expect(kinship).toBeGreaterThanOrEqual((course[index]?.kinship ?? NaN) - 1e-12))
    }))
  })

  it('one clan is a closed pen', () => {
    fc.assert(fc.property(anyPen, fc.integer({min: 1, max: 5}), (pen, shift) => {
      expect(matingForecast(clans([pen], [shift]), 10)).toEqual(matingForecast(closedPen(pen), 10))
    }))
  })

  it('more males, or more hens in every pen, never raise F', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 5}), size, size, fc.boolean(), (count, males, females, cocks) => {
      const fewer = courseOf(clans(alike(count, males, females)), 15)
      const more = courseOf(clans(alike(count, males + (cocks ? 1 : 0), females + (cocks ? 0 : 1))), 15)
      more.forEach((f, index) => expect(f).toBeLessThanOrEqual((fewer[index] ?? NaN) + 1e-12))
    }))
  })

  it('males moved on stay below the same birds at random', () => {
    fc.assert(fc.property(fc.integer({min: 3, max: 6}), size, size, (count, males, females) => {
      const random = courseOf(wholeFlock(alike(count, males, females)), 15)
      courseOf(clans(alike(count, males, females)), 15).forEach((f, index) => expect(f).toBeLessThanOrEqual(random[index] ?? NaN))
    }))
  })

  it('keeping parents and chicks apart in rolling pens never raises F', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 4}), fc.integer({min: 2, max: 8}), (males, females) => {
      const birds = {cockerels: males, cocks: males, pullets: females, hens: females}
      const mixed = courseOf(rollingPens(birds), 15)
      courseOf(rollingPens(birds, {fathers: true, mothers: true}), 15).forEach((f, index) => expect(f).toBeLessThanOrEqual((mixed[index] ?? NaN) + 1e-12))
    }))
  })
})

describe('seasonPassing(course, limit)', () => {
  const course = matingForecast(clans(alike(3, 1, 4)), 12)

  it('finds the first season above the limit', () => {
    // source: the same working: three small clans pass 10 % by generation 5 and 20 % by generation 8
    expect([0.1, 0.2].map(limit => seasonPassing(course, limit))).toEqual([5, 8])
    expect(seasonPassing(course, 0.5)).toBeNull()
    expect(seasonPassing([], 0)).toBeNull()
  })

  it('has not passed on the limit itself', () => {
    const sibs = matingForecast(closedPen({males: 1, females: 1}), 4)
    expect(seasonPassing(sibs, 0.25)).toBe(3)
    expect(seasonPassing(sibs, 0.249)).toBe(2)
  })

  it('finds the first rate above the limit', () => {
    expect(course.map(({rate}) => rate).slice(0, 3)).toEqual([null, 0, 0.0390625])
    expect(seasonPassing(course, 0.01, 'rate')).toBe(3)
    expect(seasonPassing(course, 0.05, 'rate')).toBeNull()
  })
})

describe('what makes no flock', () => {
  it.each<[string, () => unknown]>([
    ['no clan', () => clans([])],
    ['no shift', () => clans(alike(3, 1, 4), [])],
    ['males that come home', () => clans(alike(3, 1, 4), [1, 2, 3])],
    ['half a shift', () => clans(alike(3, 1, 4), [0.5])],
    ['a pen without a male', () => matingForecast(closedPen({males: 0, females: 4}), 2)],
    ['half a hen', () => matingForecast(closedPen({males: 1, females: 2.5}), 2)],
    ['half a season', () => matingForecast(closedPen({males: 1, females: 4}), 1.5)],
    ['a start of other groups', () => matingForecast(closedPen({males: 1, females: 4}), 2, groupsAmong([[0.5]], [[0]]))],
    ['a bird in two groups', () => groupsAmong([[0.5, 0], [0, 0.5]], [[0], [0, 1]])],
    ['a bird without kinships', () => groupsAmong([[0.5]], [[0], [1]])],
    ['an empty group', () => groupsAmong([[0.5]], [[0], []])],
  ])('%s', (_, make) => expect(make).toThrow(RangeError))
})
