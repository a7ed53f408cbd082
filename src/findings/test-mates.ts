import {isCautioned} from './caution-alleles.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Sex as Told} from '../heredity/look-likelihood.ts'
import {lookOf} from '../heredity/look-rules.ts'
import {allelesTrueFor} from '../logbook/allele-shares.ts'
import type {Bird, Logbook, Sex, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {LETHAL} from '../records/schema/loci.ts'
import type {Among, ChickScoresOf} from './chick-scores.ts'
import type {Heredity} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {lookTells} from './look-tells.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {plainAllele} from './plain-allele.ts'
import {planOfPairs, type TestMatingPlan} from './test-mating-plan.ts'
import type {AllelesOfBook, UnwantedAlleles} from './unwanted-alleles.ts'
import {looksRight} from './wanted-look.ts'

/** The mate that tells most. */
export interface TestMate {
  readonly kind: 'mate'
  /** of the alleles asked about those that some look of the chicks tells */
  readonly alleles: readonly number[]
  /** what such mates have at the loci of the group, each telling as much as the others */
  readonly mates: readonly (readonly Alleles[])[]
  /** what they have at the locus asked about */
  readonly atLocus: readonly Alleles[]
  /** what they have at other loci, where another mate would hide the look in some of the chicks */
  readonly others: readonly {readonly locus: Locus; readonly alleles: readonly Alleles[]}[]
  /** looks of those mates, in the trait's order; none where their sex cannot show it */
  readonly looks: readonly string[]
  /** the looks alone say what the mate has at the locus, were every score right */
  readonly lookIsEnough: boolean
  /** whatever the mate has, the chicks looked at tell as much */
  readonly any: boolean
  readonly among: Among
}

export type TestAdvice =
  | TestMate
  /** no bird is to be mated to find out: two doses kill, or only a mate that is itself a burden to its kind would tell */
  | {readonly kind: 'ordinary'; readonly because: 'lethal' | 'welfare'}
  /** a hen on the Z: she has one allele, and her own look tells it */
  | {readonly kind: 'own-look'}
  /** no look of any chick tells it */
  | {readonly kind: 'untold'}

export interface TestMates {
  /** how a bird of this sex is tested for these alleles */
  of(asked: UnwantedAlleles, sex: Sex, among?: Among): TestAdvice
  /** how the bird is cleared by a mate as advised; null where none is advised */
  clearing(asked: UnwantedAlleles, bird: Bird): Clearing | null
}

export interface Clearing {
  /** clean chicks that leave one chance in a hundred, whichever of the mates advised it is; null where no number would */
  readonly chicks: number | null
  /** looks of the chicks that speak for the allele */
  readonly shows: readonly string[]
}

/** Chance left that a bird tested is a carrier after all. */
export const TEST_LIMIT = 0.01
/** Of more mates than this only those are tried that have what is wanted at the other loci. */
const MOST_TRIED = 100
/** Two mates that differ by less tell alike. */
const ALIKE = 1e-9
/** Of a bird mixed at another locus, mates that leave a clean chick nearly the same worth. */
const SHOWN_ALIKE = 0.05

/**
 * To which mate does one put a bird, to see whether it hides an allele?
 *
 * Every mate with one allele alone at each locus of the trait is tried on a bird with one dose of the allele, by the chicks of both sexes and of each; the best
 * is that of which a clean chick is the least likely beside a bird without. So it is two doses of a recessive allele, a mate free of a dominant one, and on the Z
 * any hen, with the daughters looked at; of mates that tell alike those that do not hide the look where the bird is mixed at another locus. At other loci of the group stands what all strains have, else the wild allele.
 *
 * Never advised: anything where two doses of the allele kill, or a pair that would lose eggs by a rule; nor a mate with an allele that a caution calls a burden.
 */
export function testMates(book: Logbook, heredity: Heredity, {numberOf}: PedigreeOfBook, alleles: AllelesOfBook): TestMates {
  const kept = new Map<string, TestAdvice>(), scores = new Map<LocusGroup, Map<string, ChickScoresOf>>()
  const scoresOf = (group: LocusGroup): Map<string, ChickScoresOf> => {
    const found = scores.get(group) ?? new Map<string, ChickScoresOf>()
    scores.set(group, found)
    return found
  }
  const plainOf = (locus: Locus): number => plainAllele(book, locus)?.allele ?? alleles(locus)[0] ?? 0

  /** Genotypes with one allele alone at each locus, those of the trait in every combination that the book may have. */
  function pure({trait, locus}: UnwantedAlleles, {loci}: LocusGroup): readonly (readonly number[])[] {
    const there = loci.map(each => {
      if (!trait.loci.includes(each)) return [plainOf(each)]
      const own = alleles(each), plain = plainOf(each)
      return own.includes(plain) ? own : [...own, plain]
    })
    const many = there.reduce((product, {length}) => product * length, 1) > MOST_TRIED
    return there.reduce<readonly (readonly number[])[]>((all, own, place) => {
      const other = loci[place], tried = many && other && other !== locus ? [wantedAt(trait, other) ?? plainOf(other)] : own
      return all.flatMap(some => tried.map(allele => [...some, allele]))
    }, [[]])
  }

  function advised(asked: UnwantedAlleles, sex: Sex, amongst: readonly Among[]): TestAdvice {
    const {trait, locus, unwanted} = asked, group = heredity.groupOf(locus), place = group.loci.indexOf(locus)
    if (locus.on === 'Z' && sex !== 'male') return {kind: 'own-look'}
    const isSire = sex === 'male', mateSex: Told = isSire ? 'female' : 'male', rules = lookRulesOf(trait, group.loci)
    const all = pure(asked, group), lives = (each: readonly number[]): boolean => isViable(group, genotypeOf(group, each, mateSex), mateSex)
    const free = all.filter(each => !unwanted.includes(each[place] ?? -1)), right = rules && free.find(each => isWanted(trait, group, each))
    const standard = right ?? free[0]
    if (!rules || !standard) return {kind: 'untold'}
    /** what a mate leaves of a clean chick's worth: 1 tells nothing, 0 all */
    const pureBird = genotypeOf(group, standard, isSire ? 'male' : 'female')
    const left = (mate: readonly Alleles[], allele: number, among: Among, clean = pureBird): {ratio: number; plan: TestMatingPlan | null} => {
      const carrier = clean.map((own, at): Alleles => (at === place ? [Math.min(own[0], allele), Math.max(own[0], allele)] : own))
      const plan = planOfPairs({
        group, locus, alleles: [allele], among, trait, limit: TEST_LIMIT, isSire, exact: true, scores: scoresOf(group), strictly: true,
        pairs: [{is: {one: carrier, other: mate}, probability: 1 / 2}, {is: {one: clean, other: mate}, probability: 1 / 2}],
      })
      const [, once] = plan?.course ?? []
      return {plan, ratio: once ? once.carrier / (1 - once.carrier) : 1}
    }
    const tried = all.filter(lives).map(each => ({each, mate: genotypeOf(group, each, mateSex)})).flatMap(({each, mate}) => amongst.map(among => {
      const found = unwanted.map(allele => ({allele, ...left(mate, allele, among)}))
      return {each, mate, among, found, told: found.filter(({ratio}) => ratio < 1 - ALIKE)}
    }))
    const told = unwanted.filter(allele => tried.some(one => one.told.some(each => each.allele === allele)))
    if (told.length === 0) return {kind: 'untold'}
    if (isLethal(group, locus, told) || told.some(allele => isCautioned(book, locus, allele, ['lethal']))) return {kind: 'ordinary', because: 'lethal'}

    const ranked = tried.map(one => ({...one, ratio: one.found.filter(({allele}) => told.includes(allele)).reduce((sum, {ratio}) => sum + ratio, 0) / told.length}))
    const loses = ranked.filter(({found}) => found.some(({plan}) => (plan?.lost ?? 0) > 0))
    const unharmed = ranked.filter(one => !loses.includes(one) && !(told.includes(one.each[place] ?? -1) && isCautioned(book, locus, one.each[place] ?? -1)))
    const least = Math.min(...unharmed.map(({ratio}) => ratio))
    /** the bird mixed at one of the trait's other loci, where a mate could hide the look in half of the chicks */
    const mixed = trait.loci.flatMap(each => (each === locus ? [] : alleles(each).map(allele => ({at: group.loci.indexOf(each), allele})))).map(({at, allele}) => pureBird.map((own, there): Alleles =>
      (there !== at || own[1] === null ? own : [Math.min(own[0], allele), Math.max(own[0], allele)])))
    const showing = <Of extends {readonly mate: readonly Alleles[]}>(alike: readonly Of[], among: Among): readonly Of[] => {
      const hides = alike.map(({mate}) => mixed.reduce((sum, bird) => sum + told.reduce((part, allele) => part + left(mate, allele, among, bird).ratio, 0), 0)), fewest = Math.min(...hides)
      return alike.filter((_, index) => (hides[index] ?? 0) <= fewest + SHOWN_ALIKE)
    }
    const othersOf = (all: readonly (readonly number[])[], kept: readonly (readonly number[])[], sexOfMate: Told): TestMate['others'] => group.loci.flatMap((each, at) => {
      const own = new Set(kept.map(one => one[at] ?? 0))
      return at === place || own.size === new Set(all.map(one => one[at])).size ? [] : [{locus: each, alleles: [...own].map((allele): Alleles => [allele, each.on === 'Z' && sexOfMate === 'female' ? null : allele])}]
    })
    if (!(least < 1 - ALIKE)) return {kind: 'ordinary', because: loses.length > 0 ? 'lethal' : 'welfare'}
    const [best] = amongst.map(among => {
      const each = unharmed.filter(one => one.among === among && one.ratio <= least + ALIKE)
      // sons and daughters together only where both tell
      const alike = among === 'all' && amongst.length > 1 ? each.filter(({mate}) => ranked.every(one => one.mate !== mate || one.ratio < 1 - ALIKE)) : each
      return {among, alike, any: alike.length > 1 && alike.length === tried.filter(one => one.among === among).length}
    }).filter(({alike}) => alike.length > 0).sort((a, b) => Number(b.any) - Number(a.any) || b.alike.length - a.alike.length)
    if (!best) return {kind: 'untold'}
    const shown = showing(best.alike, best.among), plain = best.any ? [] : shown.filter(({each}) => each[place] === plainOf(locus)), alike = plain.length > 0 ? plain : shown
    const mildest = gentlest(alike, ({each}) => group.loci.filter((other, at) => (at === place ? unwanted.includes(each[at] ?? -1) : isCautioned(book, other, each[at] ?? -1))).length)
    const looks = trait.states.filter((_, state) => mildest.some(({mate}) => (lookOf(rules, mate, mateSex).states[state] ?? 0) > 0.5))
    const stands = new Set(mildest.map(({each}) => each[place])), atLocus = [...new Map(mildest.flatMap(({mate}) => (mate[place] ? [[mate[place].join(), mate[place]] as const] : []))).values()]
    return {
      kind: 'mate', others: othersOf(best.alike.map(({each}) => each), shown.map(({each}) => each), mateSex), alleles: told, mates: mildest.map(({mate}) => mate), atLocus, looks, any: best.any, among: best.among,
      lookIsEnough: looks.length > 0 && looks.every(look => stands.has(lookTells(trait, look, mateSex, locus)?.only ?? -1)),
    }
  }

  const of: TestMates['of'] = (asked, sex, among) => {
    const key = `${asked.trait.id} ${asked.locus.symbol} ${asked.unwanted.join()} ${sex} ${among ?? ''}`
    const found = kept.get(key) ?? advised(asked, sex, among ? [among] : ['all', 'sons', 'daughters'])
    kept.set(key, found)
    return found
  }
  return {
    of,
    clearing(asked, bird) {
      const advice = of(asked, bird.sex), {locus, trait} = asked, group = heredity.groupOf(locus), {found} = heredity.worked(group), number = numberOf(bird)
      if (advice.kind !== 'mate' || (bird.sex === 'unknown' && group.loci.some(({on}) => on === 'Z'))) return null
      const own = found.together(number), exact = found.isExact(number, group.loci.indexOf(locus))
      const plans = advice.mates.map(mate => planOfPairs({
        group, locus, trait, exact, alleles: advice.alleles, among: advice.among, limit: TEST_LIMIT, isSire: bird.sex === 'male', scores: scoresOf(group), strictly: true,
        pairs: own.map(({is, probability}) => ({is: {one: is, other: mate}, probability})),
      }))
      const chicks = plans.map(plan => plan?.chicks ?? null).reduce((most, each) => (most === null || each === null ? null : Math.max(most, each)), 0)
      return {chicks, shows: trait.states.filter(state => plans.some(plan => plan?.shows.includes(state)))}
    },
  }
}

const genotypeOf = ({loci}: LocusGroup, alleles: readonly number[], sex: Told): readonly Alleles[] =>
  loci.map(({on}, place): Alleles => [alleles[place] ?? 0, on === 'Z' && sex === 'female' ? null : alleles[place] ?? 0])

const isViable = ({loci, traits}: LocusGroup, genotype: readonly Alleles[], sex: Told): boolean => traits.every(trait => {
  const rules = lookRulesOf(trait, loci)
  return !rules || lookOf(rules, genotype, sex).lethal === 0
})

/** Does a bird with these alleles alone show what is wanted, in either sex? */
function isWanted(trait: Trait, group: LocusGroup, alleles: readonly number[]): boolean {
  const rules = lookRulesOf(trait, group.loci)
  return rules !== null && (['male', 'female'] as const).some(sex => {
    const {states} = lookOf(rules, genotypeOf(group, alleles, sex), sex)
    return trait.states.some((state, number) => (states[number] ?? 0) > 0.5 && looksRight(trait, sex, state) === true)
  })
}

/** The first allele that stands in a true-breeding genotype of a wanted look. */
function wantedAt(trait: Trait, locus: Locus): number | null {
  const states = [trait.wanted.male, trait.wanted.female].flatMap(wanted => (wanted?.kind === 'states' ? wanted.states : []))
  return states.map(state => allelesTrueFor(trait, state, locus)?.[0] ?? null).find(allele => allele !== null) ?? null
}

const isLethal = ({traits}: LocusGroup, locus: Locus, alleles: readonly number[]): boolean =>
  traits.some(({shows}) => shows.some(({is, patterns}) => is === LETHAL && (patterns.get(locus) ?? []).some(each => typeof each === 'number' && alleles.includes(each))))

function gentlest<Of>(list: readonly Of[], harm: (one: Of) => number): readonly Of[] {
  const least = Math.min(...list.map(harm))
  return list.filter(one => harm(one) === least)
}
