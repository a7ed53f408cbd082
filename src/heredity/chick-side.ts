import type {Animal, Mating} from '../pedigree/pedigree.ts'
import type {GeneBlock} from './gene-block.ts'
import {handedOn} from './handed-on.ts'
import type {Doubt, Held, Network} from './network.ts'
import {areAlike, type Pool} from './parents-pooled.ts'

/** One side of a chick: what its sire, or its dam, may hand on. */
export interface ChickSide {
  /** null too where the candidates stand together */
  readonly doubt: Doubt | null
  readonly pool: Pool | null
  /** its parents that may be: null is a bird outside */
  readonly birds: readonly (number | null)[]
  readonly at: readonly SideAtBlock[]
}

export interface SideAtBlock {
  /** null: nothing to find out, the parent is outside */
  readonly variable: number | null
  /** by value: the chance of each haplotype, and last of none */
  readonly handed: readonly Float64Array[]
  /** by value: the place among the doubt's sources; 0 where there is none */
  readonly source: readonly number[]
  /** by place among `birds`: the same of each of them, with the variable of its genotype; what is to be known of the parents themselves */
  readonly parents: readonly Parent[]
  /** the values are haplotypes handed on by one of several birds, not genotypes of a bird */
  readonly between: boolean
}

export interface Parent {
  readonly variable: number | null
  readonly handed: readonly Float64Array[]
}

export type Role = 'sire' | 'dam'

/**
 * A parent that is certain stands there itself. Where it is one of several, a variable of source and haplotype stands between chick and birds, tied to each by
 * a table over the two: what the bird hands on where it is the one, 1 where it is not.
 *
 * @param outside by block, what a bird outside hands on
 */
export function chickSide(network: Network, blocks: readonly GeneBlock[], held: readonly (readonly Held[])[], sex: Animal['sex'], role: Role, matings: readonly Mating[], outside: readonly Float64Array[]): ChickSide {
  const birds = [...new Set(matings.map(mating => mating[role]))]
  const parentsAt = blocks.map((block, number) => birds.map(bird => parentOf(block, bird === null ? null : held[bird]?.[number] ?? null, role, sex, outside[number])))
  if (birds.length === 1) {
    return {doubt: null, pool: null, birds, at: parentsAt.map(parents => {
      const [{variable, handed} = {variable: null, handed: []}] = parents
      return {variable, handed, source: handed.map(() => 0), parents, between: false}
    })}
  }
  const which = blocks.length > 1 ? network.variable(birds.length) : null
  const at = blocks.map((block, number): SideAtBlock => {
    const parents = parentsAt[number] ?? []
    const values = parents.flatMap(({handed}, source) => Array.from({length: block.haplotypes + 1}, (_, haplotype) => ({source, haplotype}))
      .filter(({haplotype}) => handed.some(chances => (chances[haplotype] ?? 0) > 0)))
    const variable = network.variable(values.length)
    if (which !== null) network.factor([which, variable], ([source, value = 0]) => (values[value]?.source === source ? 1 : 0))
    parents.forEach((parent, place) => {
      network.factor(parent.variable === null ? [variable] : [variable, parent.variable], ([value = 0, genotype = 0]) => {
        const {source, haplotype} = values[value] ?? {source: 0, haplotype: 0}
        return source === place ? parent.handed[genotype]?.[haplotype] ?? 0 : 1
      })
    })
    return {variable, source: values.map(({source}) => source), handed: values.map(({haplotype}) => point(haplotype, block.haplotypes + 1)), parents, between: true}
  })
  const first = at[0]
  if (!first) throw new RangeError('a chick stands at no block of loci')
  return {doubt: {sources: birds, variable: which ?? first.variable ?? 0, source: which === null ? first.source : birds.map((_, place) => place)}, pool: null, birds, at}
}

/** The parent is one of those that stand together: to the chick they are as one bird, whose genotype is what all of them hand on. */
export function poolSide(pool: Pool, sex: Animal['sex']): ChickSide {
  const handed = pool.handed[sex], alike = areAlike(handed)
  const variable = alike ? null : pool.variable, told = alike ? handed.slice(0, 1) : handed
  return {doubt: null, pool, birds: pool.members.map(({animal}) => animal), at: [{variable, handed: told, source: told.map(() => 0), parents: [{variable, handed: told}], between: false}]}
}

/** The dam is the one hen that stands for a family's, herself one of several. */
export function standInSide(blocks: readonly GeneBlock[], hen: number, held: readonly Held[], sex: Animal['sex'], doubt: Doubt | null): ChickSide {
  return {doubt, pool: null, birds: [hen], at: blocks.map((block, number) => {
    const own = held[number]
    if (!own) throw new RangeError(`the stand-in ${hen} is not among the birds before its chicks`)
    const parent = parentOf(block, own, 'dam', sex, undefined)
    return {...parent, source: own.source ?? own.genotypes.map(() => 0), parents: [parent], between: false}
  })}
}

function parentOf(block: GeneBlock, held: Held | null, role: Role, sex: Animal['sex'], outside: Float64Array | undefined): Parent {
  if (held) return {variable: held.variable, handed: held.genotypes.map(genotype => handedOn(block, genotype, role, sex))}
  if (!outside) throw new RangeError('a parent outside the pedigree hands on what its population gives')
  return {variable: null, handed: [outside]}
}

function point(at: number, length: number): Float64Array {
  const chances = new Float64Array(length)
  chances[at] = 1
  return chances
}
