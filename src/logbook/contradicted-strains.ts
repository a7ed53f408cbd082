/** Strains that are said to breed true for a look which none of their founders has. */
import {lookOf} from '../heredity/look-rules.ts'
import type {Alleles} from '../heredity/locus.ts'
import {trueBreedingGenotypes} from './allele-shares.ts'
import type {Bird, Logbook, Score, Strain, Trait} from './book.ts'
import {evidenceOf} from './contrary-scorings.ts'
import {lookRulesOf} from './look-rules-of.ts'

export interface ContradictedStrain {
  readonly strain: Strain
  readonly trait: Trait
  /** what it is said to breed true for */
  readonly state: string
  /** all its founders that were scored, with what counts of each */
  readonly founders: readonly {readonly bird: Bird; readonly score: Score}[]
}

/** A look that birds which breed true for the state may have, since its rule does not always show, contradicts nothing. */
export function contradictedStrains({strains, birds, hatches}: Pick<Logbook, 'strains' | 'birds' | 'hatches'>): readonly ContradictedStrain[] {
  return strains.flatMap(strain => [...strain.trueFor].flatMap(([trait, state]): ContradictedStrain[] => {
    const founders = birds.filter(bird => bird.strain === strain).flatMap(bird => {
      const score = bird.looks.get(trait)?.counted
      return score ? [{bird, score}] : []
    })
    if (founders.length === 0) return []
    const bought = hatches.filter(hatch => hatch.strain === strain).flatMap(({tallies}) => tallies.flatMap(tally => tally.looks.get(trait)?.counted ?? []))
    const fitting = looksTrueFor(trait, state)
    return [...founders.flatMap(({bird}) => evidenceOf(bird, trait)), ...bought].some(({value}) => fitting.has(String(value))) ? [] : [{strain, trait, state, founders}]
  }))
}

/** The state, and what else birds look like that breed true for it. */
function looksTrueFor(trait: Trait, state: string): ReadonlySet<string> {
  const rules = lookRulesOf(trait), looks = new Set([state])
  for (const alleles of trueBreedingGenotypes(trait, state) ?? []) {
    for (const sex of ['male', 'female'] as const) {
      const genotype = trait.loci.map(({on}, place): Alleles => [alleles[place] ?? 0, on === 'Z' && sex === 'female' ? null : alleles[place] ?? 0])
      if (rules) lookOf(rules, genotype, sex).states.forEach((chance, number) => { if (chance > 0) looks.add(trait.states[number] ?? '') })
    }
  }
  return looks
}
