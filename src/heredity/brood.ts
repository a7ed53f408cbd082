import type {Animal} from '../pedigree/pedigree.ts'
import type {SideAtBlock} from './chick-side.ts'
import {genotypesOfSex, type GeneBlock} from './gene-block.ts'
import {genotypeOf} from './handed-on.ts'
import {areAlike, type Pool} from './parents-pooled.ts'

/** Chicks of like parents and one sex at one block of loci: entries of their own tables, over what stands on the sire's side, on the dam's, and in the chick. */
export interface Brood {
  /** variables of the two sides, where they have any; the chick's own comes after them */
  readonly of: readonly number[]
  /** genotypes that a chick may have, by number */
  readonly possible: readonly number[]
  /**
   * @param genotypes the values of the chick's own variable
   * @param chance of a value of the sire's side with one of the dam's; 1 where it is not given
   */
  table(genotypes: readonly number[], chance?: (one: number, other: number) => number): Float64Array
  /**
   * By member of a pool that stands on one side, then by value of the member's genotype: the share of each entry of `table(genotypes)` that comes of it.
   * One table where all values hand on alike.
   */
  owed(role: 'sire' | 'dam', pool: Pool, genotypes: readonly number[]): readonly (readonly Float64Array[])[]
}

/** @param hatching chance that a chick hatches, by genotype */
export function broodAt(block: GeneBlock, a: SideAtBlock, b: SideAtBlock, sex: Animal['sex'], hatching: Float64Array): Brood {
  const whole = !a.between && !b.between
  const all = a.handed.map(one => b.handed.map(other => conceived(block, one, other, hatching, whole)))
  const ofSex = genotypesOfSex(block, sex), given = ofSex.filter(genotype => all.some(row => row.some(chances => (chances[genotype] ?? 0) > 0)))
  const possible = given.length > 0 ? given : ofSex
  const tables = new Map<string, Float64Array>(), parts = new Map<string, readonly (readonly Float64Array[])[]>()

  function laidOut(genotypes: readonly number[], entry: (one: number, other: number) => Float64Array | undefined, chance: (one: number, other: number) => number = () => 1): Float64Array {
    const table = new Float64Array(a.handed.length * b.handed.length * genotypes.length)
    let at = 0
    a.handed.forEach((_, one) => b.handed.forEach((_, other) => {
      const chances = entry(one, other), times = chance(one, other)
      for (const genotype of genotypes) table[at++] = (chances?.[genotype] ?? 0) * times
    }))
    return table
  }

  function plain(genotypes: readonly number[]): Float64Array {
    const key = genotypes.join(), table = tables.get(key) ?? laidOut(genotypes, (one, other) => all[one]?.[other])
    tables.set(key, table)
    return table
  }

  return {
    of: [a.variable, b.variable].filter(variable => variable !== null), possible,
    table: (genotypes, chance) => (chance ? laidOut(genotypes, (one, other) => all[one]?.[other], chance) : plain(genotypes)),
    owed(role, {members}, genotypes) {
      const key = `${role} ${genotypes.join()}`, known = parts.get(key)
      if (known) return known
      const table = plain(genotypes)
      const made = members.map(({handed, chance}) => (areAlike(handed[sex]) ? handed[sex].slice(0, 1) : handed[sex]).map(own => {
        const others = (role === 'sire' ? b : a).handed.map(other => (role === 'sire' ? conceived(block, own, other, hatching, whole) : conceived(block, other, own, hatching, whole)))
        return laidOut(genotypes, (one, other) => others[role === 'sire' ? other : one]).map((entry, at) => ((table[at] ?? 0) > 0 ? (chance * entry) / (table[at] ?? 1) : 0))
      }))
      parts.set(key, made)
      return made
    },
  }
}

/** Genotypes of chicks that hatch, by number, from what sire and dam hand on; made whole, where asked. */
export function conceived(block: GeneBlock, sire: Float64Array | undefined, dam: Float64Array | undefined, hatching: Float64Array, whole: boolean): Float64Array {
  const chances = new Float64Array(block.genotypes.length)
  let sum = 0
  sire?.forEach((one, a) => {
    if (one > 0 && a < block.haplotypes) dam?.forEach((other, b) => {
      const genotype = genotypeOf(block, a, b), chance = one * other * (hatching[genotype] ?? 0)
      chances[genotype] = (chances[genotype] ?? 0) + chance
      sum += chance
    })
  })
  return whole && sum > 0 && sum !== 1 ? chances.map(chance => chance / sum) : chances
}
