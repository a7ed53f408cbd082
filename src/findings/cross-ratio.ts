import {genotypesAt, writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles} from '../heredity/locus.ts'
import {hasLethal, hatchingChance} from '../heredity/look-likelihood.ts'
import {lookOf} from '../heredity/look-rules.ts'
import type {Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {misscoringRows} from './flock-of-book.ts'
import type {LocusGroup} from './locus-groups.ts'

/** What stands at each locus of a trait, in its order, of a sire and of a dam. */
export interface Cross {
  readonly sire: readonly Alleles[]
  readonly dam: readonly Alleles[]
}

export interface CrossRatio {
  /** of chicks that hatch, the share of each look, before any is scored wrongly; with `unsaid` they make 1 */
  readonly looks: readonly number[]
  /** the same as scored, misscoring taken in */
  readonly scored: readonly number[]
  /** share of which no rule says a look */
  readonly unsaid: number
  /** share of all fertile eggs whose germ dies of its genotype */
  readonly lethal: number
  /** states that only chicks with two like alleles at every locus show */
  readonly pureLooks: readonly number[]
}

/**
 * What does a cross give, of one trait in chicks of one sex?
 *
 * Loci go their own ways. Where two that are linked are both mixed in one parent the ratio rests on how they lie, which no genotype tells: null.
 * Chicks with a lethal genotype at one of the trait's loci are taken out and the rest made whole.
 */
export function crossRatio(trait: Trait, group: LocusGroup, cross: Cross, sex: 'male' | 'female'): CrossRatio | null {
  const rules = lookRulesOf(trait)
  if (!rules || restsOnPhase(trait, group, cross)) return null
  const lethalTraits = group.traits.flatMap(other => {
    const look = other === trait ? rules : other.loci.every(locus => trait.loci.includes(locus)) ? lookRulesOf(other, trait.loci) : null
    return look && hasLethal(look) ? [{look, misscoring: []}] : []
  })
  const looks = trait.states.map(() => 0), pure = trait.states.map(() => true)
  let unsaid = 0, hatched = 0
  for (const {is, chance} of chicksOf(trait, cross, sex)) {
    const hatches = hatchingChance({traits: lethalTraits}, is, sex) * chance
    if (hatches === 0) continue
    const {states, lethal, unsaid: silent} = lookOf(rules, is, sex)
    hatched += hatches
    unsaid += hatches * silent / (1 - lethal)
    states.forEach((share, state) => {
      looks[state] = (looks[state] ?? 0) + hatches * share / (1 - lethal)
      if (share > 0 && !is.every(([one, other]) => one === other)) pure[state] = false
    })
  }
  if (hatched === 0) return null
  const whole = looks.map(share => share / hatched), rows = misscoringRows(trait)
  return {
    looks: whole, unsaid: unsaid / hatched, lethal: 1 - hatched,
    scored: trait.states.map((_, seen) => whole.reduce((sum, share, state) => sum + share * (rows[state]?.[seen] ?? 0), 0)),
    pureLooks: trait.states.flatMap((_, state) => ((whole[state] ?? 0) > 0 && pure[state] ? [state] : [])),
  }
}

/** `P/p+ × p+/p+`, several loci side by side: `R/r+ P/p+ × r+/r+ p+/p+`. */
export function writeCross({loci}: Trait, {sire, dam}: Cross): string {
  const write = (parent: readonly Alleles[]): string => loci.map((locus, place) => writeGenotype(parent[place] ?? [0, null], locus)).join(' ')
  return `${write(sire)} × ${write(dam)}`
}

const isMixed = ([one, other]: Alleles = [0, null]): boolean => other !== null && one !== other

function restsOnPhase({loci}: Trait, {loci: all, linkages}: LocusGroup, {sire, dam}: Cross): boolean {
  const places = loci.map(locus => all.indexOf(locus))
  return linkages.some(({loci: [one, other]}) => {
    const [a, b] = [places.indexOf(one), places.indexOf(other)]
    return a >= 0 && b >= 0 && [sire, dam].some(parent => isMixed(parent[a]) && isMixed(parent[b]))
  })
}

/** Every genotype that chicks of one sex can have, with its chance when it is conceived. */
function chicksOf({loci}: Trait, {sire, dam}: Cross, sex: 'male' | 'female'): readonly {readonly is: readonly Alleles[]; readonly chance: number}[] {
  return loci.reduce<readonly {is: readonly Alleles[]; chance: number}[]>((all, locus, place) => {
    const toDaughter = locus.on === 'Z' && sex === 'female'
    const from = gametes(sire[place]), other = toDaughter ? [null] : gametes(dam[place])
    const here = genotypesAt(locus, sex).flatMap(is => {
      const ways = from.reduce((sum, one) => sum + other.filter(two => isPair(is, one, two)).length, 0)
      return ways > 0 ? [{is, chance: ways / (from.length * other.length)}] : []
    })
    return all.flatMap(before => here.map(({is, chance}) => ({is: [...before.is, is], chance: before.chance * chance})))
  }, [{is: [], chance: 1}])
}

const gametes = ([one, other]: Alleles = [0, null]): readonly number[] => (other === null ? [one] : [one, other])

const isPair = ([one, other]: Alleles, a: number, b: number | null): boolean => (b === null ? other === null && one === a : one === Math.min(a, b) && other === Math.max(a, b))
