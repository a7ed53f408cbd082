/** A large flock's pedigree to time: twelve generations of equal size, hens with their own chicks by one cock, or by one of three of a pen. */
import type {Animal, Mating, Pedigree} from '../../src/pedigree/pedigree.ts'
import {chanceOf} from './chance.ts'

export const GENERATIONS = 12

/** One cock in so many birds of a generation is bred from, and one hen. */
const COCKS_ONE_IN = 20, HENS_ONE_IN = 4

/**
 * @param birds in all, 240 or more
 * @param doubtful share of the hens that stood with three cocks alike
 */
export function drawPedigree(seed: number, {birds, doubtful}: {readonly birds: number; readonly doubtful: number}): Pedigree {
  const chance = chanceOf(seed)
  const size = Math.floor(birds / GENERATIONS)
  const animals: Animal[] = Array.from({length: birds - size * (GENERATIONS - 1)}, (_, index): Animal => ({sex: index % 2 ? 'female' : 'male', base: null, matings: []}))
  let start = 0
  for (let generation = 1; generation < GENERATIONS; generation++) {
    const before = Array.from({length: animals.length - start}, (_, index) => start + index)
    const cocks = chance.some(before.filter(index => animals[index]?.sex === 'male'), Math.max(3, Math.floor(size / COCKS_ONE_IN)))
    const hens = chance.some(before.filter(index => animals[index]?.sex === 'female'), Math.floor(size / HENS_ONE_IN))
    const ofHen = hens.map((dam, index): readonly Mating[] => {
      const sires = Array.from({length: index < doubtful * hens.length ? 3 : 1}, (_, turn) => cocks[(index + turn) % cocks.length] ?? 0)
      return sires.map(sire => ({sire, dam, chance: 1 / sires.length}))
    })
    start = animals.length
    for (let index = 0; index < size; index++) animals.push({sex: index % 2 ? 'female' : 'male', base: null, matings: ofHen[index % ofHen.length] ?? []})
  }
  return {animals, bases: [], kin: []}
}
