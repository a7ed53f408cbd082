import type {Bird, Logbook, Parentage, Strain} from '../logbook/book.ts'
import {founderBases} from '../logbook/founder-bases.ts'
import type {Animal, Kin, Mating, Pedigree} from '../pedigree/pedigree.ts'

/** The book as descent sees it, and the way between its birds and the pedigree's numbers. */
export interface PedigreeOfBook {
  readonly pedigree: Pedigree
  /** the book's birds are the first animals, in its order; what follows are hens that stand for one unknown dam */
  readonly birds: readonly Bird[]
  numberOf(bird: Bird): number
  /** the base population of a strain */
  baseOf(strain: Strain): number
}

const NO_MATINGS: readonly Mating[] = []

/**
 * Birds become animals, strains and bought flocks base populations, pairs with their chances matings. Chicks of one family have one unknown dam,
 * who stands in the pedigree as one hen; a found bird that may be one of several stands for all of them alike.
 */
export function pedigreeOfBook(book: Logbook): PedigreeOfBook {
  const number = new Map(book.birds.map((bird, index) => [bird, index] as const))
  const numberOf = (bird: Bird): number => {
    const found = number.get(bird)
    if (found === undefined) throw new Error(`${bird.id} is not in the book`)
    return found
  }
  const {bases, ofStrain, ofFounder} = founderBases(book.strains, book.birds)
  const matingsOf = sharedMatings(numberOf)
  const animals: Animal[] = []
  const standIns: Animal[] = []
  const families = new Map<string, number>()

  for (const bird of book.birds) {
    const {parentage, sex} = bird
    if (bird.maybe.length > 0 && !namesParents(parentage)) {
      animals.push({sex, base: null, matings: NO_MATINGS, oneOf: bird.maybe.map(other => ({animal: numberOf(other), chance: 1 / bird.maybe.length}))})
      continue
    }
    const {outside} = parentage
    const standIn = standInFor(bird)
    animals.push({
      sex, base: parentage.kind === 'founder' ? ofFounder(bird) : null, matings: matingsOf(parentage),
      ...(outside ? {outside: {sire: outside.sire && ofStrain(outside.sire), dam: outside.dam && ofStrain(outside.dam)}} : {}),
      ...(standIn === null ? {} : {damStandIn: standIn}),
    })
  }
  return {pedigree: {animals: [...animals, ...standIns], bases, kin: kinOf(book, numberOf)}, birds: book.birds, numberOf, baseOf: ofStrain}

  /** one hen for all chicks of a family whose dam is in doubt, by the chances that the first of them has; from outside the book where none is known */
  function standInFor({family, hatch, parentage: {kind, dams, outside}}: Bird): number | null {
    const [dam] = dams
    if (family === null || kind !== 'uncertain' || (dam && dam.chance >= 1 - 1e-12)) return null
    const key = `${hatch?.id ?? ''}\n${family}`
    const known = families.get(key)
    if (known !== undefined) return known
    standIns.push(dam
      ? {sex: 'female', base: null, matings: NO_MATINGS, oneOf: dams.map(({bird, chance}) => ({animal: numberOf(bird), chance}))}
      : {sex: 'female', base: outside?.dam ? ofStrain(outside.dam) : null, matings: NO_MATINGS})
    families.set(key, book.birds.length + standIns.length - 1)
    return book.birds.length + standIns.length - 1
  }
}

const namesParents = ({sires, dams}: Parentage): boolean => sires.length + dams.length > 0

/** Chicks of one parentage share one list of matings, so that it is worked once. */
function sharedMatings(numberOf: (bird: Bird) => number): (parentage: Parentage) => readonly Mating[] {
  const known = new Map<Parentage['pairs'], readonly Mating[]>()
  return ({pairs}) => {
    const before = known.get(pairs)
    if (before) return before
    const matings = pairs.map(({sire, dam, chance}) => ({sire: sire && numberOf(sire), dam: dam && numberOf(dam), chance}))
    known.set(pairs, matings)
    return matings
  }
}

/** Each stated pair of founders once. */
function kinOf(book: Logbook, numberOf: (bird: Bird) => number): Kin[] {
  return book.birds.flatMap(bird => bird.kin.flatMap(({with: other, kinship}): Kin[] => {
    const a = numberOf(bird), b = numberOf(other)
    return a < b ? [{animals: [a, b], kinship}] : []
  }))
}
