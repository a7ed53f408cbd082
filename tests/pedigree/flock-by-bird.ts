/** The slow twin of the group recursion: a mating system written out bird by bird as a pedigree, for `coancestry` to work. Kept apart from the code it holds. */
import type {MatingSystem} from '../../src/pedigree/mating-systems.ts'
import type {Animal, Mating, Pedigree} from '../../src/pedigree/pedigree.ts'

export interface FlockByBird {
  readonly pedigree: Pedigree
  /** by season: two chicks of any pen, and a chick of each pen, whose parents are everyone they may be */
  readonly chicks: readonly {readonly any: readonly [number, number]; readonly byPen: readonly number[]}[]
}

/**
 * @param birds those alive today and their ancestors
 * @param members today's breeders, group by group
 * @param draw picks one mating for each bird kept to breed, so that a pedigree is one that may come about; left out, a bird has all its chances
 */
export function flockByBird(system: MatingSystem, seasons: number, birds: readonly Animal[], members: readonly (readonly number[])[], draw?: (matings: readonly Mating[]) => Mating): FlockByBird {
  const animals = [...birds]
  const chicks = []
  let groups = members
  const hatch = (matings: readonly Mating[]) => animals.push({sex: 'unknown', base: null, matings}) - 1
  for (let season = 1; season <= seasons; season++) {
    const {pens, next} = system.plan(season)
    const pairsOf = (list: readonly number[]): Mating[] => {
      const pairs = list.flatMap(pen => {
        const males = groups[pens[pen]?.males ?? NaN] ?? [], females = groups[pens[pen]?.females ?? NaN] ?? []
        return males.flatMap(sire => females.map(dam => ({sire, dam, chance: 1 / males.length})))
      })
      const hens = pairs.reduce((sum, {chance}) => sum + chance, 0)
      return pairs.map(pair => ({...pair, chance: pair.chance / hens}))
    }
    const everyPen = pens.map((_, pen) => pen)
    chicks.push({any: [hatch(pairsOf(everyPen)), hatch(pairsOf(everyPen))] as const, byPen: everyPen.map(pen => hatch(pairsOf([pen])))})
    groups = next.map((origin, group) => {
      const size = system.sizes[group] ?? 0
      if ('kept' in origin) return (groups[origin.kept] ?? []).slice(0, size)
      const pairs = pairsOf(origin.chicksOf)
      return Array.from({length: size}, () => hatch(draw ? [{...draw(pairs), chance: 1}] : pairs))
    })
  }
  return {pedigree: {animals, bases: [], kin: []}, chicks}
}

/** Founders for every group of a system. */
export function foundersOf({sizes}: MatingSystem): {readonly birds: readonly Animal[]; readonly members: readonly (readonly number[])[]} {
  const birds: Animal[] = []
  const members = sizes.map(size => Array.from({length: size}, () => birds.push({sex: 'unknown', base: null, matings: []}) - 1))
  return {birds, members}
}
