/** How common each allele of a locus is in a founding strain, and how that is known. */
import type {Alleles} from '../heredity/locus.ts'
import {lookOf, type LookRules} from '../heredity/look-rules.ts'
import {MOST_TOLD_APART} from '../heredity/told-apart.ts'
import type {Locus, Strain, Trait} from './book.ts'
import {lookRulesOf} from './look-rules-of.ts'

export interface AlleleShares {
  /** by the number of the allele in the locus's list; they make 1 */
  readonly shares: readonly number[]
  /** stated in the strain's record · fixed by a look that it breeds true for · assumed: all that may be there alike, for nothing is known */
  readonly known: 'stated' | 'true-for' | 'assumed'
}

/**
 * The alleles of a strain at a locus: as its record states them; else the one that every look it breeds true for leaves; else all that those looks
 * leave, alike, which is an assumption and to be shown as one.
 */
export function alleleShares(strain: Strain, locus: Locus): AlleleShares {
  const stated = strain.alleles.get(locus.symbol)
  const sum = stated === undefined ? 0 : locus.alleles.reduce((total, allele) => total + (stated.get(allele) ?? 0), 0)
  if (stated !== undefined && sum > 0) return {known: 'stated', shares: locus.alleles.map(allele => (stated.get(allele) ?? 0) / sum)}
  const left = leftBy(strain, locus)
  return {known: left.length === 1 ? 'true-for' : 'assumed', shares: locus.alleles.map((_, allele) => (left.includes(allele) ? 1 / left.length : 0))}
}

/** The alleles that the looks of a strain leave; all of them where these say nothing, or contradict each other. */
function leftBy({trueFor}: Strain, locus: Locus): readonly number[] {
  const all = locus.alleles.map((_, allele) => allele)
  const left = [...trueFor].reduce((some, [trait, state]) => {
    const possible = allelesTrueFor(trait, state, locus)
    return possible === null ? some : some.filter(allele => possible.includes(allele))
  }, all)
  return left.length === 0 ? all : left
}

/**
 * The alleles of a locus, by number, that stand in true-breeding genotypes with this look: every locus of the trait holds one allele alone, and more
 * than half of such birds show the state. Null where the trait's rules do not name the locus, or have too many loci to try them all.
 */
export function allelesTrueFor(trait: Trait, state: string, locus: Locus): readonly number[] | null {
  if (!trait.loci.includes(locus)) return null
  const place = trait.loci.indexOf(locus)
  const pure = trueBreedingGenotypes(trait, state)
  return pure && [...new Set(pure.map(alleles => alleles[place] ?? 0))].sort((a, b) => a - b)
}

/** The same whole: each an allele for every locus of the trait. Null as there. */
export function trueBreedingGenotypes(trait: Trait, state: string): readonly (readonly number[])[] | null {
  const rules = lookRulesOf(trait), pure = rules && pureGenotypes(trait.loci), number = trait.states.indexOf(state)
  return rules && pure ? pure.filter(alleles => breedsTrue(rules, trait.loci, alleles, number)) : null
}

/** One allele for each locus, in every combination. */
function pureGenotypes(loci: readonly Locus[]): readonly (readonly number[])[] | null {
  if (loci.reduce((product, {alleles}) => product * alleles.length, 1) > MOST_TOLD_APART) return null
  return loci.reduce<readonly (readonly number[])[]>((all, {alleles}) => all.flatMap(some => alleles.map((_, allele) => [...some, allele])), [[]])
}

function breedsTrue(rules: LookRules, loci: readonly Locus[], alleles: readonly number[], state: number): boolean {
  const sexes = rules.seenIn === null ? (['male', 'female'] as const) : [rules.seenIn]
  return sexes.some(sex => {
    const genotype = loci.map(({on}, place): Alleles => [alleles[place] ?? 0, on === 'Z' && sex === 'female' ? null : alleles[place] ?? 0])
    return (lookOf(rules, genotype, sex).states[state] ?? 0) > 0.5
  })
}
