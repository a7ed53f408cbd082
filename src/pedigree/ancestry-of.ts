import {aboveOf, type Animal, type Pedigree} from './pedigree.ts'

/** A part of a pedigree that stands on its own. */
export interface Ancestry {
  readonly pedigree: Pedigree
  /** number of an animal in it; undefined for one that is not in it */
  readonly numberOf: ReadonlyMap<number, number>
}

/**
 * What must be known of a few birds? They themselves and all they may descend from, and nothing else: every figure of theirs is as in the whole pedigree.
 *
 * Birds keep their order. Base populations are all kept, kinships stated where both birds are kept.
 *
 * @param group animals of the pedigree
 * @example ancestryOf(pedigree, [chick]).pedigree.animals.length  // 3 for a chick of two founders
 */
export function ancestryOf({animals, bases, kin}: Pedigree, group: readonly number[]): Ancestry {
  const met = new Set(group)
  // a set is walked through to its end, also what is added on the way
  for (const index of met) for (const above of aboveOf(animals[index])) met.add(above)
  const kept = [...met].sort((a, b) => a - b)
  const numberOf = new Map(kept.map((animal, place) => [animal, place] as const))
  const at = (animal: number): number => numberOf.get(animal) ?? NaN
  const matingsOf = shared((matings: Animal['matings']) => matings.map(({sire, dam, chance}) => ({sire: sire === null ? null : at(sire), dam: dam === null ? null : at(dam), chance})))
  return {
    numberOf,
    pedigree: {
      bases, kin: kin.filter(({animals: [a, b]}) => met.has(a) && met.has(b)).map(({animals: [a, b], kinship}) => ({animals: [at(a), at(b)], kinship})),
      animals: kept.flatMap(index => {
        const animal = animals[index]
        return animal === undefined ? [] : [{
          ...animal, matings: matingsOf(animal.matings), ...(animal.damStandIn === undefined ? {} : {damStandIn: at(animal.damStandIn)}),
          ...(animal.oneOf ? {oneOf: animal.oneOf.map(each => ({...each, animal: at(each.animal)}))} : {}),
        }]
      }),
    },
  }
}

/** Chicks of one list of matings go on to share one. */
function shared<Given extends object, Made>(make: (given: Given) => Made): (given: Given) => Made {
  const made = new Map<Given, Made>()
  return given => {
    const before = made.get(given)
    if (before !== undefined) return before
    const fresh = make(given)
    made.set(given, fresh)
    return fresh
  }
}
