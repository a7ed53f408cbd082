import type {Probable} from '../heredity/genotype-probabilities.ts'
import {aboveOf, type Animal, type Mating, type Pedigree} from '../pedigree/pedigree.ts'

/** A chick one of whose parents may be another than was written. */
export interface WrittenOtherwise {
  readonly animal: Animal
  /** others than those written, by their numbers */
  readonly sires: readonly number[]
  readonly dams: readonly number[]
}

/** How much likelier another parent is than those written. */
export interface OtherParent {
  readonly bird: number
  readonly role: 'sire' | 'dam'
  /** how many times likelier all that was seen is with it than as written; null: as written it cannot be at all */
  readonly times: number | null
}

/** Chance given beforehand to any other parent. What is found does not rest on it, but where several chicks of a family are asked about at once. */
const OTHERWISE = 0.1

/** The chick's matings, and each with one parent changed. A hen that stands for a family's unknown dam stays. */
export function writtenOtherwise(animal: Animal, sires: readonly number[], dams: readonly number[]): WrittenOtherwise {
  const others = animal.damStandIn === undefined ? dams : []
  const count = sires.length + others.length
  if (count === 0) return {animal, sires, dams: others}
  const each = OTHERWISE / count
  const matings: Mating[] = [
    ...animal.matings.map(mating => ({...mating, chance: mating.chance * (1 - OTHERWISE)})),
    ...sires.flatMap(sire => animal.matings.map(({dam, chance}) => ({sire, dam, chance: chance * each}))),
    ...others.flatMap(dam => animal.matings.map(({sire, chance}) => ({sire, dam, chance: chance * each}))),
  ]
  return {animal: {...animal, matings: merged(matings)}, sires, dams: others}
}

/**
 * times = (P(other | seen)/P(other)) / (P(as written | seen)/P(as written)), from one group of loci.
 *
 * @param from which birds the parents are, as the flock was worked with `writtenOtherwise`
 */
export function timesLikelier({sires, dams}: WrittenOtherwise, from: {readonly sires: readonly Probable<number | null>[] | null; readonly dams: readonly Probable<number | null>[] | null}): readonly OtherParent[] {
  const count = sires.length + dams.length, chanceOf = (list: typeof from.sires, bird: number): number => list?.find(({is}) => is === bird)?.probability ?? 0
  const found = [...sires.map(bird => ({bird, role: 'sire' as const, chance: chanceOf(from.sires, bird)})), ...dams.map(bird => ({bird, role: 'dam' as const, chance: chanceOf(from.dams, bird)}))]
  const asWritten = 1 - found.reduce((sum, {chance}) => sum + chance, 0)
  return found.map(({bird, role, chance}) => ({bird, role, times: asWritten > 1e-12 ? (chance / (OTHERWISE / count)) / (asWritten / (1 - OTHERWISE)) : null}))
}

/** A chick whose egg may be of another pen. */
export interface OfOtherPens {
  readonly animal: Animal
  /** of each pen its hens, by their numbers; none stands in two */
  readonly pens: readonly (readonly number[])[]
}

/** The chick's matings, and all of each other pen with both parents changed: its males and hens alike. None for a chick whose family has one unknown dam. */
export function ofOtherPens(animal: Animal, pens: readonly {readonly sires: readonly number[]; readonly dams: readonly number[]}[]): OfOtherPens {
  const taken = new Set<number>(), each = pens.map(({sires, dams}) => {
    const hens = sires.length === 0 || animal.damStandIn !== undefined ? [] : dams.filter(dam => !taken.has(dam))
    for (const hen of hens) taken.add(hen)
    return {sires, hens}
  })
  const count = each.filter(({hens}) => hens.length > 0).length
  if (count === 0) return {animal, pens: each.map(() => [])}
  const matings = each.flatMap(({sires, hens}) => hens.flatMap(dam => sires.map((sire): Mating => ({sire, dam, chance: OTHERWISE / (count * hens.length * sires.length)}))))
  return {animal: {...animal, matings: merged([...animal.matings.map(mating => ({...mating, chance: mating.chance * (1 - OTHERWISE)})), ...matings])}, pens: each.map(({hens}) => hens)}
}

/**
 * How many times likelier all that was seen is with the egg from each pen than as written (null: as written it cannot be at all), and the likeliest hen; from one group of loci.
 *
 * @param dams which hens may be the dam, as the flock was worked with `ofOtherPens`
 */
export function pensLikelier({pens}: OfOtherPens, dams: readonly Probable<number | null>[] | null): readonly {readonly times: number | null; readonly dam: number | null}[] {
  const chanceOf = (hen: number): number => dams?.find(({is}) => is === hen)?.probability ?? 0
  const found = pens.map(hens => ({chance: hens.reduce((sum, hen) => sum + chanceOf(hen), 0), dam: [...hens].sort((a, b) => chanceOf(b) - chanceOf(a))[0] ?? null}))
  const asWritten = 1 - found.reduce((sum, {chance}) => sum + chance, 0), count = pens.filter(hens => hens.length > 0).length
  return found.map(({chance, dam}) => ({dam, times: chance === 0 ? 0 : asWritten > 1e-12 ? (chance / (OTHERWISE / count)) / (asWritten / (1 - OTHERWISE)) : null}))
}

/** Which of some birds may be given to a chick as parents without any bird being among its own ancestors? Those given to chicks before it are taken in. */
export function withoutLoop(pedigree: Pedigree): (chick: number, candidates: readonly number[]) => readonly number[] {
  const given = new Map<number, readonly number[]>()
  return (chick, candidates) => {
    const free = candidates.filter(candidate => !descends(candidate, chick))
    given.set(chick, [...given.get(chick) ?? [], ...free])
    return free
  }

  function descends(from: number, ancestor: number): boolean {
    const line = [from], seen = new Set<number>()
    for (let at = line.pop(); at !== undefined; at = line.pop()) {
      if (at === ancestor) return true
      if (seen.has(at)) continue
      seen.add(at)
      line.push(...aboveOf(pedigree.animals[at]), ...given.get(at) ?? [])
    }
    return false
  }
}

function merged(matings: readonly Mating[]): readonly Mating[] {
  const chances = new Map<string, Mating>()
  for (const mating of matings) {
    const key = `${mating.sire} ${mating.dam}`
    chances.set(key, {...mating, chance: mating.chance + (chances.get(key)?.chance ?? 0)})
  }
  return [...chances.values()]
}

