import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {checkWanted, chicksForWanted} from '../../src/heredity/hatch-size.ts'

/** The twin: the chance of fewer than k, chick after chick, until it is small enough. */
function chickByChick(wanted: number, chance: number, assurance: number): number | null {
  let counts = [1, ...Array<number>(wanted).fill(0)] // chance of 0, 1 … so far; the last holds k and more
  for (let chicks = 0; chicks <= 2000; chicks++) {
    if ((counts[wanted] ?? 0) >= assurance - 1e-12) return chicks
    counts = counts.map((own, count) => own * (count === wanted ? 1 : 1 - chance) + (count === 0 ? 0 : (counts[count - 1] ?? 0) * chance))
  }
  return null
}

describe('chicksForWanted(k, p, a)', () => {
  // Sedcole 1977, Crop Sci. 17:667–668 (table from memory), recomputed exactly
  const wanted = [1, 2, 3, 4, 5, 6, 8, 10, 15]
  it.each([
    [1 / 2, 0.95, [5, 8, 11, 13, 16, 18, 23, 28, 40]], [1 / 4, 0.95, [11, 18, 23, 29, 34, 40, 50, 60, 84]], [1 / 8, 0.95, [23, 37, 49, 60, 71, 82, 103, 123, 172]],
    [1 / 16, 0.95, [47, 75, 99, 122, 144, 166, 208, 248, 347]], [1 / 2, 0.99, [7, 11, 14, 17, 19, 22, 27, 33, 45]], [1 / 4, 0.99, [17, 24, 31, 37, 43, 49, 60, 70, 96]],
  ])('at a chance of %f and %f is %j', (chance, assurance, numbers) => {
    expect(wanted.map(k => chicksForWanted(k, chance, assurance))).toEqual(numbers)
  })
  it('does not round down at the border', () => expect(chicksForWanted(2, 3 / 32, 0.9)).toBe(41))

  it('is the first number that does, chick by chick', () => {
    fc.assert(fc.property(fc.nat(12), fc.integer({min: 1, max: 100}), fc.constantFrom(0.5, 0.9, 0.95, 0.99, 0.999), (k, percent, assurance) => {
      expect(chicksForWanted(k, percent / 100, assurance)).toBe(chickByChick(k, percent / 100, assurance))
    }))
  })

  it('takes more for more, and for a rarer kind', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 20}), fc.integer({min: 5, max: 99}), (k, percent) => {
      const own = chicksForWanted(k, percent / 100, 0.95) ?? Infinity
      expect(own).toBeGreaterThanOrEqual(k)
      expect(chicksForWanted(k + 1, percent / 100, 0.95) ?? Infinity).toBeGreaterThan(own)
      expect(chicksForWanted(k, (percent + 1) / 100, 0.95) ?? Infinity).toBeLessThanOrEqual(own)
    }))
  })

  it('has its ends', () => {
    expect(chicksForWanted(0, 0, 0.95)).toBe(0)
    expect(chicksForWanted(3, 1, 0.95)).toBe(3)
    expect(chicksForWanted(1, 0, 0.95)).toBeNull()
    expect(chicksForWanted(1, 1e-6, 0.95)).toBeNull()
  })
  it.each([[1.5, 0.5, 0.95], [-1, 0.5, 0.95], [1, 1.5, 0.95], [1, 0.5, 1], [1, 0.5, 0], [1, 0.5, NaN]])('refuses %f at %f and %f', (k, p, a) => expect(() => chicksForWanted(k, p, a)).toThrow(RangeError))
})

describe('checkWanted(k, a)', () => {
  it('lets a count and an assurance pass', () => expect(() => checkWanted(3, 0.95)).not.toThrow())
  it('throws at others', () => expect(() => checkWanted(3, 1)).toThrow(RangeError))
})
