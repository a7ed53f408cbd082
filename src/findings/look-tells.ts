import type {Locus} from '../heredity/locus.ts'
import {lookOf} from '../heredity/look-rules.ts'
import type {Sex as Told} from '../heredity/look-likelihood.ts'
import {toldApart} from '../heredity/told-apart.ts'
import type {Sex, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'

/** What one look of a trait says of one locus, were every score right. */
export interface LookTells {
  /** alleles, by number, that some bird of this look has */
  readonly may: ReadonlySet<number>
  /** alleles that every bird of this look has */
  readonly must: ReadonlySet<number>
  /** the allele that is all there is at the locus of every bird of this look; null where there is none such */
  readonly only: number | null
}

/**
 * What does a look say of a locus? All genotypes of the locus, with one of every sort at the trait's others that the rules tell apart, are gone through that look so in this sex; one of which no rule speaks may
 * look like anything. Null where the trait has no rules, names another locus, no genotype looks so, or there are too many to try.
 *
 * @example single says p+ is all there is; pea says there is P, and p+ may be
 */
export function lookTells(trait: Trait, state: string, sex: Sex, locus: Locus): LookTells | null {
  const rules = lookRulesOf(trait), place = trait.loci.indexOf(locus), number = trait.states.indexOf(state)
  if (!rules || place < 0 || number < 0) return null
  const may = new Set<number>()
  let must: Set<number> | null = null, only: number | null = null, alone = true
  for (const told of sexesOf(sex, rules.seenIn)) {
    const all = toldApart(rules, trait.loci, told, place)
    if (!all) return null
    for (const genotype of all) {
      const {states, unsaid} = lookOf(rules, genotype, told)
      if ((states[number] ?? 0) === 0 && unsaid === 0) continue
      const [one, other] = genotype[place] ?? [0, null], here = new Set(other === null ? [one] : [one, other])
      for (const allele of here) may.add(allele)
      must = must === null ? here : common(must, here)
      const [first = null] = here
      alone &&= here.size === 1 && (only === null || only === first)
      only = first
    }
  }
  return must === null ? null : {may, must, only: alone ? only : null}
}

/**
 * Is this look never seen on a bird that has none of these alleles? Then a bird of it shows that it has one: single shows `p+`, but rose shows no `r+`.
 *
 * @returns false too where `lookTells` can tell nothing
 */
export function alwaysHas(trait: Trait, state: string, sex: Sex, locus: Locus, alleles: readonly number[]): boolean {
  const without = lookTells(trait, state, sex, locus), rules = lookRulesOf(trait), place = trait.loci.indexOf(locus), number = trait.states.indexOf(state)
  if (!without || !rules) return false
  return sexesOf(sex, rules.seenIn).every(told => (toldApart(rules, trait.loci, told, place) ?? []).every(genotype => {
    const {states, unsaid} = lookOf(rules, genotype, told)
    return ((states[number] ?? 0) === 0 && unsaid === 0) || genotype[place]?.some(allele => allele !== null && alleles.includes(allele)) === true
  }))
}

const sexesOf = (sex: Sex, seenIn: Told | null): readonly Told[] => (sex !== 'unknown' ? [sex] : seenIn === null ? ['male', 'female'] : [seenIn])

const common = (some: ReadonlySet<number>, others: ReadonlySet<number>): Set<number> => new Set([...some].filter(each => others.has(each)))
