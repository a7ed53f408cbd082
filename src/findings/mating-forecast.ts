import {allelesSpokenOf} from './caution-alleles.ts'
import type {GenotypeProbabilities, Probable} from '../heredity/genotype-probabilities.ts'
import {writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Sex} from '../heredity/look-likelihood.ts'
import type {LookRule, LookRules} from '../heredity/look-rules.ts'
import {looksOf, lostOfUnphased} from '../heredity/mating-forecast.ts'
import type {BookLocus, KnownLocus, Logbook, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {chicksOfPairs, type Heredity, type PairAsked, type WrittenGenotype} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {parentsTogether} from './parents-together.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What a mating will give: what is lost and what to beware of stand first. */
export interface MatingForecast extends PairAsked {
  /** share of the embryos that never hatch, by the loci that the lethal rules name, the greatest first; none where less than one in a thousand is lost. One that two rules kill counts under both */
  readonly lost: readonly LossAtLoci[]
  /** what one ought to know of alleles that one chick in a hundred or more may have, what is lethal first, then what hurts the bird; with the chance of each chick to have such an allele */
  readonly cautions: readonly CautionOfPair[]
  readonly male: ForecastOfSex
  readonly female: ForecastOfSex
  /** chicks, losses and both parents were worked exactly at every locus; else by messages that settled */
  readonly exact: boolean
}

export interface LossAtLoci {
  readonly loci: readonly Locus[]
  readonly share: number
}

export type CautionOfPair = KnownLocus['cautions'][number] & {
  readonly locus: BookLocus
  /** those it speaks of that a chick may have */
  readonly alleles: readonly string[]
  readonly chance: number
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

/** A caution is given when so many chicks have an allele that it speaks of: one in a hundred. What is always said is not read. */
export const WORTH_A_CAUTION = 0.01
/** Losses are told from one embryo in a thousand on: less comes of scores that might be wrong, and no hatch can show it. */
export const WORTH_A_LOSS = 0.001

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
    const sire = numberOf(pair.sire), dam = numberOf(pair.dam)
    const losses = worked.map(({group, rules}) => lossesOf(heredity, group, rules.map(({look}) => look), sire, dam))
    const isExact = ({group, found, numberOf: chick}: ChicksOfGroup): boolean => group.loci.every((_, locus) =>
      found.isExact(chick(index, 'male'), locus) && found.isExact(chick(index, 'female'), locus) && [sire, dam].every(parent => heredity.worked(group).found.isExact(parent, locus)))
    return {
      ...pair, male, female, cautions: cautionsOf(book, male, female), exact: worked.every(isExact) && losses.every(({exact}) => exact),
      lost: losses.flatMap(({lost}) => lost).filter(({share}) => share >= WORTH_A_LOSS).sort((a, b) => b.share - a.share),
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

/** By the loci that lethal rules name, what these rules alone would kill. Where no rule of the group is lethal nothing need be worked. */
function lossesOf(heredity: Heredity, group: LocusGroup, traits: readonly LookRules[], sire: number, dam: number): {readonly lost: readonly LossAtLoci[]; readonly exact: boolean} {
  const named = new Map(traits.flatMap(look => look.rules.filter(({is}) => is === 'lethal').map(rule => [lociNamed(rule, look).join(), lociNamed(rule, look)] as const)))
  if (named.size === 0) return {lost: [], exact: true}
  const {pairs, exact} = parentsTogether(heredity, group, sire, dam), {loci, linkages} = group
  return {
    exact, lost: [...named].map(([key, places]) => {
      const lethal = traits.map(look => ({...look, rules: look.rules.filter(rule => rule.is !== 'lethal' || lociNamed(rule, look).join() === key)})).filter(({rules}) => rules.some(({is}) => is === 'lethal'))
      return {
        loci: loci.filter((_, place) => places.includes(place)),
        share: pairs.reduce((sum, {is: {one, other}, probability}) => sum + probability * lostOfUnphased({loci, linkages, traits: lethal, sire: one, dam: other}), 0),
      }
    }),
  }
}

/** By their places in the group, the loci of which a rule asks something. */
const lociNamed = ({patterns}: LookRule, {loci}: LookRules): readonly number[] =>
  loci.filter((_, number) => (patterns[number] ?? null) !== null && patterns[number]?.some(place => place !== 'any')).toSorted((a, b) => a - b)

/** Of every caution the alleles that it speaks of, and how many of the chicks that hatch have one, mean of both sexes. */
function cautionsOf({loci}: Logbook, male: ForecastOfSex, female: ForecastOfSex): readonly CautionOfPair[] {
  const having = (sex: ForecastOfSex, locus: Locus, some: readonly string[]): number => sex.genotypes.find(each => each.locus === locus)?.genotypes
    .reduce((sum, {is, probability}) => sum + (is.some(allele => allele !== null && some.includes(locus.alleles[allele] ?? '')) ? probability : 0), 0) ?? 0
  return [...loci.values()].flatMap(locus => (locus.known?.cautions ?? []).map(caution => {
    const chanceOf = (some: readonly string[]): number => (having(male, locus.locus, some) + having(female, locus.locus, some)) / 2
    const spoken = allelesSpokenOf(caution.says, locus.locus)
    return {...caution, locus, alleles: spoken.filter(allele => chanceOf([allele]) > 0), chance: chanceOf(spoken)}
  })).filter(({chance}) => chance >= WORTH_A_CAUTION).sort((a, b) => GRAVEST.indexOf(a.about) - GRAVEST.indexOf(b.about) || b.chance - a.chance)
}

const GRAVEST = ['lethal', 'welfare', 'breeding'] as const
