import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {pairKinship} from '../../src/findings/pair-kinship.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import type {Animal, Mating, Pedigree} from '../../src/pedigree/pedigree.ts'
import {expectClose} from '../expect-close.ts'
import {bird} from '../pages/small-logbook.ts'
import {anyPedigree} from '../pedigree/pedigrees.ts'
import {tableMethod} from '../pedigree/table-method.ts'

function asked(pedigree: Pedigree) {
  const birds = pedigree.animals.map((_, index): Bird => bird(String(index), 'unknown'))
  const of = pairKinship({pedigree, numberOf: one => birds.indexOf(one)}, {autosome: coancestry(pedigree)}, birds)
  return (a: number, b: number) => {
    const [one, other] = [birds[a], birds[b]]
    if (!one || !other) throw new Error(`no ${a} or ${b}`)
    return of(one, other)
  }
}

/** The slow twin: the pedigree written anew for every way in which the two may have come about, and worked by the table method. */
function enumerated(pedigree: Pedigree, a: number, b: number): {readonly low: number; readonly high: number} {
  const ways = (index: number): readonly Animal[] => {
    const animal = pedigree.animals[index]
    if (!animal) return []
    const {sex, matings, oneOf, outside = {sire: null, dam: null}} = animal
    if (oneOf) return oneOf.map(one => ({sex, base: null, matings: [], oneOf: [{...one, chance: 1}]}))
    return matings.length > 1 ? matings.map(mating => ({sex, base: null, outside, matings: [{...mating, chance: 1}]})) : [animal]
  }
  const standIn = pedigree.animals[a]?.damStandIn
  const isFamily = standIn !== undefined && standIn === pedigree.animals[b]?.damStandIn
  const each = [tableMethod(pedigree).kinship(a, b)]
  for (const one of ways(a)) {
    for (const other of ways(b)) {
      if (isFamily && one.matings[0]?.dam !== other.matings[0]?.dam) continue
      each.push(tableMethod({...pedigree, animals: pedigree.animals.map((animal, index) => (index === a ? one : index === b ? other : animal))}).kinship(a, b))
    }
  }
  return {low: Math.min(...each), high: Math.max(...each)}
}

const founder: Animal = {sex: 'unknown', base: null, matings: []}
const chick = (...matings: Mating[]): Animal => ({sex: 'unknown', base: null, matings})
const alone = (animals: readonly Animal[]): Pedigree => ({animals, bases: [], kin: []})

describe('pairKinship(pedigree, kinship, birds)', () => {
  // two cocks 0 and 1, hens 2 and 3
  const doubtful = chick({sire: 0, dam: 2, chance: 0.5}, {sire: 1, dam: 2, chance: 0.5})

  it('of two chicks of a hen with two cocks: half sibs or full', () => {
    const of = asked(alone([founder, founder, founder, founder, doubtful, doubtful]))
    expect(of(4, 5)).toEqual({mean: 3 / 16, low: 1 / 8, high: 1 / 4})
    expect(of(5, 4)).toEqual(of(4, 5))
  })

  it('of a bird with itself: never below a half, whoever its parents are', () => {
    // 2 is of 0 and 1; 3 is of 0 and his daughter 2, F ¼, or of 0 and 1, F 0
    const {mean, low, high} = asked(alone([founder, founder, chick({sire: 0, dam: 1, chance: 1}), chick({sire: 0, dam: 2, chance: 0.5}, {sire: 0, dam: 1, chance: 0.5})]))(3, 3)
    expect({mean, low, high}).toEqual({mean: 0.5625, low: 0.5, high: 0.625})
  })

  it('of a cock with a hen that may be his daughter', () => {
    expect(asked(alone([founder, founder, founder, founder, doubtful]))(0, 4)).toEqual({mean: 1 / 8, low: 0, high: 1 / 4})
  })

  it('of a bird with its own chick, when the bird itself is in doubt', () => {
    // 6 may be of full sibs, with F ¼, or of strangers; 7 is its chick by a stranger: ½ · ½ (1 + F)
    const sib = chick({sire: 0, dam: 2, chance: 1})
    const of = asked(alone([founder, founder, founder, founder, sib, sib, chick({sire: 4, dam: 5, chance: 0.5}, {sire: 4, dam: 3, chance: 0.5}), chick({sire: 1, dam: 6, chance: 1})]))
    expect(of(7, 6)).toEqual({mean: 9 / 32, low: 1 / 4, high: 5 / 16})
  })

  it('of a bird with its grandchild, which holds part of it whatever it is', () => {
    const of = asked(alone([founder, founder, founder, founder, doubtful, chick({sire: 4, dam: 3, chance: 1}), chick({sire: 5, dam: 3, chance: 1})]))
    // ⅛ through the way down, which no doubt about 4's own parents takes away
    expect(of(6, 4)).toEqual({mean: 1 / 8, low: 1 / 8, high: 1 / 8})
  })

  it('of two of one family: whoever their dam is, she is the same', () => {
    const hen: Animal = {...founder, sex: 'female', oneOf: [{animal: 2, chance: 0.5}, {animal: 3, chance: 0.5}]}
    const one: Animal = {...chick({sire: 0, dam: 2, chance: 0.5}, {sire: 0, dam: 3, chance: 0.5}), damStandIn: 4}
    const of = asked(alone([founder, founder, founder, founder, hen, one, one]))
    expect(of(5, 6)).toEqual({mean: 1 / 4, low: 1 / 4, high: 1 / 4})
  })

  it('of a bird that is perhaps one of two', () => {
    const of = asked(alone([founder, founder, founder, chick({sire: 0, dam: 2, chance: 1}), {...founder, oneOf: [{animal: 0, chance: 0.5}, {animal: 1, chance: 0.5}]}]))
    expect(of(3, 4)).toEqual({mean: 1 / 8, low: 0, high: 1 / 4})
  })

  it('is the least and most of a full enumeration of both birds’ matings, whatever the flock', () => {
    fc.assert(fc.property(anyPedigree(12), pedigree => {
      const of = asked(pedigree)
      const table = tableMethod(pedigree)
      for (let a = 0; a < pedigree.animals.length; a++) {
        for (let b = 0; b < a; b++) {
          const {mean, low, high} = of(a, b)
          const expected = enumerated(pedigree, a, b)
          expectClose(mean, table.kinship(a, b), 1e-9, `mean of ${a} and ${b}`)
          expectClose(low, expected.low, 1e-9, `low of ${a} and ${b}`)
          expectClose(high, expected.high, 1e-9, `high of ${a} and ${b}`)
          expect(Object.is(low, -0)).toBe(false)
        }
      }
    }), {numRuns: 40})
  })
})
