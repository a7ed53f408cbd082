/** Small flocks for worked examples: birds by name, each with its parents where it has some. */
import type {Animal, Base, Pedigree} from '../../pedigree/pedigree.ts'

export interface ExampleBird {
  readonly name: string
  readonly sex?: Animal['sex']
  /** one sire, or several with their chances */
  readonly sire?: string | Readonly<Record<string, number>>
  readonly dam?: string
  /** a founder's base population, by its place */
  readonly base?: number
}

export interface ExampleFlock {
  readonly pedigree: Pedigree
  of(name: string): number
}

/** @param birds parents before their chicks */
export function exampleFlock(birds: readonly ExampleBird[], bases: readonly Base[] = []): ExampleFlock {
  const of = (name: string): number => {
    const found = birds.findIndex(bird => bird.name === name)
    if (found < 0) throw new Error(`the example has no bird ${name}`)
    return found
  }
  const animals = birds.map(({sex = 'unknown', sire, dam, base = null}): Animal => {
    const from = dam === undefined ? null : of(dam)
    const sires: readonly (readonly [string | null, number])[] = sire === undefined ? (from === null ? [] : [[null, 1]]) : typeof sire === 'string' ? [[sire, 1]] : Object.entries(sire)
    return {sex, base, matings: sires.map(([by, chance]) => ({sire: by === null ? null : of(by), dam: from, chance}))}
  })
  return {pedigree: {animals, bases, kin: []}, of}
}

/** Unrelated founders. */
export const founders = (...names: readonly string[]): readonly ExampleBird[] => names.map(name => ({name}))
