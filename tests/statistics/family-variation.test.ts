import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {coefficientOfVariationInterval} from '../../src/statistics/coefficient-of-variation.ts'
import {familyVariation, type OfFamily} from '../../src/statistics/family-variation.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {expectClose} from '../expect-close.ts'
import '../seeded.ts'

const single = (values: readonly number[]): OfFamily[] => values.map((value, family) => ({family, value}))
const families = (...all: readonly (readonly number[])[]): OfFamily[] => all.flatMap((values, family) => values.map(value => ({family, value})))

describe('familyVariation(classes)', () => {
  it('is the χ² interval of a variance where every bird is a family of its own', () => {
    // by hand: 9 to 13, mean 11, s² 2.5, CV² 2.5/121 = 0.020661; χ² of 4 degrees 11.1433 and 0.4844 (Fisher & Yates, table IV): √(0.020661·4/0.4844) = 0.4130, √(0.020661·4/11.1433) = 0.0861
    const found = familyVariation([single([9, 10, 11, 12, 13])])
    expectClose(found?.high ?? NaN, 0.413, 1e-4)
    expectClose(found?.low ?? NaN, 0.0861, 1e-4)
  })

  it('parts what lies between families from what lies inside them, by hand', () => {
    // five families of two at 90, 95, 100, 105, 110, each ± 1: B = 2·250/4 = 125, W = 10·1/5 = 2, n₀ 2: V = 62.5 + 1; of the mean squared 0.00635, and
    // high² = (63.5 + √((62.5·(4/0.484419 − 1))² + (1·(5/0.831212 − 1))²))/10000, χ² of 4 and 5 degrees from the same table
    const found = familyVariation([families([89, 91], [94, 96], [99, 101], [104, 106], [109, 111])])
    expectClose((found?.high ?? NaN) ** 2 * 10_000, 63.5 + Math.hypot(62.5 * (4 / 0.484419 - 1), 5 / 0.831212 - 1), 1e-2)
    // birds one by one, as if no kin, would have half as much
    expect(found?.high).toBeGreaterThan(1.5 * (coefficientOfVariationInterval(pooledVariation([[89, 91, 94, 96, 99, 101, 104, 106, 109, 111]]).cv, 9)?.high ?? NaN))
  })

  it('says nothing under five families, nor of families that no class holds against each other, nor where no bird differs', () => {
    expect(familyVariation([families([89, 91], [94, 96], [99, 101], [104, 106, 107, 108])])).toBeNull()
    expect(familyVariation([9, 8, 7, 6, 5].map((value, family) => [value, value + 1, value + 2].map(each => ({family, value: each}))))).toBeNull()
    expect(familyVariation([single([7, 7, 7, 7, 7, 7])])).toBeNull()
    expect(familyVariation([])).toBeNull()
    expect(() => familyVariation([single([1, 2, 0, 3, 4])])).toThrow(RangeError)
  })

  it('counts a family of two classes once', () => {
    // four families in each of two classes, the same four: three to compare; with a fifth in one of them four
    const four = families([89, 91], [94, 96], [99, 101], [104, 106])
    expect(familyVariation([four, four])).toBeNull()
    expect(familyVariation([four, families([89, 91], [94, 96], [99, 101], [104, 106], [93])])).not.toBeNull()
  })

  it('is the same whatever the unit and the order', () => {
    fc.assert(fc.property(fc.array(fc.array(fc.integer({min: 1500, max: 3000}), {minLength: 1, maxLength: 5}), {minLength: 5, maxLength: 8}), fc.double({min: 0.1, max: 10, noNaN: true}), (grams, unit) => {
      const own = families(...grams), found = familyVariation([own]), turned = familyVariation([own.map(({family, value}) => ({family: 100 - family, value: value * unit})).toReversed()])
      expect(turned === null).toBe(found === null)
      if (!found || !turned) return
      expectClose(turned.high, found.high, 1e-9)
      expect(found.low).toBeLessThan(found.high)
    }))
  })

  it('lies under the truth no oftener than 2.5 in a hundred where brothers are alike, and McKay’s far oftener', () => {
    const chance = chanceOf(7), part = (): number => (chance.next() + 0.5) / 2 ** 32, normal = (): number => Math.sqrt(-2 * Math.log(part())) * Math.cos(2 * Math.PI * part())
    let under = 0, plain = 0
    for (let run = 0; run < 600; run++) {
      const grams = Array.from({length: 8}, () => {
        const cock = normal()
        return Array.from({length: 10}, () => 2000 * (1 + 0.1 * (Math.sqrt(0.5) * cock + Math.sqrt(0.5) * normal())))
      })
      if ((familyVariation([families(...grams)])?.high ?? NaN) < 0.1) under++
      if ((coefficientOfVariationInterval(pooledVariation([grams.flat()]).cv, 79)?.high ?? NaN) < 0.1) plain++
    }
    expect(under / 600).toBeLessThan(0.04)
    expect(plain / 600).toBeGreaterThan(0.12)
  })
})
