import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chicksToClear, chicksToFindCarrier, familiesOf, MOST_TEST_CHICKS, smallestCount, type TestPlan} from '../../src/heredity/test-mating-size.ts'
import {CARRIER_MATE, carrierChance, missChance, OWN_DAUGHTER, READ_RIGHT, RECESSIVE_MATE} from '../../src/heredity/test-mating.ts'

const plan = fc.record({
  mate: fc.tuple(fc.integer({min: 1, max: 100}), fc.nat(100)).map(([known, part]) => ({carrier: (known * part) / 10_000, recessive: (known * (100 - part)) / 10_000})),
  chicksPerMate: fc.constantFrom(undefined, 1, 2, 5),
  misreading: fc.constantFrom(READ_RIGHT, {missed: 0.02, mistaken: 0}, {missed: 0.05, mistaken: 0.01}),
}).map(({chicksPerMate, ...rest}): TestPlan => (chicksPerMate === undefined ? rest : {...rest, chicksPerMate}))

/** The first number that does, one chick after the other. */
function oneByOne(enough: (chicks: number) => boolean): number | null {
  for (let chicks = 0; chicks <= 400; chicks++) if (enough(chicks)) return chicks
  return null
}

describe('chicksToFindCarrier(limit, plan)', () => {
  // Handbook table of test matings (Johansson & Rendel 1968 and others, from memory), recomputed; 17 where many print 16. The last two rows have no published figure.
  it.each([
    [{mate: RECESSIVE_MATE}, 5, 7, 10], [{mate: CARRIER_MATE}, 11, 17, 25], [{mate: OWN_DAUGHTER, chicksPerMate: 1}, 23, 35, 52],
    [{mate: {carrier: 2 / 3, recessive: 0}, chicksPerMate: 1}, 17, 26, 38], [{mate: {carrier: 1 / 4, recessive: 0}, chicksPerMate: 1}, 47, 72, 108],
  ])('of %j needs %i, %i and %i', (each, five, one, tenth) => {
    expect([0.05, 0.01, 0.001].map(limit => chicksToFindCarrier(limit, each))).toEqual([five, one, tenth])
  })

  it('is the first that does, and no fewer do', () => {
    fc.assert(fc.property(plan, fc.constantFrom(0.2, 0.05, 0.01), (each, limit) => {
      const got = chicksToFindCarrier(limit, each)
      if (each.chicksPerMate === undefined && 1 - each.mate.carrier - each.mate.recessive > limit) {
        expect(got).toBeNull()
        return
      }
      const slow = oneByOne(chicks => missChance(familiesOf(chicks, each), each.misreading) <= limit * (1 + 1e-12))
      if (slow !== null) expect(got).toBe(slow)
      else expect(got === null || got > 400).toBe(true)
    }))
  })

  it('takes no fewer for a stricter limit, or more misses', () => {
    fc.assert(fc.property(plan, each => {
      const [lax, strict, misread] = [chicksToFindCarrier(0.1, each), chicksToFindCarrier(0.02, each), chicksToFindCarrier(0.1, {...each, misreading: {missed: 0.3, mistaken: each.misreading?.mistaken ?? 0}})]
      expect(strict ?? Infinity).toBeGreaterThanOrEqual(lax ?? Infinity)
      expect(misread ?? Infinity).toBeGreaterThanOrEqual(lax ?? Infinity)
    }))
  })

  it('tells that one mate of unknown kind never will, nor one without the allele', () => {
    expect(chicksToFindCarrier(0.05, {mate: OWN_DAUGHTER})).toBeNull()
    expect(chicksToFindCarrier(0.05, {mate: {carrier: 0, recessive: 0}, chicksPerMate: 1, misreading: {missed: 0, mistaken: 0.02}})).toBeNull()
  })

  it('keeps to a limit met exactly', () => expect([1 / 8, 1 / 32, 1 / 1024].map(limit => chicksToFindCarrier(limit, {mate: RECESSIVE_MATE}))).toEqual([3, 5, 10]))

  it.each([0, 1, NaN])('refuses the limit %f', limit => expect(() => chicksToFindCarrier(limit, {mate: CARRIER_MATE})).toThrow(RangeError))
})

describe('chicksToClear(prior, limit, plan)', () => {
  // By the textbook posteriors 2/(2 + 2^n): 5 chicks leave 1/17, 6 leave 1/33
  it('needs 6 for one in twenty from two to three, though 5 find 31 carriers of 32', () => expect(chicksToClear(2 / 3, 0.05, {mate: RECESSIVE_MATE})).toBe(6))
  it('needs 17 against a carrier for what 17 leave, and 18 for a hair less', () => {
    // 17 clean chicks leave 0.014811 (independent code)
    expect(chicksToClear(2 / 3, 0.014812, {mate: CARRIER_MATE})).toBe(17)
    expect(chicksToClear(2 / 3, 0.014810, {mate: CARRIER_MATE})).toBe(18)
  })

  it('is the first that does, and no fewer do', () => {
    fc.assert(fc.property(plan, fc.integer({min: 1, max: 99}), fc.constantFrom(0.05, 0.01), (each, percent, limit) => {
      const got = chicksToClear(percent / 100, limit, each)
      const slow = oneByOne(chicks => (carrierChance(percent / 100, familiesOf(chicks, each), each.misreading) ?? 1) <= limit * (1 + 1e-12))
      if (slow !== null) expect(got).toBe(slow)
      else expect(got === null || got > 400).toBe(true)
    }))
  })

  it('asks for none where the bird is clear enough already, and fewer of a bird less suspected', () => {
    expect(chicksToClear(0.04, 0.05, {mate: CARRIER_MATE})).toBe(0)
    expect(chicksToClear(0.1, 0.05, {mate: RECESSIVE_MATE})).toBe(2)
  })
  it('never clears a bird that is known to carry', () => expect(chicksToClear(1, 0.05, {mate: RECESSIVE_MATE})).toBeNull())
})

describe('familiesOf(chicks, plan)', () => {
  it('fills one mate after the other', () => {
    expect(familiesOf(7, {mate: OWN_DAUGHTER, chicksPerMate: 3}).map(({clean}) => clean)).toEqual([3, 3, 1])
    expect(familiesOf(6, {mate: OWN_DAUGHTER, chicksPerMate: 3}).map(({clean}) => clean)).toEqual([3, 3])
    expect(familiesOf(7, {mate: OWN_DAUGHTER}).map(({clean}) => clean)).toEqual([7])
  })
  it('loses no chick', () => {
    fc.assert(fc.property(fc.nat(300), fc.integer({min: 1, max: 12}), (chicks, chicksPerMate) => {
      expect(familiesOf(chicks, {mate: OWN_DAUGHTER, chicksPerMate}).reduce((sum, {clean}) => sum + clean, 0)).toBe(chicks)
    }))
  })
  it('refuses what is no count', () => {
    expect(() => familiesOf(-1, {mate: CARRIER_MATE})).toThrow(RangeError)
    expect(() => familiesOf(3, {mate: CARRIER_MATE, chicksPerMate: 0})).toThrow(RangeError)
  })
})

describe('smallestCount(enough)', () => {
  it('is the first that is enough, one by one', () => {
    fc.assert(fc.property(fc.integer({min: 0, max: 400}), least => {
      expect(smallestCount(count => count >= least)).toBe(oneByOne(count => count >= least))
    }))
  })
  it('is the most there is, or none', () => {
    expect(smallestCount(count => count >= MOST_TEST_CHICKS)).toBe(MOST_TEST_CHICKS)
    expect(smallestCount(() => false)).toBeNull()
  })
  it('gives the value of its example', () => expect(smallestCount(count => count * count >= 10)).toBe(4))
})
