import type {GenotypeProbabilities, Probable} from '../heredity/genotype-probabilities.ts'
import {writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Sex} from '../heredity/look-likelihood.ts'
import type {LookRules} from '../heredity/look-rules.ts'
import {looksOf, lostOfUnphased} from '../heredity/mating-forecast.ts'
import type {BookLocus, KnownLocus, Logbook, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {chicksOfPairs, type Heredity, type PairAsked, type WrittenGenotype} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {parentsTogether} from './parents-together.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What a mating will give: what is lost and what to beware of stand first. */
export interface MatingForecast extends PairAsked {
  /** share of the embryos that the rules say never hatch, each group of loci by itself; those of which some are lost */
  readonly lost: readonly {readonly group: LocusGroup; readonly share: number}[]
  /** of every locus at which a chick may have another allele than the wild one, with the chance that it has */
  readonly cautions: readonly (KnownLocus['cautions'][number] & {readonly locus: BookLocus; readonly chance: number})[]
  readonly male: ForecastOfSex
  readonly female: ForecastOfSex
  /** every group of loci was worked exactly; else by messages that settled */
  readonly exact: boolean
}

export interface ForecastOfSex {
  readonly traits: readonly LooksOfTrait[]
  readonly genotypes: readonly {readonly locus: Locus; readonly genotypes: readonly WrittenGenotype[]}[]
  /** looks of several traits together, likeliest first; null where the sex cannot show a trait or no rule says */
  together(traits: readonly Trait[]): readonly {readonly looks: readonly (string | null)[]; readonly share: number}[]
}

export interface LooksOfTrait {
  readonly trait: Trait
  /** every state that can come, in the trait's order */
  readonly states: readonly {readonly state: string; readonly share: number}[]
  /** share of which no rule says anything, or that the sex cannot show */
  readonly unsaid: number
}

/** A caution is given when so many chicks have the allele it may speak of. */
const WORTH_A_CAUTION = 1e-4

/** In one group: what two chicks of each pair may be, one of each sex. */
interface ChicksOfGroup {
  readonly group: LocusGroup
  readonly rules: readonly {readonly trait: Trait; readonly look: LookRules}[]
  readonly found: GenotypeProbabilities
  numberOf(pair: number, sex: Sex): number
}

/**
 * What will these matings give: which looks and genotypes, in which shares of each sex?
 *
 * A chick of each sex is added to the flock for each pair, unseen, and read with all the rest; so what two birds share, kin or common chicks, enters as it is.
 * Shares are of chicks that hatch, and of what they will be: misscoring is left out. Groups of loci are worked each by itself and multiplied, which leaves
 * aside only that a bird of doubtful descent may owe two of them to one doubt. All pairs asked for together are worked in one go.
 *
 * @see `genotypeProbabilities`, `lookOf`; `forecastOf` for stated genotypes
 */
export function matingForecasts(book: Logbook, heredity: Heredity, pedigree: PedigreeOfBook, pairs: readonly PairAsked[]): readonly MatingForecast[] {
  const {numberOf} = pedigree
  const standing = pairs.map(({sire, dam}) => heredity.pairs.findIndex(pair => pair.sire === sire && pair.dam === dam)), areThere = standing.every(place => place >= 0)
  const more = areThere ? [] : chicksOfPairs(pairs, pedigree)
  const worked = pairs.length === 0 ? [] : heredity.groups.map((group): ChicksOfGroup => {
    const base = heredity.worked(group), {firstMore} = base
    const {found} = areThere ? base : heredity.workedOtherwise(group, {more}, new Set(more.map((_, index) => firstMore + index)))
    const rules = group.traits.flatMap(trait => {
      const look = lookRulesOf(trait, group.loci)
      return look ? [{trait, look}] : []
    })
    return {group, rules, found, numberOf: (pair, sex) => firstMore + 2 * (areThere ? standing[pair] ?? 0 : pair) + (sex === 'male' ? 0 : 1)}
  })
  return pairs.map((pair, index): MatingForecast => {
    const male = ofSex(worked, index, 'male'), female = ofSex(worked, index, 'female')
    const losses = worked.flatMap(({group, rules}) => {
      const lost = lostOf(heredity, group, rules.map(({look}) => look), numberOf(pair.sire), numberOf(pair.dam))
      return lost.share > 0 ? [{group, ...lost}] : []
    })
    return {
      ...pair, male, female, lost: losses.map(({group, share}) => ({group, share})), cautions: cautionsOf(book, male, female),
      exact: worked.every(({group, found, numberOf: chick}) => group.loci.every((_, locus) => found.isExact(chick(index, 'male'), locus) && found.isExact(chick(index, 'female'), locus)))
        && losses.every(({exact}) => exact),
    }
  })
}

function ofSex(worked: readonly ChicksOfGroup[], pair: number, sex: Sex): ForecastOfSex {
  const chicks = worked.map(({group, rules, found, numberOf}) => ({group, rules, genotypes: found.together(numberOf(pair, sex))}))
  return {
    traits: chicks.flatMap(({rules, genotypes}) => rules.map(({trait, look}): LooksOfTrait => {
      const looks = looksOf([look], genotypes, sex), shareOf = (state: number | null) => looks.find(({states: [is]}) => is === state)?.share ?? 0
      return {trait, unsaid: shareOf(null), states: trait.states.map((state, number) => ({state, share: shareOf(number)})).filter(({share}) => share > 0)}
    })),
    genotypes: chicks.flatMap(({group, genotypes}) => group.loci.map((locus, place) => ({locus, genotypes: atLocus(genotypes, place, locus)}))),
    together: traits => chicks.reduce<readonly {looks: readonly (string | null)[]; share: number}[]>((all, {rules, genotypes}) => {
      const asked = rules.filter(({trait}) => traits.includes(trait))
      if (asked.length === 0) return all
      const own = looksOf(asked.map(({look}) => look), genotypes, sex)
      return all.flatMap(({looks, share}) => own.map(({states, share: part}) => {
        const joined = [...looks]
        asked.forEach(({trait}, place) => { joined[traits.indexOf(trait)] = trait.states[states[place] ?? -1] ?? null })
        return {looks: joined, share: share * part}
      }))
    }, [{looks: traits.map(() => null), share: 1}]).toSorted((a, b) => b.share - a.share),
  }
}

function atLocus(genotypes: readonly Probable<readonly Alleles[]>[], place: number, locus: Locus): readonly WrittenGenotype[] {
  const sums = new Map<string, WrittenGenotype>()
  for (const {is, probability} of genotypes) {
    const alleles = is[place] ?? [0, null], written = writeGenotype(alleles, locus)
    sums.set(written, {is: alleles, written, probability: (sums.get(written)?.probability ?? 0) + probability})
  }
  return [...sums.values()].sort((a, b) => b.probability - a.probability)
}

/** Where no rule of the group is lethal nothing is lost, and nothing need be worked. */
function lostOf(heredity: Heredity, group: LocusGroup, traits: readonly LookRules[], sire: number, dam: number): {readonly share: number; readonly exact: boolean} {
  const lethal = traits.filter(({rules}) => rules.some(({is}) => is === 'lethal'))
  if (lethal.length === 0) return {share: 0, exact: true}
  const {pairs, exact} = parentsTogether(heredity, group, sire, dam), {loci, linkages} = group
  return {exact, share: pairs.reduce((sum, {is: {one, other}, probability}) => sum + probability * lostOfUnphased({loci, linkages, traits: lethal, sire: one, dam: other}), 0)}
}

function cautionsOf({loci}: Logbook, male: ForecastOfSex, female: ForecastOfSex): MatingForecast['cautions'] {
  const hasOther = (sex: ForecastOfSex, locus: Locus): number => sex.genotypes.find(each => each.locus === locus)?.genotypes
    .reduce((sum, {is, probability}) => sum + (is.some(allele => allele !== null && !isWild(locus.alleles[allele])) ? probability : 0), 0) ?? 0
  return [...loci.values()].flatMap(locus => {
    const chance = (hasOther(male, locus.locus) + hasOther(female, locus.locus)) / 2
    const cautions = (locus.known?.cautions ?? []).filter(({says}) => namesNoOtherAllele(says, locus.locus))
    return chance < WORTH_A_CAUTION ? [] : cautions.map(caution => ({...caution, locus, chance}))
  }).sort((a, b) => GRAVEST.indexOf(a.about) - GRAVEST.indexOf(b.about))
}

const GRAVEST = ['lethal', 'welfare', 'breeding'] as const

/** A caution about `s^al` says nothing of birds that have only S and s+ to choose from. */
const namesNoOtherAllele = (says: string, {alleles}: Locus): boolean => (says.match(/[A-Za-z]+\^[A-Za-z]+/g) ?? []).every(named => alleles.includes(named))

/** `p+`, `W+`: the plus marks the allele of the wild fowl. */
const isWild = (allele: string | undefined): boolean => allele?.endsWith('+') === true
