import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Sex as Told} from '../heredity/look-likelihood.ts'
import {smallestCount} from '../heredity/test-mating-size.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {chickScores, sexesOf, type Among, type ChickScoresOf, type PairOfGenotypes} from './chick-scores.ts'
import type {Heredity} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {parentsTogether, type ParentsTogether} from './parents-together.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** Alleles that a bird may hide, and the chicks that are to tell. */
export interface HiddenAsked {
  readonly locus: Locus
  /** the alleles it may hide, by number; it carries one or it does not */
  readonly alleles: readonly number[]
  /** the chicks looked at */
  readonly among: Among
  /** by which they are judged; where it is not said, the trait that tells most */
  readonly trait?: Trait
  /** chance that may be left that the bird carries one after all */
  readonly limit: number
}

/** A bird to be tested by its chicks. */
export interface TestMatingAsked extends HiddenAsked {
  readonly bird: Bird
  /** a bird of the book, or what stands at every locus of the group in a mate that is no bird of it */
  readonly mate: Bird | readonly Alleles[]
}

export interface TestMatingPlan {
  readonly trait: Trait
  /** looks that speak for the allele; a chick scored with another is clean */
  readonly shows: readonly string[]
  /** of the sexes looked at, those that can show it */
  readonly sexes: readonly Told[]
  /** clean chicks needed; 0 where it is cleared already, null where no number clears it */
  readonly chicks: number | null
  /** with none, one, two … clean chicks, and with the number that clears the bird */
  readonly course: readonly AfterCleanChicks[]
  /** share of the eggs of this pair that is expected never to hatch */
  readonly lost: number
  readonly exact: boolean
}

export interface AfterCleanChicks {
  readonly chicks: number
  /** chance that the bird carries the allele, given all that is known and so many clean chicks */
  readonly carrier: number
  /** chance that a carrier gives so many chicks without one that is scored as showing it; null where the bird is surely none */
  readonly missed: number | null
}

/** So far the course is told row by row. */
const TOLD_AT_MOST = 40
const TOLD_UNREACHED = 20

/**
 * How many clean chicks clear a bird, by what is known of it and of its mate?
 *
 *     P(carrier | n clean) = Σ over carriers P(g, h) · q(g, h)ⁿ / Σ P(g, h) · q(g, h)ⁿ
 *
 * over the genotypes g of the bird and h of its mate together, as the whole flock has them; q the chance that a chick of such parents, looked at, is scored
 * clean. A look speaks for the allele where it comes, or is scored, more often of carriers than it would if something else stood in the allele's place; so a
 * dominant allele is told by its own look and a recessive one by the look of two. Penetrance, misscoring and the sexes that show the trait are in q. It is the
 * same as adding n clean chicks to the book.
 *
 * A look that comes as often of a bird without the allele is none against it: where one sex gives it anyway, only the other is looked at. Nor does the chance ever
 * rise with clean chicks: where more of them would only say that the pair hides the look, the course ends.
 *
 * @returns null where no look of the chicks of this pair tells the allele, or a clean chick tells nothing
 * @throws RangeError where bird and mate are not of two sexes, or the mate's genotype is none of the other sex
 * @see Bayes’ rule; for one locus, rightly read, and known mates `chicksToClear`
 */
export function testMatingPlan(asked: TestMatingAsked, heredity: Heredity, {numberOf}: PedigreeOfBook): TestMatingPlan | null {
  const {bird, locus, mate} = asked, group = heredity.groupOf(locus), number = numberOf(bird)
  const {pairs, exact} = 'kind' in mate ? parentsTogether(heredity, group, number, numberOf(mate)) : withGenotype(heredity, group, number, mate)
  return planOfPairs({...asked, group, pairs, exact, isSire: bird.sex === 'male', scores: new Map()})
}

/** A bird and its mate as what stands in both, with what was worked before of the same group. */
export interface PairsAsked extends HiddenAsked {
  readonly group: LocusGroup
  readonly pairs: readonly Probable<ParentsTogether>[]
  readonly exact: boolean
  /** the bird tested is the male of the pair */
  readonly isSire: boolean
  /** what the chicks of a pair are scored as, by trait and sexes looked at; kept for the next bird */
  readonly scores: Map<string, ChickScoresOf>
  /** the chicks asked about and no others, even where the sons or the daughters alone would tell */
  readonly strictly?: boolean
}

/** The plan of `testMatingPlan` where the chances of both birds' genotypes are at hand. */
export function planOfPairs(given: PairsAsked): TestMatingPlan | null {
  const found = planOf(given)
  if (found === null || !found.misleads || given.among !== 'all') return found?.plan ?? null
  if (given.strictly) return null
  const [best] = (['sons', 'daughters'] as const).flatMap(among => planOf({...given, among}) ?? []).filter(({misleads}) => !misleads).sort((a, b) => (a.plan.chicks ?? Infinity) - (b.plan.chicks ?? Infinity))
  return best?.plan ?? null
}

/** The plan, and whether a look that is to be expected anyway counts against the bird in it; null where a clean chick tells nothing. */
function planOf(given: PairsAsked): {readonly plan: TestMatingPlan; readonly misleads: boolean} | null {
  const asked = {...given, pairs: lumped(given)}, {group, pairs, exact, locus, alleles, limit} = asked, place = group.loci.indexOf(locus)
  const isCarrier = ({one}: ParentsTogether): boolean => one[place]?.some(each => each !== null && alleles.includes(each)) === true
  const before = pairs.reduce((sum, {is, probability}) => (isCarrier(is) ? sum + probability : sum), 0)
  const traits = asked.trait ? [asked.trait] : group.traits.filter(each => each.loci.includes(locus)), [any] = traits
  if (before === 0) return any ? {misleads: false, plan: {trait: any, shows: [], sexes: [], chicks: 0, exact, lost: 0, course: [{chicks: 0, carrier: 0, missed: null}]}} : null
  const [told] = traits.map(trait => tellingLooks(trait, asked, isCarrier)).filter(({tells}) => tells > LEAST * before).sort((a, b) => b.tells - a.tells)
  if (!told) return null

  const ways = pairs.map(({is, probability}) => ({probability, carries: isCarrier(is), clean: 1 - shown(told, is)}))
  const after = (chicks: number): AfterCleanChicks => {
    const sum = (carriers: boolean) => ways.reduce((total, {probability, carries, clean}) => (carries === carriers ? total + probability * clean ** chicks : total), 0)
    const carrier = sum(true), free = sum(false)
    // where no bird gives so many clean chicks the last of the chances is what it was
    return {chicks, carrier: carrier + free === 0 ? 1 : carrier / (carrier + free), missed: carrier / before}
  }
  const reached = smallestCount(count => after(count).carrier <= limit * (1 + 1e-12)), end = turn(count => after(count).carrier, reached ?? TOLD_AT_MOST)
  if (end === 0 && reached !== 0) return null
  const chicks = end === null || (reached !== null && reached <= end) ? reached : first(count => after(count).carrier <= limit * (1 + 1e-12), end)
  const rows = Math.min(chicks ?? Math.min(end ?? TOLD_UNREACHED, TOLD_UNREACHED), TOLD_AT_MOST), {trait, shows, scoresOf, pairOf} = told
  return {misleads: end !== null || comesAnyway(told, asked, isCarrier), plan: {
    trait, chicks, exact, shows: shows.map(state => trait.states[state] ?? ''),
    sexes: sexesOf(asked.among).filter(sex => trait.seenIn === null || trait.seenIn === sex),
    lost: pairs.reduce((sum, {is, probability}) => sum + probability * scoresOf(pairOf(is)).lost, 0),
    course: [...Array.from({length: rows + 1}, (_, count) => after(count)), ...(chicks !== null && chicks > rows ? [after(chicks)] : [])],
  }}
}

/** After how many clean chicks the chance would rise with one more; null where it does not up to so many. */
function turn(carrier: (chicks: number) => number, most: number): number | null {
  let now = carrier(0)
  for (let count = 0; count < most; count++) {
    const next = carrier(count + 1)
    if (next > now + 1e-12) return count
    now = next
  }
  return null
}

function first(enough: (chicks: number) => boolean, most: number): number | null {
  for (let count = 0; count <= most; count++) if (enough(count)) return count
  return null
}

/** A share that rounding alone can make. */
const LEAST = 1e-9

interface TellingLooks {
  readonly trait: Trait
  /** numbers of states that speak for the allele */
  readonly shows: readonly number[]
  /** how much more often they are scored of carriers than of the same birds without it, times the chance to be one */
  readonly tells: number
  readonly scoresOf: ChickScoresOf
  readonly pairOf: (is: ParentsTogether) => PairOfGenotypes
}

function tellingLooks(trait: Trait, asked: PairsAsked, isCarrier: (is: ParentsTogether) => boolean): TellingLooks {
  const {group, among, isSire, pairs, scores} = asked, key = `${trait.id} ${among}`
  const scoresOf = scores.get(key) ?? chickScores(group, trait, among)
  scores.set(key, scoresOf)
  const pairOf = ({one, other}: ParentsTogether): PairOfGenotypes => (isSire ? {sire: one, dam: other} : {sire: other, dam: one})
  const more = new Float64Array(trait.states.length)
  for (const {is, probability} of pairs) {
    if (!isCarrier(is)) continue
    const withIt = scoresOf(pairOf(is)), without = scoresOf(pairOf({...is, one: freed(is.one, asked)}))
    withIt.scored.forEach((share, state) => { more[state] = (more[state] ?? 0) + probability * (share - (without.scored[state] ?? 0)) })
  }
  const shows = [...more.keys()].filter(state => (more[state] ?? 0) > LEAST)
  return {trait, shows, scoresOf, pairOf, tells: shows.reduce((sum, state) => sum + (more[state] ?? 0), 0)}
}

/** Oftener than so a look is not scored by mistake alone. */
const EXPECTED = 0.05

/** Does one of the sexes show the looks that are to speak against the bird as often without the allele, and so tells nothing? */
function comesAnyway({trait, shows, pairOf}: TellingLooks, {group, pairs, scores, among, ...asked}: PairsAsked, isCarrier: (is: ParentsTogether) => boolean): boolean {
  return among === 'all' && (['sons', 'daughters'] as const).some(sex => {
    const key = `${trait.id} ${sex}`, scoresOf = scores.get(key) ?? chickScores(group, trait, sex)
    scores.set(key, scoresOf)
    let anyway = 0, more = 0, weight = 0
    for (const {is, probability} of pairs) {
      if (!isCarrier(is)) continue
      const withIt = scoresOf(pairOf(is)).scored, without = scoresOf(pairOf({...is, one: freed(is.one, {...asked, group, pairs, scores, among})})).scored
      weight += probability
      for (const state of shows) {
        anyway += probability * (without[state] ?? 0)
        more += probability * ((withIt[state] ?? 0) - (without[state] ?? 0))
      }
    }
    return anyway > EXPECTED * weight && more <= LEAST * weight
  })
}

/** Pairs that no rule tells apart are one: alleles that no rule of the group names stand for each other, save that those asked about stay apart from the rest. */
function lumped({group: {loci, traits}, pairs, locus, alleles}: PairsAsked): readonly Probable<ParentsTogether>[] {
  const sorts = loci.map(each => {
    const named = new Set(traits.flatMap(({shows}) => shows.flatMap(({patterns}) => patterns.get(each) ?? []))), firsts = new Map<boolean, number>()
    return each.alleles.map((_, allele): number => {
      if (named.has(allele)) return allele
      const isAsked = each === locus && alleles.includes(allele), first = firsts.get(isAsked) ?? allele
      firsts.set(isAsked, first)
      return first
    })
  })
  const sorted = (genotype: readonly Alleles[]): readonly Alleles[] => genotype.map(([one, other], place): Alleles => {
    const sort = (allele: number): number => sorts[place]?.[allele] ?? allele, first = sort(one)
    return other === null ? [first, null] : [Math.min(first, sort(other)), Math.max(first, sort(other))]
  })
  const sums = new Map<string, {is: ParentsTogether; probability: number}>()
  for (const {is, probability} of pairs) {
    const lump = {one: sorted(is.one), other: sorted(is.other)}, key = `${lump.one.join(';')} ${lump.other.join(';')}`, known = sums.get(key)
    if (known) known.probability += probability
    else sums.set(key, {is: lump, probability})
  }
  return [...sums.values()]
}

/** The same bird with something else in the place of what it may hide: its own other allele, else the wild one, else the first there is. */
function freed(genotype: readonly Alleles[], {group, locus, alleles}: PairsAsked): readonly Alleles[] {
  const place = group.loci.indexOf(locus), all = locus.alleles.map((_, allele) => allele).filter(allele => !alleles.includes(allele))
  return genotype.map((own, at): Alleles => {
    if (at !== place) return own
    const [one, other] = own, instead = all.find(allele => own.includes(allele)) ?? all.find(allele => isWild(locus.alleles[allele])) ?? all[0] ?? one
    const free = (allele: number): number => (alleles.includes(allele) ? instead : allele), first = free(one)
    if (other === null) return [first, null]
    return [Math.min(first, free(other)), Math.max(first, free(other))]
  })
}

/** `P/p+`: the plus marks the allele of the wild fowl. */
const isWild = (allele: string | undefined): boolean => allele?.endsWith('+') === true

const shown = ({shows, scoresOf, pairOf}: TellingLooks, is: ParentsTogether): number => {
  const {scored} = scoresOf(pairOf(is))
  return Math.min(1, shows.reduce((sum, state) => sum + (scored[state] ?? 0), 0))
}

function withGenotype(heredity: Heredity, group: LocusGroup, bird: number, mate: readonly Alleles[]): {readonly pairs: readonly Probable<ParentsTogether>[]; readonly exact: boolean} {
  const {found} = heredity.workedOtherwise(group, {}, new Set([bird]))
  return {exact: found.exact, pairs: found.together(bird).map(({is, probability}) => ({is: {one: is, other: mate}, probability}))}
}
