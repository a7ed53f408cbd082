/** Pedigrees to test with: written as people write them, and drawn at random. */
import fc from 'fast-check'
import type {Animal, Base, Kin, Pedigree} from '../../src/pedigree/pedigree.ts'

/** `id sire dam` a line, `-` for unknown, with ♂ or ♀ after the id where the sex matters; any order. */
export function written(text: string): {pedigree: Pedigree; of: (id: string) => number; ids: readonly string[]} {
  const rows = text.trim().split('\n').map(line => line.trim().split(/\s+/))
  const ids = rows.map(([id = '']) => id.replace(/[♂♀]/u, ''))
  const of = (id: string): number => {
    const index = ids.indexOf(id)
    if (index < 0) throw new Error(`no ${id}`)
    return index
  }
  const parent = (id = '-') => (id === '-' ? null : of(id))
  const animals = rows.map(([id = '', sire, dam]): Animal => {
    const sex = id.includes('♂') ? 'male' : id.includes('♀') ? 'female' : 'unknown'
    const [by, from] = [parent(sire), parent(dam)]
    return {sex, base: null, matings: by === null && from === null ? [] : [{sire: by, dam: from, chance: 1}]}
  })
  return {pedigree: {animals, bases: [], kin: []}, of, ids}
}

/** Flocks of up to `size` birds with every doubt that records hold. */
export function anyPedigree(size = 24): fc.Arbitrary<Pedigree> {
  const bases: Base[] = [
    {inbreeding: 0.05, kinship: 0.04, within: null}, {inbreeding: 0, kinship: 0, within: null}, {inbreeding: 0.1, kinship: 0.25, within: 0},
  ]
  const choice = fc.record({
    sex: fc.constantFrom<Animal['sex']>('male', 'female', 'unknown'),
    kind: fc.constantFrom('founder', 'pair', 'pair', 'pair', 'candidates', 'candidates', 'half', 'one of', 'family', 'wanting'),
    base: fc.constantFrom(null, 0, 1, 2), picks: fc.array(fc.nat({max: 10_000}), {minLength: 6, maxLength: 6}), chance: fc.double({min: 0.05, max: 0.95, noNaN: true}),
    kin: fc.boolean(),
  })
  return fc.array(choice, {minLength: 4, maxLength: size}).map(choices => {
    const animals: Animal[] = []
    const kin: Kin[] = []
    choices.forEach(({sex, kind, base, picks, chance, kin: isKin}, index) => {
      const males = animals.flatMap((animal, at) => (animal.sex !== 'female' ? [at] : []))
      const females = animals.flatMap((animal, at) => (animal.sex !== 'male' ? [at] : []))
      const male = (k: number) => males[(picks[k] ?? 0) % males.length] ?? 0
      const female = (k: number) => females[(picks[k] ?? 0) % females.length] ?? 0
      if (index < 2 || kind === 'founder' || males.length === 0 || females.length === 0) {
        const relative = animals.findIndex(animal => animal.matings.length === 0 && !animal.oneOf && animal.base === base)
        if (isKin && relative >= 0) kin.push({animals: [relative, index], kinship: 0.25})
        animals.push({sex, base, matings: []})
        return
      }
      const outside = {sire: base, dam: base}
      const other = 1 - chance
      if (kind === 'pair') animals.push({sex, base: null, matings: [{sire: male(0), dam: female(1), chance: 1}]})
      else if (kind === 'half') animals.push({sex, base: null, outside, matings: [picks[2] ? {sire: male(0), dam: null, chance: 1} : {sire: null, dam: female(0), chance: 1}]})
      else if (kind === 'wanting') animals.push({sex, base: null, matings: [{sire: male(0), dam: female(1), chance}]})
      else if (kind === 'one of') animals.push({sex, base: null, matings: [], oneOf: [{animal: (picks[0] ?? 0) % index, chance}, {animal: (picks[1] ?? 0) % index, chance: other}]})
      else if (kind === 'family') {
        const standIn = animals.findIndex(animal => animal.oneOf && animal.sex !== 'male')
        if (standIn < 0) animals.push({sex: 'female', base: null, matings: [], oneOf: [{animal: female(0), chance}, {animal: female(1), chance: other}]})
        else animals.push({sex, base: null, damStandIn: standIn, matings: (animals[standIn]?.oneOf ?? []).map(one => ({sire: male(2), dam: one.animal, chance: one.chance}))})
      } else animals.push({
        sex, base: null, outside,
        matings: [{sire: male(0), dam: female(1), chance: chance / 2}, {sire: male(2), dam: female(3), chance: chance / 2}, {sire: male(4), dam: null, chance: other}],
      })
    })
    return {animals, bases, kin}
  })
}

/** The same flock with the first of each bird's matings taken for certain, founders unrelated, and no stand-ins. */
export function certain({animals}: Pedigree): Pedigree {
  return {
    animals: animals.map(({sex, matings: [first], oneOf}) => ({sex, base: null, matings: first && !oneOf ? [{...first, chance: 1}] : []})), bases: [], kin: [],
  }
}
