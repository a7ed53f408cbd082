import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {hasAllele} from './chance-explained.ts'
import {countedValue} from './counted-value.ts'
import type {Heredity, WrittenGenotype} from './heredity.ts'
import {lookTells} from './look-tells.ts'

/** An allele that a bird's counted look says it has, and that it rather has not by all else that was seen. */
export interface DisputedAllele {
  readonly allele: number
  readonly trait: Trait
  /** the look that no bird without the allele has */
  readonly state: string
  /** what it has if the look is right, the likeliest first, summing to 1; empty where a test, or its parents as they are written, leave it no such genotype */
  readonly taken: readonly WrittenGenotype[]
  /** may a bird of this look have these alleles? */
  fits(is: Alleles): boolean
}

/** From this chance on a score is believed rather than doubted. */
const LIKELY = 0.5

/** The allele at this locus that the bird's own score claims and its kin, or a test, make unlikely: below one in two; null where there is none. Of several the least likely. */
export function disputedAllele(bird: Bird, locus: Locus, heredity: Pick<Heredity, 'of' | 'groupOf'>): DisputedAllele | null {
  const {genotypes} = heredity.of(bird, locus), found: (DisputedAllele & {readonly chance: number})[] = []
  for (const trait of heredity.groupOf(locus).traits) {
    const state = trait.loci.includes(locus) ? countedValue(bird, trait) : null, told = typeof state === 'string' ? lookTells(trait, state, bird.sex, locus) : null
    for (const allele of told?.must ?? []) {
      const chance = hasAllele(genotypes, allele), fits = (is: Alleles): boolean => is.includes(allele) && is.every(each => each === null || told?.may.has(each))
      if (chance < LIKELY && typeof state === 'string') found.push({allele, trait, state, chance, taken: givenThat(genotypes, fits), fits})
    }
  }
  return found.sort((a, b) => a.chance - b.chance)[0] ?? null
}

function givenThat(genotypes: readonly WrittenGenotype[], holds: (is: Alleles) => boolean): readonly WrittenGenotype[] {
  const some = genotypes.filter(({is, probability}) => probability > 0 && holds(is)), whole = some.reduce((sum, {probability}) => sum + probability, 0)
  return some.map(each => ({...each, probability: each.probability / whole}))
}
