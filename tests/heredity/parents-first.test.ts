import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {parentsFirst} from '../../src/heredity/parents-first.ts'
import {aboveOf, type Animal} from '../../src/pedigree/pedigree.ts'

const chickOf = (sire: number | null, dam: number | null): Animal => ({sex: 'unknown', base: null, matings: [{sire, dam, chance: 1}]})

describe('parentsFirst(animals)', () => {
  it('names every animal once, each after all that stands above it, whatever order they were given in', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(), fc.nat()), {minLength: 1, maxLength: 30}), fc.infiniteStream(fc.nat()), (parents, ranks) => {
      // bird k of the flock has parents among those before it; then all are numbered anew
      const places = parents.map((_, bird) => ({bird, rank: ranks.next().value as number})).sort((a, b) => a.rank - b.rank || a.bird - b.bird).map(({bird}) => bird)
      const numberOf = new Map(places.map((bird, number) => [bird, number]))
      const animals = places.map(bird => (bird < 2 ? {sex: 'unknown', base: null, matings: []} as const : chickOf(numberOf.get(parents[bird]![0] % bird)!, numberOf.get(parents[bird]![1] % bird)!)))
      const order = parentsFirst(animals), placeOf = new Map(order.map((index, place) => [index, place]))
      expect([...order].sort((a, b) => a - b)).toEqual(animals.map((_, index) => index))
      animals.forEach((animal, index) => { for (const above of aboveOf(animal)) expect(placeOf.get(above)).toBeLessThan(placeOf.get(index)!) })
    }), {seed: 5, numRuns: 60})
  })

  it('goes by stand-ins and by birds that one may be, too', () => {
    const animals: Animal[] = [{...chickOf(null, null), damStandIn: 1}, {sex: 'female', base: null, matings: [], oneOf: [{animal: 2, chance: 1}]}, {sex: 'female', base: null, matings: []}]
    expect(parentsFirst(animals)).toEqual([2, 1, 0])
  })

  it('throws where a bird is its own ancestor', () => {
    expect(() => parentsFirst([chickOf(1, null), chickOf(2, null), chickOf(null, 0)])).toThrow(RangeError)
    expect(() => parentsFirst([chickOf(0, null)])).toThrow(RangeError)
  })

  it('is not stopped by a line of twenty thousand generations', () => {
    expect(parentsFirst(Array.from({length: 20_000}, (_, index) => (index === 19_999 ? chickOf(null, null) : chickOf(index + 1, null))))[0]).toBe(19_999)
  })
})
