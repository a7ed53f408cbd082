import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import {forecastOf, phasesOf} from '../heredity/mating-forecast.ts'
import {MOST_TEST_CHICKS} from '../heredity/test-mating-size.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {misscoringRows} from './flock-of-book.ts'
import type {Heredity} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {lookTells} from './look-tells.ts'
import {parentsTogether, type ParentsTogether} from './parents-together.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** A bird to be tested for an allele by its chicks. */
export interface TestMatingAsked {
  readonly bird: Bird
  readonly locus: Locus
  /** the allele it may hide, by number */
  readonly allele: number
  /** a bird of the book, or what stands at every locus of the group in a mate that is no bird of it */
  readonly mate: Bird | readonly Alleles[]
  /** the chicks looked at */
  readonly among: 'sons' | 'daughters' | 'all'
  /** chance that may be left that the bird carries it after all */
  readonly limit: number
}

export interface TestMatingPlan {
  readonly trait: Trait
  /** clean chicks needed; 0 where it is cleared already, null where no number clears it */
  readonly chicks: number | null
  /** with none, one, two … clean chicks */
  readonly course: readonly AfterCleanChicks[]
  readonly exact: boolean
}

export interface AfterCleanChicks {
  readonly chicks: number
  /** chance that the bird carries the allele, given all that is known and so many clean chicks */
  readonly carrier: number
  /** chance that a carrier gives so many chicks without one that shows it; null where the bird is surely none */
  readonly missed: number | null
}

/** Where no number clears the bird the course is told as far as this. */
const TOLD_AT_LEAST = 20
const TOLD_AT_MOST = 200

/**
 * How many clean chicks clear a bird, by what is known of it and of its mate?
 *
 *     P(carrier | n clean) = Σ over carriers P(g, h) · q(g, h)ⁿ / Σ P(g, h) · q(g, h)ⁿ
 *
 * over the genotypes g of the bird and h of its mate together, as the whole flock has them; q the chance that a chick of such parents, looked at, is not scored
 * as one of those looks that only birds with nothing but the allele have. Misscoring of the trait is in it. It is the same as adding n clean chicks to the book.
 * Null where no look of any trait tells the allele in the chicks looked at.
 *
 * @throws RangeError where bird and mate are not of two sexes, or the mate's genotype is none of the other sex
 * @see Bayes’ rule; for one locus and known mates `chicksToClear`
 */
export function testMatingPlan(asked: TestMatingAsked, heredity: Heredity, {numberOf}: PedigreeOfBook): TestMatingPlan | null {
  const {bird, locus, allele, mate, limit} = asked, group = heredity.groupOf(locus), place = group.loci.indexOf(locus), number = numberOf(bird)
  const found = tellingTrait(group, asked)
  if (!found) return null
  const {pairs, exact} = 'kind' in mate ? parentsTogether(heredity, group, number, numberOf(mate)) : withGenotype(heredity, group, number, mate)
  const ways = pairs.map(({is, probability}) => ({probability, carries: is.one[place]?.includes(allele) === true, clean: 1 - shownBy(is, group, asked, found)}))
  const after = (chicks: number): AfterCleanChicks => {
    const sum = (carriers: boolean, count: number) => ways.reduce((total, {probability, carries, clean}) => (carries === carriers ? total + probability * clean ** count : total), 0)
    const carrier = sum(true, chicks), without = sum(false, chicks), before = sum(true, 0)
    return {chicks, carrier: carrier === 0 ? 0 : carrier / (carrier + without), missed: before === 0 ? null : carrier / before}
  }
  const chicks = smallest(count => after(count).carrier <= limit * (1 + 1e-12))
  const told = Math.min(chicks ?? TOLD_AT_LEAST, TOLD_AT_MOST)
  return {trait: found.trait, chicks, exact, course: Array.from({length: told + 1}, (_, count) => after(count))}
}

/** The first trait of the group by which some chick of those looked at can show the allele. */
function tellingTrait(group: LocusGroup, {locus, allele, among}: TestMatingAsked): {readonly trait: Trait; readonly index: number} | null {
  const index = group.traits.findIndex(trait => sexesOf(among).some(sex => trait.states.some(state => lookTells(trait, state, sex, locus)?.only === allele)))
  const trait = group.traits[index]
  return trait ? {trait, index} : null
}

const sexesOf = (among: TestMatingAsked['among']): readonly ('male' | 'female')[] => (among === 'sons' ? ['male'] : among === 'daughters' ? ['female'] : ['male', 'female'])

function withGenotype(heredity: Heredity, group: LocusGroup, bird: number, mate: readonly Alleles[]): {readonly pairs: readonly Probable<ParentsTogether>[]; readonly exact: boolean} {
  const {found} = heredity.workedOtherwise(group, {}, new Set([bird]))
  return {exact: found.exact, pairs: found.together(bird).map(({is, probability}) => ({is: {one: is, other: mate}, probability}))}
}

/** Chance that a chick that can be looked at is scored as showing the allele. */
function shownBy({one, other}: ParentsTogether, group: LocusGroup, {bird, locus, allele, among}: TestMatingAsked, {trait, index}: {readonly trait: Trait; readonly index: number}): number {
  const rows = misscoringRows(trait), {loci, linkages} = group
  const traits = group.traits.flatMap(each => lookRulesOf(each, loci) ?? [])
  const [sire, dam] = bird.sex === 'male' ? [one, other] : [other, one]
  let shown = 0, seen = 0
  for (const a of phasesOf(sire)) for (const b of phasesOf(dam)) {
    const forecast = forecastOf({loci, linkages, traits, sire: a, dam: b})
    for (const sex of sexesOf(among)) {
      const telling = trait.states.map(state => lookTells(trait, state, sex, locus)?.only === allele)
      for (const {states, share} of forecast[sex].looks) {
        const row = rows[states[index] ?? -1]
        if (!row) continue
        seen += share
        row.forEach((chance, state) => { if (telling[state]) shown += share * chance })
      }
    }
  }
  return seen === 0 ? 0 : shown / seen
}

function smallest(enough: (chicks: number) => boolean): number | null {
  if (enough(0)) return 0
  if (!enough(MOST_TEST_CHICKS)) return null
  let short = 0, long = MOST_TEST_CHICKS
  while (long - short > 1) {
    const middle = Math.floor((short + long) / 2)
    if (enough(middle)) long = middle
    else short = middle
  }
  return long
}
