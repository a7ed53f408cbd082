import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {
  CARRIER_MATE, carrierChance, missChance, OWN_DAUGHTER, RECESSIVE_MATE, type Misreading, type TestFamily,
} from '../../src/heredity/test-mating.ts'
import {expectClose} from '../expect-close.ts'

const misreading = fc.record({missed: fc.double({min: 0, max: 0.4, noNaN: true}), mistaken: fc.double({min: 0.001, max: 0.4, noNaN: true})})
const family = fc.tuple(fc.nat(100), fc.nat(100), fc.nat(4), fc.nat(3)).map(([one, other, clean, shown]): TestFamily => {
  const carrier = Math.min(one, other) / 100, recessive = (100 - Math.max(one, other)) / 100
  return {carrier, recessive, clean, shown}
})

/** The twin: each chick's two alleles are drawn from its parents', each look misread or not, all ways added up. Alleles: 0 dominant, 1 recessive. */
function readings(bird: readonly number[], {carrier, recessive, clean, shown = 0}: TestFamily, reading: Misreading): number {
  let sum = 0
  for (const [weight, mate] of [[recessive, [1, 1]], [carrier, [0, 1]], [1 - carrier - recessive, [0, 0]]] as const) {
    let readClean = 0
    for (const one of bird) for (const other of mate) readClean += (one === 1 && other === 1 ? reading.missed : 1 - reading.mistaken) / 4
    sum += weight * readClean ** clean * (1 - readClean) ** shown
  }
  return sum
}

describe('missChance(families)', () => {
  // Handbook values: (½)^n, (¾)^n; 0.010023 for 16 chicks of a known carrier, which many print as one in a hundred. Several chicks a daughter: independent code.
  it.each([
    [[{...RECESSIVE_MATE, clean: 7}], 1 / 128], [[{...CARRIER_MATE, clean: 16}], 0.010023], [[{...CARRIER_MATE, clean: 17}], 0.0075169],
    [Array<TestFamily>(5).fill({...OWN_DAUGHTER, clean: 4}), 1 - 0.876462], [Array<TestFamily>(5).fill({...OWN_DAUGHTER, clean: 8}), 1 - 0.949646],
    [Array<TestFamily>(7).fill({...OWN_DAUGHTER, clean: 5}), 1 - 0.965316], [Array<TestFamily>(6).fill({...OWN_DAUGHTER, clean: 10}), 1 - 0.978294],
    [Array<TestFamily>(23).fill({...OWN_DAUGHTER, clean: 1}), (7 / 8) ** 23],
  ])('of %j is %f', (families, expected) => expectClose(missChance(families), expected, 1e-6))

  it('is what drawing every allele and every misreading gives', () => {
    fc.assert(fc.property(fc.array(family, {maxLength: 4}), misreading, (families, reading) => {
      const clean = families.map(each => ({...each, shown: 0}))
      expectClose(missChance(clean, reading), clean.reduce((all, each) => all * readings([0, 1], each, reading), 1), 1e-12)
    }))
  })

  it('tells more by one chick of each of four daughters than by four of one', () => {
    fc.assert(fc.property(fc.integer({min: 2, max: 40}), chicks => {
      expect(missChance(Array<TestFamily>(chicks).fill({...OWN_DAUGHTER, clean: 1}))).toBeLessThan(missChance([{...OWN_DAUGHTER, clean: chicks}]))
    }))
  })

  it('is 1 without a chick, and ever with a mate that cannot tell', () => {
    expect(missChance([])).toBe(1)
    expect(missChance([{carrier: 0, recessive: 0, clean: 40}])).toBe(1)
  })

  it('does not run out of digits', () => expectClose(missChance([{carrier: 0.5, recessive: 0, clean: 100_000}]), 0.5, 1e-12))
  it('refuses a family with a recessive chick', () => expect(() => missChance([{...CARRIER_MATE, clean: 3, shown: 1}])).toThrow(RangeError))
  it.each([
    [{carrier: 0.6, recessive: 0.6, clean: 1}], [{carrier: -0.1, recessive: 0, clean: 1}], [{carrier: NaN, recessive: 0, clean: 1}], [{...CARRIER_MATE, clean: 1.5}], [{...CARRIER_MATE, clean: -1}],
  ])('refuses %j', wrong => expect(() => missChance([wrong])).toThrow(RangeError))
  it('refuses readings that are worth nothing', () => expect(() => missChance([{...CARRIER_MATE, clean: 1}], {missed: 0.5, mistaken: 0.5})).toThrow(RangeError))
})

describe('carrierChance(prior, families)', () => {
  // Common textbook posteriors of a bird that looks normal, out of two carriers (prior ⅔): 2/(2 + 2^n) with recessive mates; with carriers by independent code
  it.each([[1, 1 / 2], [3, 1 / 5], [5, 1 / 17], [7, 1 / 65]])('after %i clean chicks of a recessive mate is %f', (clean, expected) => {
    expectClose(carrierChance(2 / 3, [{...RECESSIVE_MATE, clean}]) ?? NaN, expected, 1e-12)
  })
  it.each([[1, 3 / 5], [3, 27 / 59], [5, 243 / 755], [7, 2187 / 10379], [11, 0.077891], [17, 0.014811]])('after %i clean chicks of a carrier is %f', (clean, expected) => {
    expectClose(carrierChance(2 / 3, [{...CARRIER_MATE, clean}]) ?? NaN, expected, 1e-6)
  })

  // The haemophilia figure: a carrier's child with three normal children of the telling sex, 1/9 (from memory); in fowl a cock and his daughters
  it.each([[1, 1 / 3], [3, 1 / 9], [5, 1 / 33]])('of a cock after %i clean daughters is %f', (clean, expected) => {
    expectClose(carrierChance(1 / 2, [{...RECESSIVE_MATE, clean}]) ?? NaN, expected, 1e-12)
  })

  it('is Bayes’ rule over every allele and misreading', () => {
    fc.assert(fc.property(fc.double({min: 0.01, max: 0.99, noNaN: true}), fc.array(family, {maxLength: 3}), misreading, (prior, families, reading) => {
      const carrier = prior * families.reduce((all, each) => all * readings([0, 1], each, reading), 1)
      const free = (1 - prior) * families.reduce((all, each) => all * readings([0, 0], each, reading), 1)
      expectClose(carrierChance(prior, families, reading) ?? NaN, carrier / (carrier + free), 1e-10)
    }))
  })

  it('falls with every clean chick and rises with a recessive one', () => {
    fc.assert(fc.property(fc.double({min: 0.01, max: 0.99, noNaN: true}), family, misreading, (prior, each, reading) => {
      const before = carrierChance(prior, [each], reading) ?? NaN
      const alone = {...each, clean: 0, shown: 0}
      expect(carrierChance(prior, [each, {...alone, clean: 1}], reading)).toBeLessThanOrEqual(before + 1e-12)
      expect(carrierChance(prior, [each, {...alone, shown: 1}], reading)).toBeGreaterThanOrEqual(before - 1e-12)
    }))
  })

  it('is certain by one recessive chick read rightly, and cannot be said when none could have it', () => {
    expect(carrierChance(0.01, [{...CARRIER_MATE, clean: 30, shown: 1}])).toBe(1)
    expect(carrierChance(0.01, [{carrier: 0, recessive: 0, clean: 3, shown: 1}])).toBeNull()
    expect(carrierChance(0, [{...CARRIER_MATE, clean: 0, shown: 1}])).toBeNull()
    expect(carrierChance(0, [{...CARRIER_MATE, clean: 5}])).toBe(0)
    expect(carrierChance(1, [{...CARRIER_MATE, clean: 5}])).toBe(1)
  })

  it.each([-0.1, 1.1, NaN])('refuses the prior %f', prior => expect(() => carrierChance(prior, [])).toThrow(RangeError))
})
