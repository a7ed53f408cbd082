import type {Animal} from '../pedigree/pedigree.ts'
import type {Flock, Reading} from './flock.ts'
import {allelesAt, type GeneBlock} from './gene-block.ts'
import {matches} from './genotype-notation.ts'
import type {Alleles} from './locus.ts'
import {hatchingChance, lookLikelihood, type Sex} from './look-likelihood.ts'

/** What is told of one bird itself. */
export interface Told {
  readonly readings: readonly Reading[]
  readonly tested: ReturnType<Flock['tested']>
  /** a further weight of what stands at one locus, such as a test that now and then fails */
  readonly weighed?: {readonly locus: number; weight(alleles: Alleles): number}
}

/** Likelihoods of genotypes, from what was seen and tested of each bird itself. */
export interface WhatWasSeen {
  /** what the flock tells of a bird */
  told(animal: number): Told
  /** at one block, from the traits that only its loci decide and from tests: by number of the genotype */
  alone(animal: number, block: number, told: Told): Float64Array
  /** from the traits that several blocks decide together: of one genotype at every block; null where nothing of the kind was seen */
  together(animal: number, told: Told): ((genotypes: readonly number[]) => number) | null
  /** chance that a chick with this genotype at a block hatches; each lethal rule names loci of one block only, and what kills in one leaves the chances of another as they are */
  hatching(block: number, sex: Animal['sex']): Float64Array
}

/**
 * @param slack share of scores and tests that may be wrong in ways no record states
 * @throws {RangeError} where a lethal rule names loci of several blocks
 */
export function whatWasSeen(flock: Flock, blocks: readonly GeneBlock[], slack: number): WhatWasSeen {
  const blockOf = flock.loci.map((_, locus) => blocks.findIndex(({loci}) => loci.includes(locus)))
  /** by trait: the blocks that its rules lean on */
  const blocksOf = flock.traits.map(({look}) => [...new Set(look.loci.map(locus => blockOf[locus] ?? -1))])
  /** by trait, then by rule: the block of the loci that a lethal rule names; of another rule, and of one that names none, null */
  const lethalBlocks = flock.traits.map(({look}) => look.rules.map(({is, patterns}) => {
    const named = new Set(is === 'lethal' ? patterns.flatMap((pattern, place) => (pattern ? [blockOf[look.loci[place] ?? -1] ?? -1] : [])) : [])
    if (named.size > 1) throw new RangeError('a lethal rule names loci that are not linked')
    return [...named][0] ?? null
  }))
  const known = new Map<string, Float64Array>()
  const remembered = (key: string, make: () => Float64Array): Float64Array => {
    const table = known.get(key) ?? make()
    known.set(key, table)
    return table
  }
  const ones = (block: number): Float64Array => new Float64Array(blocks[block]?.genotypes.length ?? 0).fill(1)

  /** by genotype of one block; the flock's other loci are not asked */
  const aloneOf = (reading: Reading, block: number, sex: Animal['sex']): Float64Array => remembered(`${block} ${reading.trait} ${sex} ${reading.scored.join()}`, () =>
    ones(block).map((_, genotype) => likelihoodOf(reading, [[block, genotype]], sex)))

  function likelihoodOf(reading: Reading, genotypes: readonly (readonly [number, number])[], sex: Animal['sex']): number {
    const alleles = allelesOf(genotypes)
    const told = sexOf(genotypes, sex) ?? flock.traits[reading.trait]?.look.seenIn ?? null
    if (told !== null) return lookLikelihood(flock, reading, alleles, told, slack)
    return (lookLikelihood(flock, reading, alleles, 'male', slack) + lookLikelihood(flock, reading, alleles, 'female', slack)) / 2
  }

  function allelesOf(genotypes: readonly (readonly [number, number])[]): Alleles[] {
    const alleles: Alleles[] = []
    for (const [number, genotype] of genotypes) {
      const block = blocks[number], held = block?.genotypes[genotype]
      if (block && held) block.loci.forEach((locus, place) => { alleles[locus] = allelesAt(block, held, place) })
    }
    return alleles
  }

  /** a bird of unknown sex tells it by how many Z it has */
  function sexOf(genotypes: readonly (readonly [number, number])[], sex: Animal['sex']): Sex | null {
    if (sex !== 'unknown') return sex
    for (const [number, genotype] of genotypes) if (blocks[number]?.on === 'Z') return genotype < (blocks[number]?.pairs ?? 0) ? 'male' : 'female'
    return null
  }

  return {
    told: animal => ({readings: flock.readings(animal), tested: flock.tested(animal)}),
    alone(animal, block, {readings, tested, weighed}) {
      const sex = flock.pedigree.animals[animal]?.sex ?? 'unknown'
      const likelihood = ones(block)
      for (const reading of readings) {
        if (blocksOf[reading.trait]?.length !== 1 || blocksOf[reading.trait]?.[0] !== block) continue
        aloneOf(reading, block, sex).forEach((entry, genotype) => { likelihood[genotype] = (likelihood[genotype] ?? 0) * entry })
      }
      if (tested) {
        likelihood.forEach((entry, genotype) => {
          const alleles = allelesOf([[block, genotype]])
          const fits = blocks[block]?.loci.every(locus => !tested[locus] || matches(tested[locus], alleles[locus] ?? [0, null])) ?? true
          if (!fits) likelihood[genotype] = entry * slack
        })
      }
      if (weighed && blockOf[weighed.locus] === block) {
        likelihood.forEach((entry, genotype) => { likelihood[genotype] = entry * weighed.weight(allelesOf([[block, genotype]])[weighed.locus] ?? [0, null]) })
      }
      return likelihood
    },
    together(animal, {readings: all}) {
      const sex = flock.pedigree.animals[animal]?.sex ?? 'unknown'
      const readings = all.filter(({trait}) => (blocksOf[trait]?.length ?? 0) > 1)
      if (readings.length === 0) return null
      return genotypes => readings.reduce((product, reading) =>
        product * likelihoodOf(reading, (blocksOf[reading.trait] ?? []).map(block => [block, genotypes[block] ?? 0] as const), sex), 1)
    },
    hatching(block, sex) {
      return remembered(`hatching ${block} ${sex}`, () => {
        const traits = flock.traits.flatMap((trait, number) => {
          const rules = trait.look.rules.filter((_, rule) => lethalBlocks[number]?.[rule] === block)
          return rules.length === 0 ? [] : [{...trait, look: {...trait.look, rules}}]
        })
        return ones(block).map((_, genotype) => {
          const alleles = allelesOf([[block, genotype]]), told = sexOf([[block, genotype]], sex)
          const chance = (each: Sex): number => hatchingChance({traits}, alleles, each)
          return traits.length === 0 ? 1 : told !== null ? chance(told) : (chance('male') + chance('female')) / 2
        })
      })
    },
  }
}
