import {conceptions, type Homologues, type StatedParents} from './conceptions.ts'
import type {Probable} from './genotype-probabilities.ts'
import type {Alleles} from './locus.ts'
import {lookOf, type LookRules} from './look-rules.ts'
import type {Sex} from './look-likelihood.ts'

export interface StatedMating extends StatedParents {
  readonly traits: readonly LookRules[]
}

/** Looks of several traits on one chick. */
export interface LooksTogether {
  /** by trait the number of a state; null where no rule says it or the sex cannot show it */
  readonly states: readonly (number | null)[]
  readonly share: number
}

export interface ForecastOfSex {
  /** share of the embryos of this sex that never hatch */
  readonly lost: number
  /** of chicks that hatch, at every locus, likeliest first */
  readonly genotypes: readonly Probable<readonly Alleles[]>[]
  /** of chicks that hatch, all traits together, likeliest first */
  readonly looks: readonly LooksTogether[]
}

export interface StatedForecast {
  readonly male: ForecastOfSex
  readonly female: ForecastOfSex
  /** share of all embryos that never hatch */
  readonly lost: number
}

/**
 * What will two birds of known genotypes give?
 *
 *     P(chick) = Σ P(sire's gamete) · P(dam's gamete) · h / (1 − lost)        h its chance to hatch        lost = Σ P · (1 − h)
 *
 * for each sex, over every locus, with linkage and phase; loci of the Z cross over in cocks only, and daughters have their sire's. A sex of which none hatches
 * has no genotypes and no looks.
 *
 * @param mating genotypes by chromosome: `[[0, 1], [0, 1]]` has the first alleles of both loci on one chromosome (coupling), `[[0, 1], [1, 0]]` on two (repulsion)
 * @returns shares that sum to 1 in each sex
 * @throws RangeError where a parent's genotype is not one of its sex and locus
 * @see Mendel’s rules; for two linked loci the classes of Fisher & Balmukand 1928, J. Genet. 20:79 (from memory)
 * @example walnut P/p+ R/r+ × the same gives walnut, pea, rose, single as 9 : 3 : 3 : 1
 */
export function forecastOf(mating: StatedMating): StatedForecast {
  const male = ofSex(mating, 'male'), female = ofSex(mating, 'female')
  return {male, female, lost: (male.lost + female.lost) / 2}
}

function ofSex({traits, ...mating}: StatedMating, sex: Sex): ForecastOfSex {
  const conceived = conceptions(mating, sex).map(({is, probability}) => ({is, probability: probability * hatching(traits, is, sex)}))
  const hatched = conceived.reduce((sum, {probability}) => sum + probability, 0)
  const genotypes = hatched === 0 ? [] : conceived.filter(({probability}) => probability > 0).map(({is, probability}) => ({is, probability: probability / hatched}))
    .sort((a, b) => b.probability - a.probability)
  return {lost: Math.max(0, 1 - hatched), genotypes, looks: looksOf(traits, genotypes, sex)}
}

const hatching = (traits: readonly LookRules[], genotype: readonly Alleles[], sex: Sex): number => traits.reduce((chance, rules) => chance * (1 - lookOf(rules, genotype, sex).lethal), 1)

/**
 * What do chicks of these genotypes look like, in several traits together? Given the genotype each trait shows by itself; misscoring is left out.
 *
 * @param genotypes of chicks that have hatched, summing to 1
 * @returns likeliest first, summing to 1
 */
export function looksOf(traits: readonly LookRules[], genotypes: readonly Probable<readonly Alleles[]>[], sex: Sex): readonly LooksTogether[] {
  const sums = new Map<string, {states: readonly (number | null)[]; share: number}>()
  for (const {is, probability} of genotypes) {
    let partly: {states: readonly (number | null)[]; share: number}[] = [{states: [], share: probability}]
    for (const rules of traits) {
      const seen = seenAs(rules, is, sex)
      partly = partly.flatMap(({states, share}) => seen.map(({state, chance}) => ({states: [...states, state], share: share * chance})))
    }
    for (const {states, share} of partly) {
      const key = states.join(), known = sums.get(key)
      if (known) known.share += share
      else sums.set(key, {states, share})
    }
  }
  // shares that rounding alone keeps from the whole are the whole: a sure look is 1
  const all = [...sums.values()], total = all.reduce((sum, {share}) => sum + share, 0), [only] = all
  return all.length === 1 && only && Math.abs(total - 1) < ROUNDING ? [{...only, share: 1}] : all.sort((a, b) => b.share - a.share)
}

/** What rounding makes of a sum of shares. */
const ROUNDING = 1e-9

/** What a chick that hatched is seen as in one trait, as far as it can be. */
function seenAs(rules: LookRules, genotype: readonly Alleles[], sex: Sex): readonly {readonly state: number | null; readonly chance: number}[] {
  const {states, lethal, unsaid} = lookOf(rules, genotype, sex), hatched = 1 - lethal
  if (hatched <= 0) return []
  const seen: {state: number | null; chance: number}[] = Array.from(states, (chance, state) => ({state, chance: chance / hatched}))
  return [...seen, {state: null, chance: unsaid / hatched}].filter(({chance}) => chance > 0)
}

/** Share of embryos that never hatch where it is not known which alleles share a chromosome: every phase alike. */
export function lostOfUnphased(mating: Omit<StatedMating, 'sire' | 'dam'> & {readonly sire: readonly Alleles[]; readonly dam: readonly Alleles[]}): number {
  const sires = phasesOf(mating.sire), dams = phasesOf(mating.dam)
  const losses = sires.flatMap(sire => dams.map(dam => forecastOf({...mating, sire, dam}).lost))
  return losses.reduce((sum, lost) => sum + lost, 0) / losses.length
}

/** Every way in which what stands at the loci can lie on two chromosomes. */
export function phasesOf(genotype: readonly Alleles[]): readonly (readonly Homologues[])[] {
  const isMixed = ([one, other]: Alleles): boolean => other !== null && one !== other
  const first = genotype.findIndex(isMixed)
  return genotype.reduce<readonly (readonly Homologues[])[]>((all, alleles, place) => {
    const [one, other] = alleles
    const ways: Homologues[] = place !== first && isMixed(alleles) && other !== null ? [alleles, [other, one]] : [alleles]
    return all.flatMap(some => ways.map(way => [...some, way]))
  }, [[]])
}
